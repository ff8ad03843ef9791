package org.lowfirst.web.view;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.words.Words;

/**
 * What every page needs besides its own record.
 *
 * @param words the words of the reader's language
 * @param place the bench; null on pages about none
 * @param who the person the browser remembers; empty when it remembers none
 * @param title title of the page
 * @param section where the reader is
 * @param focused whether navigation gives way to one act
 * @param form the hidden field each form carries against forged requests
 * @param assets where the stylesheet and scripts are
 * @param notice one sentence about what was just done, or empty
 */
public record Frame(
        Words words,
        @Nullable Place place,
        String who,
        String title,
        Section section,
        boolean focused,
        FormToken form,
        Assets assets,
        String notice) {

    /** Cautions for every filler, in the order to read them. */
    private static final List<String> CAUTIONS = List.of(
            "open_slowly",
            "one_supply_at_a_time",
            "no_oil_or_grease",
            "check_the_marking",
            "no_ignition",
            "ventilate",
            "second_person_for_new_fillers");

    /** Names to choose from when something is entered. */
    public List<String> people() {
        return place == null ? List.of() : place.people();
    }

    /** The person to enter a step of a fill for, when nobody is asked again. */
    public String author() {
        return who.isEmpty() ? words.of("who.unsaid") : who;
    }

    /** The cautions every filler must know, as sentences. */
    public List<String> cautions() {
        return CAUTIONS.stream().map(caution -> words.of("caution." + caution)).toList();
    }

    /** Where the name of the bench leads. */
    public String home() {
        return place == null ? "/" : place.path(Section.BANK.path());
    }

    /**
     * @param name name of the hidden field
     * @param value its value; empty on pages without forms
     */
    public record FormToken(String name, String value) {
        static final FormToken NONE = new FormToken("_csrf", "");
    }
}
