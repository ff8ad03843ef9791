package org.lowfirst.planning.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.Change;
import org.lowfirst.planning.RankedSupply;
import org.lowfirst.planning.StopReading;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.transfer.Ending;
import org.lowfirst.transfer.Hose;
import org.lowfirst.transfer.Stage;
import org.lowfirst.transfer.StageResult;
import org.lowfirst.transfer.Vessel;

/** Follows a plan stage by stage with vessels and hose and writes down what the gauges will show. */
final class CourseWriter {

    private final Setting setting;
    private final Layout layout;
    private final List<Vessel> supplies = new ArrayList<>();
    private final List<Vessel> bottles = new ArrayList<>();
    private final List<GaugePressure> supplyReadings = new ArrayList<>();
    private final List<GaugePressure> bottleReadings = new ArrayList<>();
    private final List<SessionStep> steps = new ArrayList<>();
    private final Hose purged;
    private Hose hose;

    CourseWriter(Setting setting, Problem problem, Layout layout) {
        this.setting = setting;
        this.layout = layout;
        for (SupplyState supply : setting.open()) {
            supplies.add(vessel(supply.waterVolume(), problem.supply_molPerM3[supplies.size()]));
            supplyReadings.add(supply.reading());
        }
        for (SessionBottle asked : setting.request().bottles()) {
            bottles.add(vessel(asked.bottle().waterVolume(), problem.bottle_molPerM3[bottles.size()]));
            bottleReadings.add(asked.bottle().reading());
        }
        Volume volume = new Volume(setting.gas().hose_m3());
        purged = new Hose(volume, new Density(setting.gas().ambientDensity_molPerM3()).amountIn(volume));
        hose = purged;
    }

    private static Vessel vessel(Volume volume, double rho_molPerM3) {
        return new Vessel(volume, new Density(rho_molPerM3).amountIn(volume));
    }

    SessionCourse write(Calendar.Way calendar) {
        int lastBottle = -1;
        int lastSupply = -1;
        for (Calendar.Way way : calendar.path()) {
            int s = way.stage.supply();
            int b = layout.bottle(s, way.stage.place());
            SessionStep.Changes changes = new SessionStep.Changes(b != lastBottle, s != lastSupply);
            hose = changes.hose() ? purged : hose;
            step(s, b, changes, way.start_s);
            lastBottle = b;
            lastSupply = s;
        }
        return new SessionCourse(steps, ends(), bankAfter());
    }

    private void step(int s, int b, SessionStep.Changes changes, double start_s) {
        StageResult result = Stage.join(supplies.get(s), hose, bottles.get(b), new Density(layout.stop(b)));
        if (result.ending() == Ending.NOTHING_MOVED) {
            return;
        }
        boolean target = result.ending() == Ending.TARGET;
        GaugePressure supplyAfter =
                setting.gas().reading(result.supply().density().molesPerCubicMetre());
        GaugePressure bottleAfter = target ? stopReading(b) : supplyAfter;
        steps.add(new SessionStep(
                setting.request().bottles().get(b).bottle().name(),
                setting.open().get(s).name(),
                new Change(bottleReadings.get(b), bottleAfter),
                new Change(supplyReadings.get(s), supplyAfter),
                result.moved(),
                result.ending(),
                changes,
                start_s));
        supplies.set(s, result.supply());
        supplyReadings.set(s, supplyAfter);
        bottles.set(b, result.bottle());
        bottleReadings.set(b, bottleAfter);
        hose = result.hose();
    }

    private GaugePressure stopReading(int b) {
        GaugePressure floor = setting.request().bottles().get(b).floor();
        StopReading wish = setting.stops().get(b);
        boolean atWish = layout.stop(b) >= setting.gas().density_molPerM3(wish.reading());
        return atWish || floor == null ? wish.reading() : floor;
    }

    private List<BottleEnd> ends() {
        List<BottleEnd> ends = new ArrayList<>();
        for (int b = 0; b < bottles.size(); b++) {
            BottleToFill bottle = setting.request().bottles().get(b).bottle();
            StopReading stop = setting.stops().get(b);
            GaugePressure reading = bottleReadings.get(b);
            Readiness readiness = Double.isNaN(layout.stop(b))
                    ? Readiness.NOT_READY
                    : reading.compareTo(stop.reading()) >= 0 ? Readiness.FULL : Readiness.AT_FLOOR;
            ends.add(new BottleEnd(bottle.name(), readiness, reading, stop.reading(), stop.cap()));
        }
        return ends;
    }

    private List<RankedSupply> bankAfter() {
        Map<String, Integer> opened = new HashMap<>();
        for (int s = 0; s < supplies.size(); s++) {
            opened.put(setting.open().get(s).name(), s);
        }
        List<RankedSupply> after = new ArrayList<>();
        for (SupplyState supply : setting.request().supplies()) {
            Integer s = opened.get(supply.name());
            GaugePressure reading = s == null ? supply.reading() : supplyReadings.get(s);
            Amount contents = s == null
                    ? new Density(setting.gas().density_molPerM3(reading)).amountIn(supply.waterVolume())
                    : supplies.get(s).contents();
            after.add(new RankedSupply(0, supply.name(), supply.waterVolume(), reading, contents, supply.turn()));
        }
        after.sort(Comparator.comparing(RankedSupply::reading));
        List<RankedSupply> ranked = new ArrayList<>();
        for (RankedSupply s : after) {
            ranked.add(new RankedSupply(
                    ranked.size() + 1, s.name(), s.waterVolume(), s.reading(), s.contents(), s.turn()));
        }
        return ranked;
    }

    /** Gas above the highest stop left in the supplies that may be opened [mol]. */
    double gasLeft_mol(Problem problem) {
        double sum = 0.0;
        for (int s = 0; s < supplies.size(); s++) {
            sum += problem.usable_mol(s, supplies.get(s).density().molesPerCubicMetre());
        }
        return sum;
    }
}
