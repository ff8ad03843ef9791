package org.lowfirst.planning.warm;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.Evaluated;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.warm.StopPlan.Now;
import org.lowfirst.planning.warm.StopPlan.StopAt;
import org.lowfirst.transfer.warm.Answer;
import org.lowfirst.transfer.warm.Rest;
import org.lowfirst.transfer.warm.RiseRate;
import org.lowfirst.transfer.warm.Sampling;
import org.lowfirst.transfer.warm.Settling;
import org.lowfirst.transfer.warm.WarmRefusal;
import org.lowfirst.transfer.warm.WarmState;
import org.lowfirst.transfer.warm.WarmVessel;

/**
 * Stop and settle: where to shut the valve of a fill in progress, what the bottle then settles to, how long that takes and whether
 * it is worth topping up.
 */
public final class StopAndSettle {

    private StopAndSettle() {}

    /** The bottle as it is, before anything is decided. */
    private record Found(WarmState state, Now now, @Nullable FillingSoFar soFar) {}

    public static Answer<StopPlan> plan(StopRequest request) {
        WarmRefusal wrong = WarmCheck.first(
                WarmCheck.bottle(request.bottle()),
                WarmCheck.air("temperature of the bench", request.bench().temperature()),
                WarmCheck.compensation(request.compensation()),
                request.target() == null ? null : WarmCheck.reading("target", request.target()));
        return wrong != null ? Answer.refused(wrong) : found(request).then(found -> plan(request, found));
    }

    private static Answer<Found> found(StopRequest request) {
        WarmBench bench = request.bench();
        RatedBottle bottle = request.bottle();
        Answer<FillingSoFar> followed = followed(request);
        if (followed != null) {
            return followed.map(soFar -> new Found(
                    soFar.end(),
                    new Now(
                            soFar.reading(bench),
                            soFar.end().gas(),
                            soFar.end().wall().get(0),
                            true,
                            false),
                    soFar));
        }
        GasNow.Stated stated = (GasNow.Stated) request.now();
        Temperature wall = stated.wall() == null ? stated.gas() : stated.wall();
        WarmRefusal wrong = WarmCheck.first(
                WarmCheck.reading("reading", stated.reading()),
                WarmCheck.gas("temperature of the gas", stated.gas()),
                WarmCheck.gas("temperature of the wall", wall));
        if (wrong != null) {
            return Answer.refused(wrong);
        }
        Evaluated<WarmState> state = WarmState.at(
                new WarmVessel(bottle.waterVolume(), bottle.wall()),
                stated.reading(),
                stated.gas(),
                wall,
                bench.surroundings(),
                bench.gas());
        if (!(state instanceof Evaluated.Value<WarmState> there)) {
            return Answer.refused(WarmRefusal.of(state));
        }
        Now now = new Now(stated.reading(), stated.gas(), wall, false, stated.wall() == null);
        return Answer.of(new Found(there.value(), now, null));
    }

    /** The fill as it was followed; null when somebody says how warm the gas is. */
    private static @Nullable Answer<FillingSoFar> followed(StopRequest request) {
        if (request.now() instanceof GasNow.Filling filling) {
            return FillingSoFar.follow(request.bottle(), filling.readings(), request.bench());
        }
        return request.now() instanceof GasNow.Opening opening
                ? FillingSoFar.opening(request.bottle(), opening, request.bench())
                : null;
    }

    private static Answer<StopPlan> plan(StopRequest request, Found found) {
        WarmBench bench = request.bench();
        FillLimits limits = FillLimits.of(request.bottle(), bench, request.compensation(), request.target());
        Answer<Temperature> gasAtStop = gasAtStop(found, limits, bench);
        Rest rest = new Rest(
                found.state(),
                bench.surroundings(),
                Assumptions.share("settled.share"),
                new Sampling(Assumptions.seconds("rest.interval"), Assumptions.seconds("rest.longest")));
        return gasAtStop.then(
                gas -> bench.model().rest(rest).then(settling -> result(request, found, limits, gas, settling)));
    }

    private static Answer<Temperature> gasAtStop(Found found, FillLimits limits, WarmBench bench) {
        if (found.soFar() == null) {
            return Answer.of(found.now().gas());
        }
        return found.soFar().onTo(limits.stop(), bench).map(WarmState::gas);
    }

    private static Answer<StopPlan> result(
            StopRequest request, Found found, FillLimits limits, Temperature gasAtStop, Settling settling) {
        WarmBench bench = request.bench();
        RatedBottle bottle = request.bottle();
        Temperature atLeast = found.soFar() != null && request.compensation() instanceof Compensation.On
                ? colder(gasAtStop, bench.temperature())
                : gasAtStop;
        GaugePressure reading = limits.reading(bench, atLeast);
        boolean beyond = found.now().reading().compareTo(reading) >= 0;
        Density atStop = beyond
                ? found.state().density()
                : bench.gas()
                        .density(reading.toAbsolute(bench.ambient()), gasAtStop)
                        .orElseThrow();
        Evaluated<DevelopedPressure> developed = DevelopedPressure.of(bench, bottle.servicePressure(), atStop);
        if (!(developed instanceof Evaluated.Value<DevelopedPressure> hot)) {
            return Answer.refused(WarmRefusal.of(developed));
        }
        StopAt stop = new StopAt(
                reading,
                limits.reason(bench, atLeast),
                gasAtStop,
                reading(bench, limits.rated(), bench.temperature()),
                hot.value());
        return Answer.of(new StopPlan(
                request,
                found.now(),
                stop,
                settled(bottle, bench, limits, found.state().density()),
                settled(bottle, bench, limits, atStop),
                settling,
                topUp(bottle, bench, limits, found.state().density()),
                cautions(request, found)));
    }

    /**
     * A gas temperature that was computed, less its margin, but no colder than the bench: where the gauge may go beyond the marked
     * pressure, gas that is colder than computed must not make too much of it.
     */
    private static Temperature colder(Temperature computed, Temperature bench) {
        double least_K = Math.min(computed.kelvin(), bench.kelvin());
        return new Temperature(Math.max(least_K, computed.kelvin() - margin_K()));
    }

    /** How much colder than computed the gas is taken to be where a stop goes beyond the marked pressure [K]. */
    public static double margin_K() {
        return Assumptions.kelvin("stop.gas-margin");
    }

    /** How fast a gauge rises at least, where nothing was read yet. */
    public static RiseRate slowRise() {
        return new RiseRate(Assumptions.pascalsPerSecond("stop.slow-rise"));
    }

    static SettledBottle settled(RatedBottle bottle, WarmBench bench, FillLimits limits, Density density) {
        Amount contents = density.amountIn(bottle.waterVolume());
        return new SettledBottle(
                reading(bench, density, bench.temperature()),
                reading(bench, density, bench.rule().temperature()),
                limits.percent(density),
                contents,
                bench.gas().freeVolume(contents, condition(bench.rule())));
    }

    private static TopUp topUp(RatedBottle bottle, WarmBench bench, FillLimits limits, Density density) {
        double missing = Math.max(0.0, limits.most().molesPerCubicMetre() - density.molesPerCubicMetre());
        Amount amount = new Amount(missing * bottle.waterVolume().cubicMetres());
        double percent = limits.percent(new Density(missing));
        return new TopUp(
                percent >= 100.0 * Assumptions.share("top-up.least-share"),
                amount,
                bench.gas().freeVolume(amount, condition(bench.rule())),
                percent,
                reading(bench, limits.most(), bench.temperature()));
    }

    private static GaugePressure reading(WarmBench bench, Density density, Temperature temperature) {
        return bench.gas().pressure(density, temperature).orElseThrow().toGauge(bench.ambient());
    }

    static ReferenceCondition condition(ReferenceRule rule) {
        return rule == ReferenceRule.US ? ReferenceCondition.US_70F_1ATM : ReferenceCondition.ISO_15C_1ATM;
    }

    private static List<Caution> cautions(StopRequest request, Found found) {
        List<Caution> cautions = new ArrayList<>(
                List.of(Caution.FOLLOW_MARKING_AND_LOCAL_RULES, Caution.OPEN_SLOWLY, Caution.COMPUTED_TEMPERATURE));
        if (request.bottle().wall().assumed()) {
            cautions.add(Caution.ASSUMED_WALL);
        }
        if (request.compensation() instanceof Compensation.On) {
            cautions.add(Caution.COMPENSATION_ON);
        }
        if (found.now().reading().compareTo(request.bottle().servicePressure()) > 0) {
            cautions.add(Caution.ABOVE_SERVICE_PRESSURE);
        }
        return Collections.unmodifiableList(cautions);
    }
}
