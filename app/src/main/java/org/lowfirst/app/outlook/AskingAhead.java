package org.lowfirst.app.outlook;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.ahead.LookedAhead;
import org.lowfirst.app.honest.BenchSource;
import org.lowfirst.app.honest.BenchSource.Standing;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.ahead.AheadOutcome;
import org.lowfirst.planning.ahead.AheadRequest;
import org.lowfirst.planning.ahead.Forecast;
import org.lowfirst.planning.ahead.LookingAhead;
import org.lowfirst.planning.ahead.Ordering;
import org.lowfirst.planning.ahead.PlannedEvent;
import org.lowfirst.planning.ahead.UseGuess;
import org.lowfirst.planning.study.Objection;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Settings;

/** Puts one bench into the planner's words, today and in the past, and looks ahead for it. Thread-safe. */
public final class AskingAhead {

    private static final long SEED = 1;

    private final BenchSource source;

    public AskingAhead(BenchSource source) {
        this.source = source;
    }

    /**
     * The bench today.
     *
     * @param temperature of the bench; null for its usual one
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public BenchToday today(BenchId bench, @Nullable Temperature temperature) {
        Standing standing = source.getStanding(bench);
        Settings settings = standing.bench().settings();
        Temperature at =
                temperature == null ? settings.surroundings().usualTemperature().temperature() : temperature;
        Conditions conditions = new Conditions(
                source.gas(),
                at,
                settings.rules().figures().referenceTemperature().temperature(),
                settings.surroundings().ambient().absolute(),
                settings.surroundings().hoseVolume().volume());
        return new BenchToday(standing.bench(), conditions, source.listBank(bench, at));
    }

    /**
     * The use of the bench so far.
     *
     * @param zone where it stands
     * @param today first day that is not past
     */
    public PastUse past(BenchId bench, ZoneId zone, LocalDate today) {
        Standing standing = source.getStanding(bench);
        return FillsOfAJournal.of(standing.bench(), source.listEntries(bench, standing.head()), zone, today);
    }

    /**
     * The figures the bench looks ahead with.
     *
     * @param zone where it stands
     */
    public KeptFigures kept(BenchId bench, ZoneId zone, LocalDate today) {
        return KeptFigures.of(
                source.listEntries(bench, source.getStanding(bench).head()), zone, today);
    }

    /** What came of looking ahead for a bench. */
    public sealed interface Look {

        /** @param past the use it rests on */
        record Seen(LookedAhead looked, PastUse past) implements Look {}

        /** Nothing was computed. */
        record Unseen(Objection why, ShownUnits units) implements Look {

            /** Why, as a sentence. */
            public String inWords() {
                return why.inWords(units);
            }
        }
    }

    /**
     * How long the bank lasts at the bench's usual temperature, with what it has kept.
     *
     * @param zone where it stands
     */
    public Look look(BenchId bench, ZoneId zone, LocalDate today) {
        return look(bench, zone, today, null, null, List.of());
    }

    /**
     * How long the bank lasts at the bench's usual temperature, with what it has kept unless told otherwise.
     *
     * @param zone where it stands
     * @param leadDays from order to delivery; null for the kept ones
     * @param reserveFills null for the kept ones
     * @param more beside what is planned at the bench
     */
    public Look look(
            BenchId bench,
            ZoneId zone,
            LocalDate today,
            @Nullable Integer leadDays,
            @Nullable Integer reserveFills,
            List<MoreFills> more) {
        KeptFigures kept = kept(bench, zone, today);
        Ordering ordering = new Ordering(
                leadDays == null ? kept.ordering().leadDays() : leadDays,
                reserveFills == null ? kept.ordering().reserveFills() : reserveFills);
        List<PlannedEvent> events = more.stream().map(MoreFills::event).toList();
        return look(bench, null, zone, today, ordering, events, kept.guess());
    }

    /**
     * How long the bank lasts, with what is planned at the bench.
     *
     * @param temperature of the bench; null for its usual one
     * @param zone where it stands
     * @param more planned events that the bench has not kept
     * @param guess null for none
     */
    public Look look(
            BenchId bench,
            @Nullable Temperature temperature,
            ZoneId zone,
            LocalDate today,
            Ordering ordering,
            List<PlannedEvent> more,
            @Nullable UseGuess guess) {
        BenchToday now = today(bench, temperature);
        PastUse past = past(bench, zone, today);
        List<PlannedEvent> events = new ArrayList<>(more);
        now.bench().areas().outlook().listFrom(today).stream()
                .map(planned -> new PlannedEvent(
                        planned.name(),
                        planned.from(),
                        planned.days(),
                        planned.fills().doubleValue()))
                .forEach(events::add);
        AheadRequest request = new AheadRequest(
                now.conditions(), now.bank(), past.history(), past.usual(), events, guess, ordering, today, SEED);
        AheadOutcome outcome = LookingAhead.look(request);
        return outcome instanceof Forecast forecast
                ? new Look.Seen(new LookedAhead(request, forecast, now.units()), past)
                : new Look.Unseen(((AheadOutcome.Refused) outcome).why(), now.units());
    }
}
