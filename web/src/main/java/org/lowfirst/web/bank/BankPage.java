package org.lowfirst.web.bank;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * The bank: what stands connected now, lowest first, and what it can still give.
 *
 * @param place the bench
 * @param unit symbol of the unit of pressure
 * @param banks the banks; none without supplies
 * @param held gas in the bank with its reference condition; empty without supplies
 * @param underWay the fill to resume; empty when none is open
 * @param exchanges exchanges to go on with
 * @param arrival a supply that was just connected and is not full; null for none
 */
public record BankPage(
        Place place,
        String unit,
        List<OneBank> banks,
        String held,
        List<UnderWay> underWay,
        List<UnderWay> exchanges,
        @Nullable Arrival arrival)
        implements Page {

    public BankPage {
        banks = List.copyOf(banks);
        underWay = List.copyOf(underWay);
        exchanges = List.copyOf(exchanges);
    }

    /**
     * One bank.
     *
     * @param name its name; empty when there is only the one
     * @param supplies the supplies, rank 1 first
     * @param gives what the bank can still do for the kinds of bottle it knows
     */
    public record OneBank(String name, List<SupplyTile> supplies, List<Gives> gives) {

        public OneBank {
            supplies = List.copyOf(supplies);
            gives = List.copyOf(gives);
        }
    }

    /**
     * Fills left for one kind of bottle.
     *
     * @param kind water volume, what it is found at and filled to, e.g. "5 L, 38 to 150 bar"
     * @param bottles names of the bottles of this kind
     * @param fills e.g. "7, and an 8th to about 147 bar"
     */
    public record Gives(String kind, String bottles, String fills) {}

    /**
     * A fill or an exchange that was begun and not ended.
     *
     * @param what name of the bottle, or of the supply that leaves
     * @param link where it goes on
     * @param since when it began
     */
    public record UnderWay(String what, String link, String since) {}

    /**
     * A supply that came short or over-full.
     *
     * @param said how it came
     * @param rank where it stands by what it reads
     * @param link its note for the supplier
     */
    public record Arrival(String said, String rank, String link) {}

    @Override
    public String template() {
        return "bank";
    }

    @Override
    public String title(Words words) {
        return words.of("bank.title");
    }

    @Override
    public Section section() {
        return Section.BANK;
    }

    @Override
    public Place at() {
        return place;
    }
}
