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
 * @param supplies the supplies, rank 1 first
 * @param held gas in the bank with its reference condition; empty without supplies
 * @param gives what the bank can still do for the kinds of bottle it knows
 * @param underWay the fill to resume; empty when none is open
 * @param arrival a supply that was just connected and is not full; null for none
 */
public record BankPage(
        Place place,
        String unit,
        List<SupplyTile> supplies,
        String held,
        List<Gives> gives,
        List<UnderWay> underWay,
        @Nullable Arrival arrival)
        implements Page {

    public BankPage {
        supplies = List.copyOf(supplies);
        gives = List.copyOf(gives);
        underWay = List.copyOf(underWay);
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
     * A fill that was begun and not ended.
     *
     * @param bottle name of the bottle
     * @param link where it goes on
     * @param since when it began
     */
    public record UnderWay(String bottle, String link, String since) {}

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
