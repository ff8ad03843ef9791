package org.lowfirst.station;

/** Prices, who pays, and what the supplier takes. */
public sealed interface MoneyFact extends AreaFact {

    /**
     * Who pays for a fill, when it is not the bottle's owner.
     *
     * @param guest pays the guest surcharge
     */
    record FillBilled(FillId fill, String payer, boolean guest) implements MoneyFact {}
}
