package org.lowfirst.transfer.warm;

import java.util.Arrays;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/** How the equations are followed: Dormand-Prince 8(5,3) with error control, and the end found where a function crosses zero. */
final class Integration {

    /** What one step may be wrong by [K]; over a whole fill temperatures are then right to 1e-6 K. */
    static final double ERROR_K = 1e-4;

    private static final double SHORTEST_S = 1e-10;
    private static final double TIME_ERROR_S = 1e-10;
    private static final int MOST_EVALUATIONS = 5_000_000;
    private static final int MOST_ITERATIONS = 200;

    /** The rate that makes an integrator reject a step and try a shorter one. */
    private static final double TOO_FAST = 1e30;

    private Integration() {}

    /** Rates of change that may leave the range of the gas equation when the integrator tries a step that is too long. */
    interface Rates {
        void derivatives(double[] y, double[] yDot);
    }

    /** These rates as equations; a trial outside the range looks infinitely fast and is tried again with a shorter step. */
    static OrdinaryDifferentialEquation equations(int dimension, Rates rates) {
        return new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return dimension;
            }

            @Override
            public double[] computeDerivatives(double seconds, double[] y) {
                double[] yDot = new double[dimension];
                try {
                    rates.derivatives(y, yDot);
                } catch (LeftRange outside) {
                    Arrays.fill(yDot, TOO_FAST);
                }
                return yDot;
            }
        };
    }

    /** A function of the array. */
    interface OfState {
        double value(double[] y);
    }

    static ODEIntegrator integrator(double longest_s, double[] tolerance) {
        DormandPrince853Integrator integrator =
                new DormandPrince853Integrator(SHORTEST_S, longest_s, tolerance, new double[tolerance.length]);
        integrator.setMaxEvaluations(MOST_EVALUATIONS);
        return integrator;
    }

    /** Looks for zeros of {@code g} at the ends of steps and finds them inside. */
    static ODEEventDetector detector(OfState g, Action action, Crossing crossing) {
        return new Detector(g, action, crossing);
    }

    /** Told of each zero. */
    interface Crossing {
        void at(double seconds, boolean rising);
    }

    private record Detector(OfState of, Action action, Crossing crossing) implements ODEEventDetector {

        @Override
        public AdaptableInterval getMaxCheckInterval() {
            return AdaptableInterval.of(Double.POSITIVE_INFINITY);
        }

        @Override
        public int getMaxIterationCount() {
            return MOST_ITERATIONS;
        }

        @Override
        public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
            return new BracketingNthOrderBrentSolver(0.0, TIME_ERROR_S, 0.0, 5);
        }

        @Override
        public ODEEventHandler getHandler() {
            return (state, detector, rising) -> {
                crossing.at(state.getTime(), rising);
                return action;
            };
        }

        @Override
        public double g(ODEStateAndDerivative state) {
            return of.value(state.getPrimaryState());
        }
    }
}
