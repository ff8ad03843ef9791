package org.lowfirst.web.fill;

import gg.jte.Content;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.picture.StaircasePicture.When;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * One step of a fill under way: what to do, how every valve stands then, what to expect, and the one act that leads on.
 *
 * @param place the bench
 * @param fill the fill
 * @param stages where each stage stands, in order
 * @param words the instruction, and why
 * @param valves every valve as it stands once the step is done
 * @param gauge what the bottle's gauge should and must not show
 * @param alarms what must be looked at before anything else
 * @param cautions what to mind here
 * @param act what leads on
 * @param picture the staircase; null when there is no plan to draw
 * @param fields gauges to read at this step; empty when nothing is to be entered
 * @param hidden where the browser stands, for coming back after a refusal
 * @param form what was typed
 * @param key key of the form
 */
public record StepPage(
        Place place,
        FillLine fill,
        List<When> stages,
        Instruction words,
        List<ValveBox> valves,
        Gauge gauge,
        List<String> alarms,
        List<String> cautions,
        Act act,
        @Nullable Content picture,
        List<GaugeField> fields,
        String hidden,
        Form form,
        String key)
        implements Page {

    public StepPage {
        stages = List.copyOf(stages);
        valves = List.copyOf(valves);
        alarms = List.copyOf(alarms);
        cautions = List.copyOf(cautions);
        fields = List.copyOf(fields);
    }

    /**
     * @param path address of the fill
     * @param bottle name of the bottle
     * @param about e.g. "40 to 150 bar, begun 10:05"
     */
    public record FillLine(String path, String bottle, String about) {}

    /**
     * @param todo the one thing to do, e.g. "Open supply 2 (B) slowly."
     * @param then what happens or what to watch; empty for nothing
     */
    public record Instruction(String todo, String then) {}

    /**
     * @param name the valve
     * @param setting its state as a word
     * @param looks class of the box: open, shut or cracked
     * @param turned whether this step moves it
     */
    public record ValveBox(String name, String setting, String looks, boolean turned) {}

    /**
     * @param unit symbol of the unit of pressure
     * @param label what {@code expected} means, e.g. "gauges meet at about"
     * @param expected number; empty when nothing is flowing
     * @param neverAbove number
     * @param why what both numbers come from where the gauge may go above the mark; empty otherwise
     */
    public record Gauge(String unit, String label, String expected, String neverAbove, List<String> why) {

        public Gauge {
            why = List.copyOf(why);
        }
    }

    /**
     * @param path where the act leads; the form's address when there is an entry
     * @param label e.g. "Supply 2 (B) is open"
     */
    public record Act(String path, String label) {}

    /** A gauge to read. */
    public record GaugeField(String name, String label) {}

    /** Class of the mark of a stage. */
    public static String looks(When when) {
        return switch (when) {
            case PAST -> "done";
            case NOW -> "now";
            case LATER -> "later";
        };
    }

    @Override
    public String template() {
        return "step";
    }

    @Override
    public String title(Words words) {
        return words.of("step.title", fill.bottle());
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
