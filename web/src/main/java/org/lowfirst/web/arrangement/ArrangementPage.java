package org.lowfirst.web.arrangement;

import gg.jte.Content;
import java.util.List;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * How the supplies stand in a row and how they are connected.
 *
 * @param place the bench
 * @param banks the banks; none when nothing is connected
 */
public record ArrangementPage(Place place, List<OneBank> banks) implements Page {

    public ArrangementPage {
        banks = List.copyOf(banks);
    }

    /**
     * @param name its name; empty when there is only the one
     * @param lead how many supplies and interconnects
     * @param picture the row; {@code order} says the same
     * @param order what joins what, in the order of connecting
     * @param valves which valve is which, in order of use
     */
    public record OneBank(String name, String lead, Content picture, List<String> order, List<String> valves) {

        public OneBank {
            order = List.copyOf(order);
            valves = List.copyOf(valves);
        }
    }

    @Override
    public String template() {
        return "arrangement";
    }

    @Override
    public String title(Words words) {
        return words.of("arrangement.title");
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
