package org.lowfirst.web.exchange;

import java.util.List;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * One step of taking a supply off.
 *
 * @param place the bench
 * @param path where this exchange is
 * @param name name of the supply
 * @param step number of the step and of how many
 * @param away whether the browser was away, so that work begins at the valves again
 * @param todo what to do
 * @param then what to mind
 * @param returned what goes back in it; empty until it was read
 * @param cautions cautions of this step
 * @param act what is pressed when it is done
 * @param form what was typed
 * @param key key of the form
 */
public record ExchangeStepPage(
        Place place,
        String path,
        String name,
        Step step,
        boolean away,
        String todo,
        String then,
        String returned,
        List<String> cautions,
        Act act,
        Form form,
        String key)
        implements Page {

    public ExchangeStepPage {
        cautions = List.copyOf(cautions);
    }

    public record Step(int number, int of) {}

    /**
     * @param label what stands on the button
     * @param link where it leads when nothing is entered; empty when something is
     * @param post where the form goes; empty when it is a link
     * @param field label of the gauge reading to enter; empty when none is
     * @param hidden where the browser stands, for the form
     */
    public record Act(String label, String link, String post, String field, String hidden) {}

    @Override
    public String template() {
        return "exchange-step";
    }

    @Override
    public String title(Words words) {
        return words.of("exchange.step.title", name);
    }

    @Override
    public Section section() {
        return Section.BANK;
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
