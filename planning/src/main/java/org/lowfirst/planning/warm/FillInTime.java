package org.lowfirst.planning.warm;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;
import org.lowfirst.transfer.warm.Answer;
import org.lowfirst.transfer.warm.RiseRate;
import org.lowfirst.transfer.warm.WarmRefusal;

/** A fill on a clock: the whole cascade at a rise of the gauge, lowest supply first. */
public final class FillInTime {

    private static final int MOST_SUPPLIES = 64;
    private static final int MOST_TOP_UPS = 10;
    private static final double LONGEST_S = 86_400.0;
    private static final double SAME_PA = 1.0;

    private FillInTime() {}

    /** The schedule at the pace asked for. */
    public static Answer<FillSchedule> plan(FillInTimeRequest request) {
        return plan(request, Assumptions.seconds("series.interval"));
    }

    /**
     * One pace and what comes of it.
     *
     * @param rate how fast the gauge was let rise
     * @param total_s how long the fill takes [s]
     * @param peakBottleGas highest temperature of the gas in the bottle
     * @param lowestSupplyGas lowest temperature of the gas in a supply
     * @param settled what the bottle settles to
     */
    public record PaceOutcome(
            RiseRate rate,
            double total_s,
            Temperature peakBottleGas,
            Temperature lowestSupplyGas,
            SettledBottle settled) {}

    /** Gentler or faster: the same fill at several rates, in the order given. */
    public static Answer<List<PaceOutcome>> compare(FillInTimeRequest request, List<RiseRate> rates) {
        List<PaceOutcome> outcomes = new ArrayList<>();
        for (RiseRate rate : rates) {
            Answer<FillSchedule> answer = plan(request.with(request.pace().with(rate)), Double.POSITIVE_INFINITY);
            if (!(answer instanceof Answer.Given<FillSchedule> given)) {
                return Answer.refused(((Answer.Refused<FillSchedule>) answer).refusal());
            }
            FillSchedule schedule = given.value();
            outcomes.add(new PaceOutcome(
                    rate,
                    schedule.total_s(),
                    schedule.peakBottleGas(),
                    schedule.lowestSupplyGas(),
                    schedule.settled()));
        }
        return Answer.of(List.copyOf(outcomes));
    }

    static Answer<FillSchedule> plan(FillInTimeRequest request, double interval_s) {
        WarmRefusal wrong = wrong(request);
        if (wrong != null) {
            return Answer.refused(wrong);
        }
        FillLimits limits = FillLimits.of(request.bottle(), request.bench(), request.compensation(), request.target());
        GaugePressure most = limits.reading(request.bench(), request.bench().temperature());
        if (request.reading().pascals() > most.pascals() + SAME_PA) {
            return Answer.refused(new WarmRefusal.PressureOutOfRange(
                    "reading of bottle " + request.bottle().name(), request.reading(), GaugePressure.ZERO, most));
        }
        return new FillOnAClock(request, limits, interval_s).run();
    }

    private static @Nullable WarmRefusal wrong(FillInTimeRequest request) {
        Pace pace = request.pace();
        WarmRefusal wrong = WarmCheck.first(
                WarmCheck.bottle(request.bottle()),
                WarmCheck.reading("reading of bottle " + request.bottle().name(), request.reading()),
                request.target() == null ? null : WarmCheck.reading("target", request.target()),
                WarmCheck.air("temperature of the bench", request.bench().temperature()),
                WarmCheck.compensation(request.compensation()),
                WarmCheck.number("number of supplies", request.bank().size(), 1, MOST_SUPPLIES, "supplies"),
                WarmCheck.number(
                        "rise of the gauge", pace.rate().toPerMinute(PressureUnit.BAR), 0.01, 1_000.0, "bar/min"),
                WarmCheck.number("time to change over", pace.changeover_s(), 0.0, LONGEST_S, "s"),
                WarmCheck.number("number of top-ups", pace.topUps(), 0, MOST_TOP_UPS, "top-ups"),
                WarmCheck.number("rest before a top-up", pace.rest_s(), 0.0, LONGEST_S, "s"),
                WarmCheck.number("hose volume", request.hose().toLitres(), 0.0, 10.0, "L"));
        for (TimedSupply supply : request.bank()) {
            wrong = WarmCheck.first(
                    wrong,
                    WarmCheck.volume("water volume of supply " + supply.name(), supply.waterVolume()),
                    WarmCheck.reading("reading of supply " + supply.name(), supply.reading()));
        }
        return wrong != null ? wrong : canRise(request);
    }

    private static @Nullable WarmRefusal canRise(FillInTimeRequest request) {
        if (request.target() != null && request.target().compareTo(request.reading()) <= 0) {
            return new WarmRefusal.MustRise("target", request.target(), request.reading());
        }
        GaugePressure highest = request.bank().stream()
                .map(TimedSupply::reading)
                .max(GaugePressure::compareTo)
                .orElse(GaugePressure.ZERO);
        return highest.compareTo(request.reading()) > 0
                ? null
                : new WarmRefusal.MustRise("highest reading of the bank", highest, request.reading());
    }

    static List<Caution> cautions(FillInTimeRequest request) {
        List<Caution> cautions = new ArrayList<>(
                List.of(Caution.FOLLOW_MARKING_AND_LOCAL_RULES, Caution.OPEN_SLOWLY, Caution.COMPUTED_TEMPERATURE));
        if (request.bottle().wall().assumed()
                || request.bank().stream().anyMatch(supply -> supply.wall().assumed())) {
            cautions.add(Caution.ASSUMED_WALL);
        }
        if (request.compensation() instanceof Compensation.On) {
            cautions.add(Caution.COMPENSATION_ON);
        }
        return cautions;
    }
}
