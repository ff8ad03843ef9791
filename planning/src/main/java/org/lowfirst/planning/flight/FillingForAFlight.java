package org.lowfirst.planning.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Isotherm;

/**
 * Which bottles on board are to be filled for a flight, and how far: the lowest first, all to one reading, none above what it shows
 * when full; those above it stay as they are.
 */
public final class FillingForAFlight {

    private static final double PRECISION_PA = 1.0;

    private final FlightRequest request;
    private final List<GaugePressure> full;
    private final BottleGas gas;

    private FillingForAFlight(FlightRequest request, EquationOfState equation, List<GaugePressure> full) {
        this.request = request;
        this.full = full;
        Isotherm isotherm = equation.isotherm(request.temperature()).orElseThrow();
        gas = new BottleGas(equation, isotherm, request);
    }

    /**
     * The readings the bottles must have, in the order of the request; a bottle that is to be left as it is has its own.
     *
     * @param plan of this request
     * @param full what each bottle shows at the temperature of the request when it is full
     * @return empty when even full bottles do not cover the flight
     */
    public static Optional<List<GaugePressure>> readings(
            FlightRequest request, FlightPlan plan, EquationOfState equation, List<GaugePressure> full) {
        return new FillingForAFlight(request, equation, full).readings(plan.neededLitres());
    }

    private Optional<List<GaugePressure>> readings(double needed) {
        double low_Pa = 0.0;
        double high_Pa = full.stream().mapToDouble(GaugePressure::pascals).max().orElse(0.0);
        if (litres(low_Pa) >= needed) {
            return Optional.of(at(low_Pa));
        }
        if (litres(high_Pa) < needed) {
            return Optional.empty();
        }
        while (high_Pa - low_Pa > PRECISION_PA) {
            double middle_Pa = 0.5 * (low_Pa + high_Pa);
            if (litres(middle_Pa) < needed) {
                low_Pa = middle_Pa;
            } else {
                high_Pa = middle_Pa;
            }
        }
        return Optional.of(at(high_Pa));
    }

    private double litres(double level_Pa) {
        List<GaugePressure> readings = at(level_Pa);
        double sum = 0.0;
        for (int i = 0; i < readings.size(); i++) {
            sum += gas.usableLitres(request.bottles().get(i), readings.get(i).pascals());
        }
        return sum;
    }

    private List<GaugePressure> at(double level_Pa) {
        List<GaugePressure> readings = new ArrayList<>();
        for (int i = 0; i < full.size(); i++) {
            double now_Pa = request.bottles().get(i).reading().pascals();
            readings.add(new GaugePressure(
                    Math.max(now_Pa, Math.min(level_Pa, full.get(i).pascals()))));
        }
        return List.copyOf(readings);
    }
}
