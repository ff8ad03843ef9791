package org.lowfirst.app.flight;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.lowfirst.app.file.Measure;
import org.lowfirst.app.file.MeasureReader;
import org.lowfirst.app.file.PlausibleRange;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.Section;
import org.lowfirst.app.file.Tree;
import org.lowfirst.app.file.Tree.Mapping;
import org.lowfirst.app.file.Tree.Scalar;
import org.lowfirst.planning.flight.Flow;

/** Reads what a person's device takes. */
final class FlowReader {

    private static final String CONSTANT = "constant";
    private static final String BY_ALTITUDE = "per_10000_ft";
    private static final String SAVING = "pulse_saving";
    private static final String SHAPE = "Write flow: {constant: 1.2 L/min} or flow: {per_10000_ft: 1 L/min}, and for a"
            + " pulse device pulse_saving: 3 beside it.";

    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,3}([.,][0-9]{1,6})?");
    private static final double MOST_SAVING = 20.0;

    private final Problems problems;

    FlowReader(Problems problems) {
        this.problems = problems;
    }

    /**
     * The flow under the key "flow".
     *
     * @param of whose it is, e.g. " of person Pilot"
     */
    Optional<Flow> read(Section person, String of) {
        Optional<Tree> tree = person.find("flow");
        if (tree.isEmpty()) {
            problems.error(person.place(), "The flow" + of + " is missing. " + SHAPE);
            return Optional.empty();
        }
        if (!(tree.get() instanceof Mapping mapping)) {
            problems.error(
                    tree.get().place(), "The flow" + of + " is " + tree.get().kind() + ". " + SHAPE);
            return Optional.empty();
        }
        Section section = new Section(mapping, "a flow", List.of(CONSTANT, BY_ALTITUDE, SAVING), problems);
        Optional<Flow> continuous = continuous(section, of);
        Optional<Double> saving = saving(section, of);
        section.reportStrangers();
        if (section.find(SAVING).isEmpty()) {
            return continuous;
        }
        return saving.flatMap(factor -> continuous.map(flow -> new Flow.Pulse(flow, factor)));
    }

    private Optional<Flow> continuous(Section section, String of) {
        if (section.find(CONSTANT).isPresent() == section.find(BY_ALTITUDE).isPresent()) {
            String found = section.find(CONSTANT).isPresent()
                    ? " has both " + CONSTANT + " and "
                    : " has neither " + CONSTANT + " nor ";
            problems.error(section.place(), "The flow" + of + found + BY_ALTITUDE + ". " + SHAPE);
            return Optional.empty();
        }
        MeasureReader measures = new MeasureReader(section, problems);
        PlausibleRange<Double> range = PlausibleRange.of("flow", FlightKinds.FLOW);
        if (section.find(CONSTANT).isPresent()) {
            return measures.optional(CONSTANT, "flow" + of, range)
                    .map(Measure::value)
                    .map(Flow.Constant::new);
        }
        return measures.optional(BY_ALTITUDE, "flow per 10,000 ft" + of, range)
                .map(Measure::value)
                .map(Flow.ByAltitude::new);
    }

    private Optional<Double> saving(Section section, String of) {
        Optional<Scalar> typed = section.optional(SAVING, "pulse saving" + of, "3");
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        String text = typed.get().text();
        double factor = NUMBER.matcher(text).matches() ? Double.parseDouble(text.replace(',', '.')) : Double.NaN;
        if (factor >= 1.0 && factor <= MOST_SAVING) {
            return Optional.of(factor);
        }
        problems.error(
                typed.get().place(),
                "The pulse saving" + of + " (" + text + ") must be a number from 1 to 20: how many times less it uses"
                        + " than the same flow without pauses, as its maker states it.");
        return Optional.empty();
    }
}
