package org.lowfirst.web.exchange;

import java.util.List;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * What became of an exchange: the ranks before and after, and what to do next.
 *
 * @param place the bench
 * @param left name of the supply that left
 * @param newcomer name of the supply that came
 * @param newcomerId its id
 * @param returned what went back
 * @param order the supplies in rank order with their readings, as one sentence
 * @param labels which labels follow, as one sentence
 * @param ranks each supply with its rank before and after
 */
public record ExchangeDonePage(
        Place place,
        String left,
        String newcomer,
        String newcomerId,
        String returned,
        String order,
        String labels,
        List<Moved> ranks)
        implements Page {

    public ExchangeDonePage {
        ranks = List.copyOf(ranks);
    }

    /**
     * @param name name of the supply
     * @param before its rank before; empty for the newcomer
     * @param after its rank now; empty for the one that left
     */
    public record Moved(String name, String before, String after) {}

    @Override
    public String template() {
        return "exchange-done";
    }

    @Override
    public String title(Words words) {
        return words.of("exchange.done.title", newcomer, left);
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
