package org.lowfirst.planning.flight;

import java.util.List;
import java.util.Optional;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.gas.StandardAtmosphere;

/** Free gas that bottles give at one temperature, and the reading that would give a wanted amount. */
final class BottleGas {

    private static final double PRECISION_PA = 1.0;

    private final Isotherm isotherm;
    private final double litresPerMole;
    private final AbsolutePressure ambient = StandardAtmosphere.PRESSURE;

    BottleGas(EquationOfState equation, Isotherm isotherm, FlightRequest request) {
        this.isotherm = isotherm;
        double molesPerM3 = equation.density(
                        request.litres().pressure(), request.litres().temperature())
                .orElseThrow()
                .molesPerCubicMetre();
        this.litresPerMole = 1000.0 / molesPerM3;
    }

    double usableLitres(BottleOnBoard bottle) {
        return usableLitres(bottle, bottle.reading().pascals());
    }

    double usableLitres(BottleOnBoard bottle, double reading_Pa) {
        double above_molPerM3 = density(reading_Pa) - density(bottle.keep().pascals());
        return Math.max(0.0, above_molPerM3) * bottle.waterVolume().cubicMetres() * litresPerMole;
    }

    private double density(double gauge_Pa) {
        return isotherm.density_molPerM3(gauge_Pa + ambient.pascals());
    }

    /**
     * The lowest common reading at which the bottles give {@code litres}, by bisection.
     *
     * @return empty when there is no bottle, or none at any pressure the equation covers
     */
    Optional<FlightPlan.Pressure> readingFor(double litres, List<BottleOnBoard> bottles) {
        double low_Pa = 0.0;
        double high_Pa = isotherm.highestPressure_Pa() - ambient.pascals();
        if (sum(bottles, high_Pa) < litres || bottles.isEmpty()) {
            return Optional.empty();
        }
        while (high_Pa - low_Pa > PRECISION_PA) {
            double middle_Pa = 0.5 * (low_Pa + high_Pa);
            if (sum(bottles, middle_Pa) < litres) {
                low_Pa = middle_Pa;
            } else {
                high_Pa = middle_Pa;
            }
        }
        double reading_Pa = high_Pa;
        boolean within = bottles.stream()
                .allMatch(bottle -> reading_Pa <= bottle.servicePressure().pascals());
        return Optional.of(new FlightPlan.Pressure(new GaugePressure(reading_Pa), within));
    }

    private double sum(List<BottleOnBoard> bottles, double reading_Pa) {
        return bottles.stream()
                .mapToDouble(bottle -> usableLitres(bottle, reading_Pa))
                .sum();
    }
}
