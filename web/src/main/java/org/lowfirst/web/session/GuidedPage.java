package org.lowfirst.web.session;

import java.util.List;
import org.lowfirst.web.fill.PlanPage.Beside;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * A session under way and the one thing to do next.
 *
 * @param place the bench
 * @param id id of the session
 * @param ended whether it is over
 * @param next what is next
 * @param why why the rest was planned again; empty when it was not
 * @param coming the stages still to do, in order
 * @param bottles how each bottle stands
 * @param beside who may stand beside the filler
 * @param form what was typed
 * @param key key of the forms
 */
public record GuidedPage(
        Place place,
        String id,
        boolean ended,
        Next next,
        List<String> why,
        List<String> coming,
        List<BottleLine> bottles,
        Beside beside,
        Form form,
        String key)
        implements Page {

    public GuidedPage {
        why = List.copyOf(why);
        coming = List.copyOf(coming);
        bottles = List.copyOf(bottles);
    }

    /**
     * @param todo the one thing to do
     * @param then what comes of it; empty for nothing
     * @param act words of the act
     * @param link where it leads; empty when something is sent
     * @param fill the fill to begin; empty when none is begun
     * @param supply the supply of the stage that is next; empty when there is none
     * @param stage that stage in words, for leaving it out
     * @param unit unit of pressure
     */
    public record Next(
            String todo, String then, String act, String link, String fill, String supply, String stage, String unit) {}

    /**
     * @param fill its fill
     * @param open whether it can still be taken out
     */
    public record BottleLine(String fill, String name, String words, boolean open) {}

    /** Where things of this session are sent. */
    public String path(String act) {
        return place.path("/session/now" + act);
    }

    @Override
    public String template() {
        return "session-now";
    }

    @Override
    public String title(Words words) {
        return words.of("session.now.title");
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
