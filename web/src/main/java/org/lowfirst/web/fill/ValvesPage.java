package org.lowfirst.web.fill;

import java.util.List;
import org.lowfirst.web.fill.StepPage.FillLine;
import org.lowfirst.web.fill.StepPage.ValveBox;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * After an interruption: how do the valves stand?
 *
 * @param place the bench
 * @param fill the fill
 * @param choices the states the bench can be in
 */
public record ValvesPage(Place place, FillLine fill, List<Choice> choices) implements Page {

    public ValvesPage {
        choices = List.copyOf(choices);
    }

    /**
     * @param open the valves that are not shut; every other one is
     * @param path where the guide goes on from there
     */
    public record Choice(List<ValveBox> open, String path) {

        public Choice {
            open = List.copyOf(open);
        }
    }

    @Override
    public String template() {
        return "valves";
    }

    @Override
    public String title(Words words) {
        return words.of("valves.title");
    }

    @Override
    public Section section() {
        return Section.FILL;
    }

    @Override
    public boolean focused() {
        return true;
    }

    @Override
    public Place at() {
        return place;
    }
}
