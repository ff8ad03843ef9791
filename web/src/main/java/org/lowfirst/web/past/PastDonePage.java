package org.lowfirst.web.past;

import java.util.List;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * A fill that was entered afterwards.
 *
 * @param place the bench
 * @param seq number of its entry
 * @param bottle name of the bottle
 * @param when when it happened
 * @param unit symbol of the unit of pressure
 * @param before what the bottle read before
 * @param after what it read after
 * @param stages what was done, in words; empty when nobody said
 * @param notes what to know about it
 * @param bank the bank now, as one sentence
 */
public record PastDonePage(
        Place place,
        long seq,
        String bottle,
        String when,
        String unit,
        String before,
        String after,
        List<String> stages,
        List<String> notes,
        String bank)
        implements Page {

    public PastDonePage {
        stages = List.copyOf(stages);
        notes = List.copyOf(notes);
    }

    @Override
    public String template() {
        return "past-done";
    }

    @Override
    public String title(Words words) {
        return words.of("past.done.title", bottle);
    }

    @Override
    public Section section() {
        return Section.FILL;
    }

    @Override
    public Place at() {
        return place;
    }
}
