package org.lowfirst.web.exchange;

import java.util.List;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * Which supply to exchange.
 *
 * @param place the bench
 * @param banks the banks with their supplies, lowest first; none when nothing is connected
 * @param underWay exchanges to go on with
 */
public record ExchangeChoosePage(Place place, List<OneBank> banks, List<UnderWay> underWay) implements Page {

    public ExchangeChoosePage {
        banks = List.copyOf(banks);
        underWay = List.copyOf(underWay);
    }

    /** @param name its name; empty when there is only the one */
    public record OneBank(String name, List<Offer> offers) {

        public OneBank {
            offers = List.copyOf(offers);
        }
    }

    /**
     * @param link where this exchange is begun
     * @param rank rank of the supply
     * @param name its name
     * @param reading what its gauge should show
     * @param advised whether this is the one to send back
     * @param returned what goes back in it
     * @param brings what a full one in its place brings; empty without bottles to count with
     */
    public record Offer(
            String link, int rank, String name, String reading, boolean advised, String returned, String brings) {}

    /** @param link where it goes on */
    public record UnderWay(String supply, String link) {}

    @Override
    public String template() {
        return "exchange";
    }

    @Override
    public String title(Words words) {
        return words.of("exchange.title");
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
