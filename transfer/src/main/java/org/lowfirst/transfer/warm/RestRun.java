package org.lowfirst.transfer.warm;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/** One simulation of a shut cylinder. */
final class RestRun {

    /** The series ends when the gauge is this part of the share asked for from its settled reading. */
    private static final double TO_THE_END = 0.1;

    private static final double REFERENCE_MOL_PER_M3 = 100.0;

    private final Rest rest;
    private final Side side;
    private final RestEquations equations;
    private final double amount_mol;
    private final double ambient_Pa;
    private final double settled_Pa;
    private final List<Settling.Point> series = new ArrayList<>();
    private double lastCrossing_s;
    private int noted;

    RestRun(Rest rest, GasProperties gas, HeatModel heat) {
        this.rest = rest;
        side = new Side(rest.start().vessel(), 0.0, gas, heat, rest.surroundings());
        amount_mol = rest.start().contents().moles();
        equations = new RestEquations(side, amount_mol);
        ambient_Pa = rest.surroundings().pressure().pascals();
        settled_Pa =
                side.pressure_Pa(amount_mol, rest.surroundings().temperature().kelvin());
    }

    Settling run() {
        double[] y = new double[RestEquations.DIMENSION];
        double[] layers =
                rest.start().wall().stream().mapToDouble(t -> t.kelvin()).toArray();
        side.write(amount_mol, rest.start().gas().kelvin(), layers, y, 0);
        double[] tolerance = new double[RestEquations.DIMENSION];
        side.tolerances(Integration.ERROR_K, REFERENCE_MOL_PER_M3, tolerance, 0);
        tolerance[RestEquations.AIR] = tolerance[2];
        double longest_s = rest.sampling().longest_s();
        if (Math.abs(off(y)) <= TO_THE_END * rest.within() && stillAtAir()) {
            note(0.0, y);
            return result(y, true);
        }
        ODEIntegrator integrator = Integration.integrator(longest_s, tolerance);
        integrator.addEventDetector(Integration.detector(
                state -> Math.abs(off(state)) - rest.within(),
                Action.CONTINUE,
                (seconds, rising) -> lastCrossing_s = seconds));
        integrator.addEventDetector(Integration.detector(
                state -> Math.max(Math.abs(off(state)), wallOff()) - TO_THE_END * rest.within(),
                Action.STOP,
                (seconds, rising) -> {}));
        integrator.addStepHandler(this::sample);
        ODEStateAndDerivative end = integrator.integrate(
                Integration.equations(RestEquations.DIMENSION, equations), new ODEState(0.0, y), longest_s);
        double[] last = end.getPrimaryState();
        note(end.getTime(), last);
        return result(last, Math.abs(off(last)) < rest.within());
    }

    /** How far the gauge is from its settled reading, as part of it. */
    private double off(double[] y) {
        equations.evaluate(y);
        return (side.p_Pa - settled_Pa) / (settled_Pa - ambient_Pa);
    }

    /** How far the wall is from the surroundings, as part of their temperature; after {@link #off}. */
    private double wallOff() {
        double air_K = rest.surroundings().temperature().kelvin();
        return Math.max(Math.abs(side.inner_K - air_K), Math.abs(side.outer_K - air_K)) / air_K;
    }

    private boolean stillAtAir() {
        return wallOff() <= TO_THE_END * rest.within();
    }

    private void sample(ODEStateInterpolator step) {
        double to_s = step.getCurrentState().getTime();
        while (noted * rest.sampling().interval_s() < to_s) {
            double t = noted * rest.sampling().interval_s();
            note(t, step.getInterpolatedState(t).getPrimaryState());
            noted++;
        }
    }

    private void note(double seconds, double[] y) {
        equations.evaluate(y);
        series.add(new Settling.Point(
                seconds,
                new GaugePressure(side.p_Pa - ambient_Pa),
                new Temperature(side.T_K),
                new Temperature(side.inner_K)));
    }

    private Settling result(double[] y, boolean reached) {
        equations.evaluate(y);
        return new Settling(
                new GaugePressure(settled_Pa - ambient_Pa),
                reached ? OptionalDouble.of(lastCrossing_s) : OptionalDouble.empty(),
                side.state(rest.start().vessel(), amount_mol),
                series,
                y[RestEquations.AIR]);
    }
}
