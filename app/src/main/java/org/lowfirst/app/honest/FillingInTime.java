package org.lowfirst.app.honest;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.warm.FastestFill;
import org.lowfirst.planning.warm.FillInTime;
import org.lowfirst.planning.warm.FillInTime.PaceOutcome;
import org.lowfirst.planning.warm.FillInTimeRequest;
import org.lowfirst.planning.warm.FillSchedule;
import org.lowfirst.planning.warm.Pace;
import org.lowfirst.planning.warm.RatedBottle;
import org.lowfirst.planning.warm.RiseLimits;
import org.lowfirst.planning.warm.RiseLimits.RiseLimit;
import org.lowfirst.planning.warm.TimedSupply;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleId;
import org.lowfirst.transfer.warm.Answer;
import org.lowfirst.transfer.warm.RiseRate;

/** Puts a fill on a clock: minutes for each stage, how warm the gas gets, gentler or faster. Records nothing. */
public final class FillingInTime {

    private static final double[] GENTLER_TO_FASTER = {0.25, 0.5, 1.0, 2.0};

    private final BenchSource source;
    private final Problems problems;

    public FillingInTime(BenchSource source, Locale locale) {
        this.source = source;
        this.problems = new Problems(Wording.of(FillingInTime.class, locale));
    }

    /**
     * The fill to put on a clock.
     *
     * @param bottle the bottle
     * @param reading what its gauge shows, settled
     * @param target settled reading wanted; null for as full as the marking allows
     * @param temperature of the bench; null for its usual one
     * @param rate how fast the gauge is let rise; null for the slowest of the published limits
     * @param bank name of the bank to fill from; null for the usual one
     */
    public record Wish(
            BottleId bottle,
            GaugePressure reading,
            @Nullable GaugePressure target,
            @Nullable Temperature temperature,
            @Nullable RiseRate rate,
            @Nullable String bank) {

        public Wish(
                BottleId bottle,
                GaugePressure reading,
                @Nullable GaugePressure target,
                @Nullable Temperature temperature,
                @Nullable RiseRate rate) {
            this(bottle, reading, target, temperature, rate, null);
        }
    }

    /** Published limits of the rise with their sources, slowest first. */
    public List<RiseLimit> limits() {
        return RiseLimits.all();
    }

    /**
     * The whole fill on a clock, with a series for a picture.
     *
     * @throws java.util.NoSuchElementException when there is no such bench or bottle
     */
    public Outcome<FillSchedule> schedule(BenchId id, Wish wish) {
        return answer(id, request(id, wish).then(FillInTime::plan));
    }

    /** The same fill at a quarter, half, once and twice the rate, gentlest first. */
    public Outcome<List<PaceOutcome>> compare(BenchId id, Wish wish) {
        RiseRate rate = rate(wish);
        List<RiseRate> rates = new ArrayList<>();
        for (double factor : GENTLER_TO_FASTER) {
            rates.add(rate.times(factor));
        }
        return compare(id, wish, rates);
    }

    /** The same fill at these rates, in the order given. */
    public Outcome<List<PaceOutcome>> compare(BenchId id, Wish wish, List<RiseRate> rates) {
        return answer(id, request(id, wish).then(request -> FillInTime.compare(request, rates)));
    }

    /**
     * The fastest way that keeps the rate as a limit.
     *
     * @param percentShort how far from what the bottle may or shall get it may end [%], 0.01 to 50
     */
    public Outcome<FastestFill> fastest(BenchId id, Wish wish, double percentShort) {
        return answer(id, request(id, wish).then(request -> FastestFill.find(request, percentShort)));
    }

    private <T> Outcome<T> answer(BenchId id, Answer<T> answer) {
        return problems.outcome(
                answer, BenchUnits.shown(source.getStanding(id).bench().settings()));
    }

    private static RiseRate rate(Wish wish) {
        return wish.rate() == null ? RiseLimits.slowest().rate() : wish.rate();
    }

    private Answer<FillInTimeRequest> request(BenchId id, Wish wish) {
        Bench bench = source.getStanding(id).bench();
        Temperature usual = bench.settings().surroundings().usualTemperature().temperature();
        Temperature temperature = wish.temperature() == null ? usual : wish.temperature();
        Answer<List<TimedSupply>> bank = bank(
                wish.bank() == null ? source.listBank(id, temperature) : source.listBank(id, wish.bank(), temperature));
        Answer<RatedBottle> bottle = WarmDesk.bottle(
                bench.getBottle(wish.bottle()).details(), null, source.permitted(bench, wish.bottle(), source.now()));
        return bank.then(supplies -> bottle.map(rated -> new FillInTimeRequest(
                supplies,
                rated,
                wish.reading(),
                wish.target(),
                WarmDesk.bench(bench, temperature),
                WarmDesk.compensation(bench),
                bench.settings().surroundings().hoseVolume().volume(),
                Pace.steady(rate(wish)))));
    }

    private static Answer<List<TimedSupply>> bank(List<BenchSource.Banked> found) {
        List<TimedSupply> supplies = new ArrayList<>();
        for (BenchSource.Banked banked : found) {
            Answer<TimedSupply> supply = WarmDesk.supply(banked.supply().details(), banked.reading());
            if (!(supply instanceof Answer.Given<TimedSupply> given)) {
                return supply.map(List::of);
            }
            supplies.add(given.value().in(banked.turn()));
        }
        return Answer.of(List.copyOf(supplies));
    }
}
