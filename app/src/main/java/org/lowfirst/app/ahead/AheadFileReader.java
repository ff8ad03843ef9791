package org.lowfirst.app.ahead;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.file.Kind;
import org.lowfirst.app.file.ListReader;
import org.lowfirst.app.file.Measure;
import org.lowfirst.app.file.MeasureReader;
import org.lowfirst.app.file.NameReader;
import org.lowfirst.app.file.NumberReader;
import org.lowfirst.app.file.PlausibleRange;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.QuestionFile.Shape;
import org.lowfirst.app.file.Section;
import org.lowfirst.app.file.Tree.Mapping;
import org.lowfirst.app.file.Tree.Scalar;
import org.lowfirst.app.plan.BankReader;
import org.lowfirst.app.plan.FileBank;
import org.lowfirst.app.plan.UsedBottles;
import org.lowfirst.app.plan.UsedBottles.UseLine;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.ahead.AheadRequest;
import org.lowfirst.planning.ahead.FilledOn;
import org.lowfirst.planning.ahead.Ordering;
import org.lowfirst.planning.ahead.PlannedEvent;
import org.lowfirst.planning.ahead.UseGuess;
import org.lowfirst.planning.ahead.UseHistory;
import org.lowfirst.planning.ahead.UsualFill;
import org.lowfirst.planning.study.BottleUse;
import org.lowfirst.planning.study.Demand;

/** Reads a file about looking ahead and collects everything that is wrong with it. */
final class AheadFileReader {

    private static final int MOST_FILLS = 20_000;
    private static final int MOST_EVENTS = 200;
    private static final int MOST_DAYS = 40_000;
    private static final List<String> OWN_KEYS = List.of(
            "today",
            "lead_days",
            "reserve_fills",
            "bottles",
            "recorded_from",
            "recorded_until",
            "fills",
            "events",
            "guess_fills_per_year",
            "guess_weighs_fills",
            "months",
            "weekdays",
            "seed");
    private static final List<String> FILL_KEYS = List.of("date", "bottle", "start");
    private static final List<String> EVENT_KEYS = List.of("name", "date", "days", "fills");

    static final Shape SHAPE = new Shape(
            "the file",
            Stream.of(BankReader.KEYS, OWN_KEYS).flatMap(List::stream).toList(),
            "such a file has one line for each supply, bottle and fill",
            "examples/ahead.yaml");

    private final EquationOfState gas;
    private final Problems problems;
    private final NumberReader numbers;
    private final Map<String, BottleUse> bottles = new HashMap<>();

    AheadFileReader(EquationOfState gas, Problems problems) {
        this.gas = gas;
        this.problems = problems;
        this.numbers = new NumberReader(problems);
    }

    /** What the file asks; empty when it cannot be told, and then there is at least one error. */
    Optional<AheadFile> read(Section section) {
        Optional<FileBank> bank = new BankReader(gas, "a file", problems).read(section);
        Optional<LocalDate> today = section.required("today", "day to look ahead from", "2026-05-01")
                .flatMap(this::date);
        List<UseLine> usual = new UsedBottles("a file", numbers, problems).read(section);
        usual.forEach(line -> bottles.put(line.name(), line.use()));
        Optional<UseHistory> history = today.flatMap(day -> history(section, day));
        List<PlannedEvent> events = section.find("events").isEmpty()
                ? List.of()
                : new ListReader(
                                "events",
                                "event",
                                "name: Week in wave, date: 2026-06-01",
                                MOST_EVENTS,
                                "a file",
                                problems)
                        .read(section, this::event);
        Ordering ordering = new Ordering(
                small(numbers.optionalWhole(section, "lead_days", "days from order to delivery", "3")
                        .orElse(0L)),
                small(numbers.optionalWhole(section, "reserve_fills", "reserve of fills", "2")
                        .orElse(0L)));
        @Nullable UseGuess guess = guess(section);
        long seed = numbers.optionalWhole(section, "seed", "seed", "1").orElse(1L);
        section.reportStrangers();
        if (problems.haveErrors() || bank.isEmpty() || today.isEmpty() || history.isEmpty()) {
            return Optional.empty();
        }
        bank.get().warnOfMixedUnits(List.of(), problems);
        AheadRequest request = new AheadRequest(
                bank.get().conditions(),
                bank.get().supplies(),
                history.get(),
                usual.stream().map(line -> fill(line.use(), middle(line.use()))).toList(),
                events,
                guess,
                ordering,
                today.get(),
                seed);
        return Optional.of(new AheadFile(request, bank.get().units(), numbers));
    }

    private Optional<UseHistory> history(Section section, LocalDate today) {
        if (section.find("recorded_from").isEmpty() && section.find("fills").isEmpty()) {
            return Optional.of(UseHistory.none(today));
        }
        Optional<LocalDate> from = section.required("recorded_from", "first day that was recorded", "2025-05-01")
                .flatMap(this::date);
        Optional<LocalDate> until = section.find("recorded_until").isEmpty()
                ? Optional.of(today.minusDays(1))
                : section.optional("recorded_until", "last day that was recorded", "2026-04-30")
                        .flatMap(this::date);
        List<FilledOn> fills = section.find("fills").isEmpty()
                ? List.of()
                : new ListReader("fills", "fill", "date: 2026-04-18, bottle: R1", MOST_FILLS, "a file", problems)
                        .read(section, this::filled);
        if (from.isEmpty() || until.isEmpty()) {
            return Optional.empty();
        }
        numbers.note("history", section.placeOf("recorded_until"));
        long days = ChronoUnit.DAYS.between(from.get(), until.get()) + 1;
        if (days < 0 || days > MOST_DAYS) {
            problems.error(
                    section.placeOf("recorded_from"),
                    "The days recorded (" + from.get() + " to " + until.get() + ", " + days + ") must be 0 to "
                            + MOST_DAYS + ". Correct one of the dates.");
            return Optional.empty();
        }
        return Optional.of(new UseHistory(from.get(), (int) days, fills));
    }

    private Optional<FilledOn> filled(Mapping mapping, int number) {
        Section section = new Section(mapping, "a fill", FILL_KEYS, problems);
        Optional<LocalDate> date =
                section.required("date", "date of a fill", "2026-04-18").flatMap(this::date);
        Optional<Scalar> name = section.required("bottle", "bottle of a fill", "R1");
        Optional<BottleUse> use = name.flatMap(one -> Optional.ofNullable(bottles.get(one.text())));
        if (name.isPresent() && use.isEmpty() && !bottles.isEmpty()) {
            problems.error(
                    name.get().place(),
                    "The bottle \"" + name.get().text() + "\" of fill " + number
                            + " is not under bottles. Add it there or correct the name.");
        }
        Optional<GaugePressure> start = new MeasureReader(section, problems)
                .optional("start", "start reading of a fill", PlausibleRange.of("reading", Kind.PRESSURE))
                .map(Measure::value);
        section.reportStrangers();
        date.ifPresent(day -> numbers.note("fill of " + day, section.placeOf("date")));
        return date.isEmpty() || use.isEmpty()
                ? Optional.empty()
                : Optional.of(new FilledOn(date.get(), fill(use.get(), start.orElseGet(() -> middle(use.get())))));
    }

    private Optional<PlannedEvent> event(Mapping mapping, int number) {
        Section section = new Section(mapping, "an event", EVENT_KEYS, problems);
        Optional<String> name = new NameReader(problems).read(section, "event", number, "Week in wave");
        Optional<LocalDate> date =
                section.required("date", "date of an event", "2026-06-01").flatMap(this::date);
        Optional<Double> fills =
                numbers.required(section, "fills", "fills of event " + name.orElse(Integer.toString(number)), "6");
        int days = small(
                numbers.optionalWhole(section, "days", "days of event " + name.orElse(Integer.toString(number)), "7")
                        .orElse(1L));
        section.reportStrangers();
        return name.isEmpty() || date.isEmpty() || fills.isEmpty()
                ? Optional.empty()
                : Optional.of(new PlannedEvent(name.get(), date.get(), days, fills.get()));
    }

    private @Nullable UseGuess guess(Section section) {
        Optional<Double> fills = numbers.optional(section, "guess_fills_per_year", "guess of fills a year", "120");
        double weighs = numbers.optional(section, "guess_weighs_fills", "weight of the guess", "5")
                .orElse(5.0);
        List<Double> months = numbers.optionalList(
                        section, "months", "month factors", "[1, 1, 2, 4, 5, 5, 5, 5, 4, 2, 1, 1]")
                .orElse(Demand.EVERY_MONTH_ALIKE);
        List<Double> weekdays = numbers.optionalList(section, "weekdays", "weekday factors", "[1, 1, 1, 1, 2, 6, 5]")
                .orElse(Demand.EVERY_DAY_ALIKE);
        return fills.isEmpty() ? null : new UseGuess(fills.get(), weighs, weekdays, months);
    }

    private Optional<LocalDate> date(Scalar scalar) {
        try {
            return Optional.of(LocalDate.parse(scalar.text().strip()));
        } catch (DateTimeParseException unreadable) {
            problems.error(
                    scalar.place(),
                    "The date (" + scalar.text() + ") must be a day of the calendar as year-month-day, for example"
                            + " 2026-05-01.");
            return Optional.empty();
        }
    }

    private static UsualFill fill(BottleUse use, GaugePressure start) {
        return new UsualFill(use.name(), use.waterVolume(), use.servicePressure(), start, use.target());
    }

    private static GaugePressure middle(BottleUse use) {
        return new GaugePressure(
                0.5 * (use.startLowest().pascals() + use.startHighest().pascals()));
    }

    /** Numbers beyond this are refused later; they only must not wrap around. */
    private static int small(long number) {
        return (int) Math.max(-1_000_000_000, Math.min(1_000_000_000, number));
    }
}
