package org.lowfirst.app.money;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Currency;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.Amount;
import org.lowfirst.station.FillId;
import org.lowfirst.station.charges.ChargedFill;
import org.lowfirst.station.charges.Tariff;

/**
 * A fill as the journal tells it up to some entry.
 *
 * @param bottle name of the bottle, empty when unknown
 * @param endedAt when it ended; null while it is under way or when it was taken back
 * @param day day it ended, at the bench; null likewise
 * @param entered gas that went in [mol]; null when it cannot be counted, below zero when it came out
 * @param billing who pays
 * @param force the tariff of that day; null when there was none
 */
record FillTold(
        FillId fill,
        boolean begun,
        String bottle,
        @Nullable Instant endedAt,
        @Nullable LocalDate day,
        @Nullable Double entered,
        Payer billing,
        @Nullable Tariff force) {

    /** @param person empty when nobody is named */
    record Payer(String person, boolean guest) {}

    /** The same fill, paid by somebody. */
    FillTold paidBy(Payer payer) {
        return new FillTold(fill, begun, bottle, endedAt, day, entered, payer, force);
    }

    /** Why it is not charged; null when it is. */
    Uncharged.@Nullable Why why(Currency currency, GasMeter meter) {
        if (endedAt == null) {
            return begun ? Uncharged.Why.UNDER_WAY : Uncharged.Why.TAKEN_BACK;
        } else if (entered == null) {
            return Uncharged.Why.NOT_COUNTED;
        } else if (!(entered > 0.0)) {
            return Uncharged.Why.NOTHING_WENT_IN;
        } else if (force == null) {
            return Uncharged.Why.NO_TARIFF;
        } else if (!force.currency().equals(currency)) {
            return Uncharged.Why.OTHER_CURRENCY;
        } else if (billing.person().isBlank()) {
            return Uncharged.Why.NOBODY_PAYS;
        }
        return quantity(force, entered, meter).signum() == 0 ? Uncharged.Why.NOTHING_WENT_IN : null;
    }

    Tariff tariff() {
        if (force == null) {
            throw new IllegalStateException("The fill " + fill + " has no tariff.");
        }
        return force;
    }

    ChargedFill charged(Tariff tariff, GasMeter meter) {
        if (day == null || entered == null) {
            throw new IllegalStateException("The fill " + fill + " is not to be charged.");
        }
        BigDecimal quantity = quantity(tariff, entered, meter);
        return new ChargedFill(fill.value(), day, billing.person(), billing.guest(), bottle, quantity);
    }

    private static BigDecimal quantity(Tariff tariff, double entered_mol, GasMeter meter) {
        return tariff.quantity(meter.free(new Amount(entered_mol), tariff.condition()));
    }
}
