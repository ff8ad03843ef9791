package org.lowfirst.web.fill;

import gg.jte.Content;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.gate.VerdictSheet;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * One bottle: what it reads, what it should read, and, once both are known, how to get there.
 *
 * @param place the bench
 * @param bottle the bottle
 * @param unit symbol of the unit of pressure
 * @param temperatureUnit symbol of the unit of temperature
 * @param usual the temperature that stands in when none is typed
 * @param form what was typed
 * @param key key for starting the fill
 * @param beside who may stand beside the filler
 * @param banks names of the banks to fill from, the one without a name first
 * @param verdict what the gate says of the bottle; null while that is not asked
 * @param plan the plan; null before the readings are known or when there is none
 */
public record PlanPage(
        Place place,
        BottleLine bottle,
        String unit,
        String temperatureUnit,
        String usual,
        Form form,
        String key,
        Beside beside,
        List<String> banks,
        @Nullable VerdictSheet verdict,
        @Nullable PlanSheet plan)
        implements Page {

    public PlanPage {
        banks = List.copyOf(banks);
    }

    /**
     * @param id its id
     * @param name its name
     * @param size water volume
     * @param marked service pressure as marked
     * @param owner whose it is; empty when nobody said
     */
    public record BottleLine(String id, String name, String size, String marked, String owner) {}

    /**
     * @param needed for whom a second person must be named, in words; empty when for nobody
     * @param choices who may stand beside somebody
     */
    public record Beside(String needed, List<String> choices) {

        public Beside {
            choices = List.copyOf(choices);
        }
    }

    /**
     * The question this page answers, for asking it again.
     *
     * @param target another target; empty for the same
     */
    public String query(String target) {
        return "?bottle=" + bottle.id() + "&before=" + encoded(form.value("before")) + "&target="
                + encoded(target.isEmpty() ? form.value("target") : target) + "&temperature="
                + encoded(form.value("temperature")) + (banks.size() > 1 ? "&bank=" + encoded(form.value("bank")) : "");
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Override
    public String template() {
        return plan == null ? "fill-ask" : "plan";
    }

    @Override
    public String title(Words words) {
        return words.of("plan.title", bottle.name());
    }

    @Override
    public Section section() {
        return Section.FILL;
    }

    @Override
    public Place at() {
        return place;
    }

    /**
     * A plan as a sheet to follow.
     *
     * @param from what the bottle reads
     * @param ends what it will read at the end
     * @param within how far that may be off, e.g. "within 3"; empty where the valve is shut at a reading
     * @param neverAbove what its gauge must never pass
     * @param reaches whether it comes to its stop
     * @param shortfall what is missing and by how much; empty when nothing is
     * @param remedies what would make it finish
     * @param lowerTarget the highest target within reach, as it would be typed; empty when there is none to offer
     * @param notes what to know about the stop
     * @param stages supplies in the order they are opened
     * @param skipped supplies that stay shut, with the reason
     * @param picture the staircase; {@code stages} says the same
     * @param whySlowly how hot gas gets in theory behind a valve that is snapped open; empty when not known
     * @param counts gas delivered, fills left, the other habit
     */
    public record PlanSheet(
            String from,
            String ends,
            String within,
            String neverAbove,
            boolean reaches,
            String shortfall,
            List<String> remedies,
            String lowerTarget,
            List<String> notes,
            List<StageLine> stages,
            List<SkippedLine> skipped,
            Content picture,
            String whySlowly,
            Counts counts) {

        public PlanSheet {
            remedies = List.copyOf(remedies);
            notes = List.copyOf(notes);
            stages = List.copyOf(stages);
            skipped = List.copyOf(skipped);
        }
    }

    /**
     * @param rank rank of the supply
     * @param supply its name
     * @param ends how the stage ends, e.g. "gauges meet at 60 bar"
     * @param falls what the supply's gauge does, e.g. "62 to 60 bar"
     */
    public record StageLine(int rank, String supply, String ends, String falls) {}

    /** A supply that stays shut. */
    public record SkippedLine(int rank, String supply, String reading, String reason) {}

    /**
     * @param delivered gas the bottle gains, with its reference condition
     * @param left fills left, this one included
     * @param chances how sure the last of them is, and the one after it
     * @param habit what opening the fullest first would leave; empty when it makes no difference
     */
    public record Counts(String delivered, String left, List<String> chances, String habit) {

        public Counts {
            chances = List.copyOf(chances);
        }
    }
}
