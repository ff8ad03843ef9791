package org.lowfirst.app.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.session.BottleEnd;
import org.lowfirst.planning.session.SessionPlan;
import org.lowfirst.planning.session.SessionStep;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.FillId;
import org.lowfirst.station.PlannedStage;
import org.lowfirst.station.SessionWish;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.Supply;
import org.lowfirst.transfer.Ending;
import org.lowfirst.transfer.Hose;
import org.lowfirst.transfer.Stage;
import org.lowfirst.transfer.StageResult;
import org.lowfirst.transfer.Vessel;

/**
 * The stages of a plan as the bench keeps them, followed once more from what the book says is in every cylinder. Stages that
 * lift a bottle by less than a gauge can tell are left out, and those that somebody skipped; what comes after is as it is then.
 */
final class FollowedStages {

    private final BenchState state;
    private final GasCount count;
    private final Temperature temperature;
    private final AbsolutePressure ambient;
    private final Volume hose;
    private final Map<String, Supply> supplies = new HashMap<>();
    private final Map<String, SessionWish> wishes = new HashMap<>();
    private final Map<FillId, Vessel> bottles = new HashMap<>();
    private final Map<FillId, GaugePressure> readings = new HashMap<>();
    private final Map<FillId, GaugePressure> stops = new HashMap<>();
    private final Map<String, Vessel> bank = new HashMap<>();

    /** @param wanted the bottles as they stand, with the temperature that all is planned at */
    FollowedStages(BenchState state, GasCount count, List<SessionWish> wanted) {
        this.state = state;
        this.count = count;
        this.temperature = wanted.get(0).before().temperature().temperature();
        this.ambient = state.bench().settings().surroundings().ambient().absolute();
        this.hose = state.bench().settings().surroundings().hoseVolume().volume();
        state.bench().bank().forEach(supply -> {
            supplies.put(supply.details().name(), supply);
            bank.put(
                    supply.details().name(),
                    state.book().getAccount(supply.id()).vessel());
        });
        for (SessionWish wish : wanted) {
            Bottle bottle = state.bench().getBottle(wish.bottle());
            wishes.put(bottle.details().name(), wish);
            bottles.put(wish.fill(), vessel(wish, wish.before().pressure().gauge()));
            readings.put(wish.fill(), wish.before().pressure().gauge());
        }
    }

    private Vessel vessel(SessionWish wish, GaugePressure reading) {
        Volume water = state.bench()
                .getBottle(wish.bottle())
                .details()
                .waterVolume()
                .stated()
                .volume();
        return new Vessel(
                water, count.findContents(water, reading, temperature, ambient).orElse(Amount.NONE));
    }

    /**
     * @param plan made from the same bottles
     * @param leftOut stages that are not done
     */
    List<PlannedStage> of(SessionPlan plan, BiPredicate<FillId, Supply> leftOut) {
        plan.course().ends().forEach(this::stopsAt);
        plan.course().steps().stream()
                .filter(step -> step.ends() == Ending.TARGET)
                .forEach(step -> stops.put(fill(step), step.bottleReading().after()));
        List<PlannedStage> stages = new ArrayList<>();
        for (SessionStep step : plan.course().steps()) {
            Supply supply = supplies.get(step.supply());
            if (supply != null && !leftOut.test(fill(step), supply)) {
                follow(step, supply, stages);
            }
        }
        return stages;
    }

    private FillId fill(SessionStep step) {
        return wish(step.bottle()).fill();
    }

    private SessionWish wish(String bottle) {
        SessionWish wish = wishes.get(bottle);
        if (wish == null) {
            throw new IllegalArgumentException("The bottle (" + bottle + ") must be one of the session.");
        }
        return wish;
    }

    private void stopsAt(BottleEnd end) {
        stops.put(wish(end.name()).fill(), end.stop());
    }

    private void follow(SessionStep step, Supply supply, List<PlannedStage> stages) {
        SessionWish wish = wish(step.bottle());
        Vessel bottle = bottles.getOrDefault(
                wish.fill(), vessel(wish, wish.before().pressure().gauge()));
        GaugePressure stop = stops.getOrDefault(wish.fill(), wish.target().gauge());
        Vessel giver = bank.getOrDefault(
                step.supply(), state.book().getAccount(supply.id()).vessel());
        Hose purged = hose.cubicMetres() > 0.0
                ? new Hose(hose, count.atAmbient(temperature, ambient).amountIn(hose))
                : Hose.NONE;
        StageResult result =
                Stage.join(giver, purged, bottle, vessel(wish, stop).density());
        GaugePressure after = result.ending() == Ending.TARGET
                ? stop
                : count.shown(result.bottle().waterVolume(), result.bottle().contents(), temperature, ambient);
        double rise_Pa =
                after.pascals() - readings.getOrDefault(wish.fill(), after).pascals();
        if (rise_Pa < tellable_Pa()) {
            return;
        }
        bank.put(step.supply(), result.supply());
        bottles.put(wish.fill(), result.bottle());
        readings.put(wish.fill(), after);
        boolean atStop = result.ending() == Ending.TARGET;
        stages.add(new PlannedStage(wish.fill(), supply.id(), stated(after, atStop), atStop));
    }

    private double tellable_Pa() {
        return state.bench()
                .settings()
                .rules()
                .figures()
                .repeatability()
                .gauge()
                .pascals();
    }

    /** To a tenth; a stop is never rounded up. */
    private StatedPressure stated(GaugePressure pressure, boolean stop) {
        PressureUnit unit = state.bench().settings().units().pressure();
        RoundingMode rounding = stop ? RoundingMode.FLOOR : RoundingMode.HALF_UP;
        double value = pressure.to(unit) + (stop ? 1e-6 : 0.0);
        return new StatedPressure(BigDecimal.valueOf(value).setScale(1, rounding), unit);
    }
}
