package org.lowfirst.app.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.file.Kind;
import org.lowfirst.app.file.ListReader;
import org.lowfirst.app.file.Measure;
import org.lowfirst.app.file.MeasureReader;
import org.lowfirst.app.file.NearestKey;
import org.lowfirst.app.file.NumberReader;
import org.lowfirst.app.file.PlausibleRange;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.QuestionFile.Shape;
import org.lowfirst.app.file.Section;
import org.lowfirst.app.file.Tree;
import org.lowfirst.app.file.Tree.Listing;
import org.lowfirst.app.file.Tree.Scalar;
import org.lowfirst.app.plan.BankReader;
import org.lowfirst.app.plan.CylinderReader;
import org.lowfirst.app.plan.CylinderReader.BottleLine;
import org.lowfirst.app.plan.FileBank;
import org.lowfirst.app.session.SessionFile.BottlePlaces;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.session.Criterion;
import org.lowfirst.planning.session.SessionBottle;
import org.lowfirst.planning.session.SessionPace;
import org.lowfirst.planning.session.SessionRequest;

/** Reads a session file and collects everything that is wrong with it. */
final class SessionFileReader {

    private static final int MOST_BOTTLES = 40;
    private static final long LOWEST_PRIORITY = 99;
    private static final List<String> PACE_KEYS = List.of("hose_change", "supply_change", "rise", "rest");
    private static final List<String> BOTTLE_KEYS = List.of("priority", "floor");

    static final Shape SHAPE = new Shape(
            "the session file",
            Stream.of(BankReader.KEYS, List.of("full_supply", "order", "bottles"), PACE_KEYS)
                    .flatMap(List::stream)
                    .toList(),
            "a session file has one line for each supply and bottle",
            "examples/session.yaml");

    private final EquationOfState gas;
    private final Problems problems;
    private final Map<String, BottlePlaces> places = new HashMap<>();

    SessionFileReader(EquationOfState gas, Problems problems) {
        this.gas = gas;
        this.problems = problems;
    }

    /** What the file asks; empty when it cannot be planned, and then there is at least one error. */
    Optional<SessionFile> read(Section section) {
        Optional<FileBank> bank = new BankReader(gas, "a session", problems).read(section);
        MeasureReader measures = new MeasureReader(section, problems);
        @Nullable
        GaugePressure full = measures.optional(
                        "full_supply", "reading of a full supply", PlausibleRange.of("full_supply", Kind.PRESSURE))
                .map(Measure::value)
                .orElse(null);
        List<Criterion> order = order(section);
        SessionPace pace = pace(measures);
        List<BottleLine> lines = new ListReader(
                        "bottles", "bottle", "name: R1, water_volume: 5 L", MOST_BOTTLES, "a session", problems)
                .read(section, new CylinderReader(problems, BOTTLE_KEYS)::bottle);
        List<SessionBottle> bottles = lines.stream().map(this::bottle).toList();
        section.reportStrangers();
        if (bank.isEmpty() || problems.haveErrors()) {
            return Optional.empty();
        }
        bank.get().warnOfMixedUnits(lines, problems);
        return Optional.of(new SessionFile(
                bank.get(), new SessionRequest(bank.get().supplies(), bottles, order, pace, full), places));
    }

    private SessionBottle bottle(BottleLine line) {
        Section section = line.section();
        String of = " of bottle " + line.name();
        long priority = new NumberReader(problems)
                .optionalWhole(section, "priority", "priority" + of, "1")
                .orElse(1L);
        if (priority < 1 || priority > LOWEST_PRIORITY) {
            problems.error(
                    section.placeOf("priority"),
                    "The priority" + of + " (" + priority + ") must be 1, the most important, to " + LOWEST_PRIORITY
                            + ". Correct it.");
        }
        Optional<Measure<GaugePressure>> floor = new MeasureReader(section, problems)
                .optional("floor", "floor" + of, PlausibleRange.of("floor", Kind.PRESSURE));
        floor.filter(least -> least.value().compareTo(line.bottle().target()) > 0)
                .ifPresent(least -> problems.error(
                        least.place(),
                        "The floor" + of + " (" + least.written()
                                + ") is above its target. Lower it or leave it out."));
        places.put(
                line.name(),
                new BottlePlaces(
                        line.reading().place(),
                        floor.map(Measure::place).orElse(line.reading().place())));
        return new SessionBottle(
                line.bottle(), (int) priority, floor.map(Measure::value).orElse(null));
    }

    private static SessionPace pace(MeasureReader measures) {
        SessionPace usual = SessionPace.UNHURRIED;
        PlausibleRange<Double> time = PlausibleRange.of("pace_time", SessionKinds.TIME);
        double hose_s = measures.optional("hose_change", "time for a hose change", time)
                .map(Measure::value)
                .orElse(usual.hoseChange_s());
        double supply_s = measures.optional("supply_change", "time for the next supply", time)
                .map(Measure::value)
                .orElse(usual.supplyChange_s());
        double rest_s = measures.optional("rest", "rest of a bottle", time)
                .map(Measure::value)
                .orElse(usual.rest_s());
        double rise_PaPerS = measures.optional("rise", "rise", PlausibleRange.of("rise", SessionKinds.RISE))
                .map(rise -> rise.value() * 1e5 / 60.0)
                .orElse(usual.rise_PaPerS());
        return new SessionPace(hose_s, supply_s, rise_PaPerS, rest_s);
    }

    private List<Criterion> order(Section section) {
        Optional<Tree> tree = section.find("order");
        List<Criterion> order = new ArrayList<>();
        if (tree.isEmpty()) {
            return order;
        }
        if (!(tree.get() instanceof Listing listing)) {
            problems.error(
                    section.placeOf("order"),
                    "The order is " + tree.get().kind() + ". Write a list, for example order: [wish, gas].");
            return order;
        }
        for (Tree item : listing.items()) {
            String word = item instanceof Scalar scalar ? scalar.text() : "";
            Optional<Criterion> criterion = Stream.of(Criterion.values())
                    .filter(one -> SessionWords.criterion(one).equals(word.toLowerCase(Locale.ROOT)))
                    .findFirst();
            if (criterion.isPresent()) {
                order.add(criterion.get());
            } else {
                problems.error(item.place(), unknown(word));
            }
        }
        return order;
    }

    private static String unknown(String word) {
        List<String> known =
                Stream.of(Criterion.values()).map(SessionWords::criterion).toList();
        return "The order names \"" + word + "\"; it can name " + String.join(", ", known) + "."
                + NearestKey.find(word, known)
                        .map(nearest -> " Maybe " + nearest + " was meant.")
                        .orElse("");
    }
}
