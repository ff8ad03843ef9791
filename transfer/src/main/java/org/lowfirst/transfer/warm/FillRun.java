package org.lowfirst.transfer.warm;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.IdealGas;
import org.lowfirst.gas.Temperature;

/** One simulation of a stage. */
final class FillRun {

    /**
     * Gauges this close show the same [Pa]. What is then missing is let over at once: on its own the last of it would creep over
     * only as the bottle cools.
     */
    static final double EQUAL_PA = 1000.0;

    /** The flow is followed as finely as a gas of this density would need [mol/m3]. */
    private static final double REFERENCE_MOL_PER_M3 = 100.0;

    private final WarmStage stage;
    private final double molarMass_kgPerMol;
    private final Side bottle;
    private final SourceSide source;
    private final FillEquations equations;
    private final double ambient_Pa;
    private final double stop_Pa;
    private final double stop_molPerM3;
    private final double bottleStart_mol;
    private final double[] start = new double[FillEquations.DIMENSION];
    private final List<WarmPoint> series = new ArrayList<>();
    private double peak_K;
    private double lowest_K;
    private int noted;

    FillRun(WarmStage stage, GasProperties gas, HeatModel heat, NozzleTable nozzle) {
        this.stage = stage;
        molarMass_kgPerMol = gas.equation().molarMass_kgPerMol();
        WarmState filled = stage.bottle();
        bottle = new Side(filled.vessel(), 0.0, gas, heat, stage.surroundings());
        bottleStart_mol = filled.contents().moles();
        source = stage.source() instanceof WarmSource.FromSupply supply
                ? new SupplySide(supply.state(), stage.hose(), gas, heat, stage.surroundings())
                : new ConstantSide((WarmSource.Constant) stage.source(), stage.hose(), gas);
        equations = new FillEquations(bottle, bottleStart_mol, source, stage.opening(), nozzle, molarMass_kgPerMol);
        ambient_Pa = stage.surroundings().pressure().pascals();
        stop_Pa = stage.stop().reading().pascals() + ambient_Pa;
        stop_molPerM3 = stage.stop().density().molesPerCubicMetre();
        double[] layers =
                filled.wall().stream().mapToDouble(layer -> layer.kelvin()).toArray();
        bottle.write(bottleStart_mol, filled.gas().kelvin(), layers, start, FillEquations.BOTTLE);
        source.start(start, FillEquations.SOURCE);
    }

    WarmFill run() {
        equations.evaluate(start);
        peak_K = bottle.T_K;
        lowest_K = source.T_K();
        if (left_Pa() <= 0.0) {
            note(0.0, start);
            return result(0.0, start, WarmEnding.NOTHING_MOVED);
        }
        double longest_s = stage.sampling().longest_s();
        ODEIntegrator integrator = Integration.integrator(longest_s, tolerances());
        integrator.addEventDetector(Integration.detector(this::left_Pa, Action.STOP, (seconds, rising) -> {}));
        integrator.addStepHandler(this::sample);
        ODEStateAndDerivative end = integrator.integrate(
                Integration.equations(FillEquations.DIMENSION, equations), new ODEState(0.0, start), longest_s);
        double[] y = end.getPrimaryState();
        equations.evaluate(y);
        WarmEnding ending = end.getTime() >= longest_s ? WarmEnding.TIME_UP : nearest();
        double seconds = end.getTime();
        if (ending == WarmEnding.EQUAL) {
            seconds += level_s(y);
        }
        note(seconds, y);
        return result(seconds, y, ending);
    }

    /** Lets over what is missing to equal; answers the time it takes at a steady rise [s], 0 with a fixed opening. */
    private double level_s(double[] y) {
        double before_Pa = bottle.p_Pa;
        double toReading_mol = toReading_Pa() / bottle.pressureSlope_PaPerMol(source.h_JPerMol());
        double toDensity_mol = (stop_molPerM3 - bottle.rho_molPerM3) * bottle.volume_m3;
        equations.level(y, Math.min(toReading_mol, toDensity_mol));
        equations.evaluate(y);
        return stage.opening() instanceof Opening.SteadyRise steady
                ? (bottle.p_Pa - before_Pa) / steady.rate().pascalsPerSecond()
                : 0.0;
    }

    private double left_Pa(double[] y) {
        equations.evaluate(y);
        return left_Pa();
    }

    /** What is left to the nearest end [Pa]; the valve is shut at zero. */
    private double left_Pa() {
        return Math.min(toReading_Pa(), Math.min(toDensity_Pa(), toEqual_Pa()));
    }

    private double toReading_Pa() {
        return stop_Pa - bottle.p_Pa;
    }

    /** The missing density as the pressure it would add at constant temperature [Pa]. */
    private double toDensity_Pa() {
        return (stop_molPerM3 - bottle.rho_molPerM3) * bottle.dpdrho;
    }

    private double toEqual_Pa() {
        return source.p_Pa() - bottle.p_Pa - EQUAL_PA;
    }

    private WarmEnding nearest() {
        double left = left_Pa();
        if (left == toReading_Pa()) {
            return WarmEnding.STOP;
        }
        return left == toDensity_Pa() ? WarmEnding.FULL : WarmEnding.EQUAL;
    }

    private double[] tolerances() {
        double[] tolerance = new double[FillEquations.DIMENSION];
        tolerance[0] = REFERENCE_MOL_PER_M3 * bottle.volume_m3 * Integration.ERROR_K / 300.0;
        bottle.tolerances(Integration.ERROR_K, REFERENCE_MOL_PER_M3, tolerance, FillEquations.BOTTLE);
        source.tolerances(Integration.ERROR_K, REFERENCE_MOL_PER_M3, tolerance, FillEquations.SOURCE);
        tolerance[FillEquations.AIR] = tolerance[FillEquations.BOTTLE + 2];
        return tolerance;
    }

    private void sample(ODEStateInterpolator step) {
        double interval_s = stage.sampling().interval_s();
        double to_s = step.getCurrentState().getTime();
        while (noted * interval_s < to_s) {
            double t = noted * interval_s;
            note(t, step.getInterpolatedState(t).getPrimaryState());
            noted++;
        }
        equations.evaluate(step.getCurrentState().getPrimaryState());
        extremes();
    }

    private void extremes() {
        peak_K = Math.max(peak_K, bottle.T_K);
        lowest_K = Math.min(lowest_K, source.T_K());
    }

    private void note(double seconds, double[] y) {
        equations.evaluate(y);
        extremes();
        series.add(new WarmPoint(
                seconds,
                new GaugePressure(bottle.p_Pa - ambient_Pa),
                new GaugePressure(source.p_Pa() - ambient_Pa),
                new Temperature(bottle.T_K),
                new Temperature(bottle.inner_K),
                new Temperature(source.T_K()),
                new Temperature(source.wall_K())));
    }

    private WarmFill result(double seconds, double[] y, WarmEnding ending) {
        double moved_mol = ending == WarmEnding.NOTHING_MOVED ? 0.0 : y[0];
        if (ending == WarmEnding.NOTHING_MOVED) {
            return new WarmFill(
                    stage.bottle(),
                    stage.source(),
                    stage.hose(),
                    ending,
                    seconds,
                    series,
                    new Temperature(peak_K),
                    new Temperature(lowest_K),
                    new Balance(Amount.NONE, 0.0, 0.0));
        }
        SourceSide.SourceAfter after = source.after(moved_mol, y, FillEquations.SOURCE);
        equations.evaluate(y);
        return new WarmFill(
                bottle.state(stage.bottle().vessel(), bottleStart_mol + moved_mol),
                after.source(),
                after.hose(),
                ending,
                seconds,
                series,
                new Temperature(peak_K),
                new Temperature(lowest_K),
                balance(moved_mol, y));
    }

    /** Compares what the readings at the end say with what was there at the start. */
    private Balance balance(double moved_mol, double[] y) {
        double[] again = new double[FillEquations.DIMENSION];
        bottle.rewrite(bottleStart_mol + moved_mol, again, FillEquations.BOTTLE);
        source.rewrite(moved_mol, again, FillEquations.SOURCE);
        double brought_J = stage.source() instanceof WarmSource.Constant ? moved_mol * source.h_JPerMol() : 0.0;
        double before_J =
                Side.total_J(start, FillEquations.BOTTLE) + source.total_J(start, FillEquations.SOURCE) + brought_J;
        double after_J = Side.total_J(again, FillEquations.BOTTLE)
                + source.total_J(again, FillEquations.SOURCE)
                + y[FillEquations.AIR];
        double scale_J = moved_mol * 3.5 * IdealGas.MOLAR_GAS_CONSTANT_J_PER_MOL_K * source.T_K();
        return new Balance(new Amount(moved_mol), y[FillEquations.AIR], Math.abs(after_J - before_J) / scale_J);
    }
}
