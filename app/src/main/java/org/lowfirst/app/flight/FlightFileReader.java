package org.lowfirst.app.flight;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.lowfirst.app.file.Kind;
import org.lowfirst.app.file.ListReader;
import org.lowfirst.app.file.Measure;
import org.lowfirst.app.file.MeasureReader;
import org.lowfirst.app.file.Place;
import org.lowfirst.app.file.PlausibleRange;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.Section;
import org.lowfirst.app.file.SourceText;
import org.lowfirst.app.file.Tree;
import org.lowfirst.app.file.Tree.Mapping;
import org.lowfirst.app.file.Tree.Scalar;
import org.lowfirst.app.file.TreeReader;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.flight.FlightRequest;
import org.lowfirst.planning.flight.Occupant;
import org.lowfirst.planning.flight.OxygenRule;
import org.lowfirst.planning.flight.OxygenRules;

/** Reads a flight file and collects everything that is wrong with it. */
final class FlightFileReader {

    private static final List<String> KEYS = List.of(
            "temperature", "rules", "litres_at", "reserve", "margin", "descent", "people", "legs", "track", "bottles");
    private static final String SHAPE =
            "A flight file has the keys temperature, rules, reserve, margin, descent, people,"
                    + " legs or track, and bottles; examples/flight-wave.yaml shows one.";

    private final Path folder;
    private final Problems problems;

    /** @param folder where a track is looked for */
    FlightFileReader(Path folder, Problems problems) {
        this.folder = folder;
        this.problems = problems;
    }

    /**
     * What reading came to.
     *
     * @param file what the flight file says; empty when it cannot be worked out
     * @param track the track file, when one was opened
     */
    record Result(Optional<FlightFile> file, Optional<TrackFile> track) {}

    Result read(SourceText source) {
        Optional<Tree> tree = TreeReader.read(source, problems);
        if (tree.isPresent() && tree.get() instanceof Mapping mapping) {
            return file(new Section(mapping, "the flight file", KEYS, problems));
        }
        if (tree.isPresent()) {
            problems.error(tree.get().place(), "The file is " + tree.get().kind() + ". " + SHAPE);
        } else if (!problems.haveErrors()) {
            problems.fileError("The file is empty. " + SHAPE);
        }
        return new Result(Optional.empty(), Optional.empty());
    }

    private Result file(Section section) {
        MeasureReader measures = new MeasureReader(section, problems);
        Optional<Measure<Temperature>> temperature = measures.required(
                "temperature", "temperature of the bottles", PlausibleRange.of("temperature", Kind.TEMPERATURE));
        Optional<RuleChoice> rules = rules(section);
        Optional<ReferenceCondition> litres = litres(section, rules);
        Optional<Measure<Duration>> reserve =
                measures.required("reserve", "reserve", PlausibleRange.of("reserve", FlightKinds.TIME));
        Optional<Measure<Double>> margin =
                measures.required("margin", "margin", PlausibleRange.of("margin", FlightKinds.SHARE));
        Optional<Measure<Double>> descent =
                measures.required("descent", "rate of descent", PlausibleRange.of("descent", FlightKinds.DESCENT));
        List<PersonReader.PersonLine> people = list(
                        "people", "person", "name: Pilot, role: crew", FlightLimits.MOST_PEOPLE)
                .read(section, new PersonReader(problems)::read);
        FlightProfile profile = new FlightProfile(folder, problems);
        profile.read(section);
        List<BoardReader.BottleLine> bottles = list(
                        "bottles", "bottle", "name: R1, water_volume: 2 L", FlightLimits.MOST_BOTTLES)
                .read(section, new BoardReader(problems)::read);
        section.reportStrangers();
        if (problems.haveErrors()
                || profile.trackFails()
                || temperature.isEmpty()
                || rules.isEmpty()
                || litres.isEmpty()
                || reserve.isEmpty()
                || margin.isEmpty()
                || descent.isEmpty()) {
            return new Result(Optional.empty(), profile.trackFile());
        }
        List<Occupant> occupants =
                people.stream().map(PersonReader.PersonLine::occupant).toList();
        List<OxygenRule> texts = OxygenRules.ofSet(rules.get().set());
        Optional<FlightFile> file = profile.profile(occupants, texts)
                .map(flown -> new FlightFile(
                        new FlightRequest(
                                flown,
                                occupants,
                                texts,
                                bottles.stream()
                                        .map(BoardReader.BottleLine::bottle)
                                        .toList(),
                                litres.get(),
                                temperature.get().value(),
                                reserve.get().value(),
                                margin.get().value(),
                                descent.get().value()),
                        rules.get(),
                        FlightUnits.of(
                                bottles.get(0).unit(),
                                temperature.get().unit(),
                                profile.altitudeUnit().orElse(people.get(0).unit()),
                                descent.get().written()),
                        places(bottles),
                        profile.notes()));
        return new Result(file, profile.trackFile());
    }

    private static Map<String, Place> places(List<BoardReader.BottleLine> bottles) {
        return bottles.stream()
                .collect(Collectors.toMap(BoardReader.BottleLine::name, BoardReader.BottleLine::readingPlace));
    }

    private ListReader list(String key, String word, String example, int most) {
        return new ListReader(key, word, example, most, "a flight", problems);
    }

    private Optional<RuleChoice> rules(Section section) {
        Optional<Scalar> typed = section.required("rules", "rule set", "us-91");
        Optional<RuleChoice> choice = typed.map(Scalar::text).flatMap(RuleChoice::find);
        if (typed.isPresent() && choice.isEmpty()) {
            problems.error(typed.get().place(), RuleChoice.unknown(typed.get().text()));
        }
        return choice;
    }

    private Optional<ReferenceCondition> litres(Section section, Optional<RuleChoice> rules) {
        if (section.find("litres_at").isEmpty()) {
            return rules.map(RuleChoice::litres);
        }
        Optional<Scalar> typed = section.optional("litres_at", "condition of litres", "70 F");
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        return switch (typed.get().text().replace(" ", "")) {
            case "70F" -> Optional.of(ReferenceCondition.US_70F_1ATM);
            case "15C" -> Optional.of(ReferenceCondition.ISO_15C_1ATM);
            default -> {
                problems.error(
                        typed.get().place(),
                        "The condition of litres (" + typed.get().text() + ") must be 70 F or 15 C, each at 1.01325 bar"
                                + " absolute. A maker's figures say which.");
                yield Optional.empty();
            }
        };
    }
}
