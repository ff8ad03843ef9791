package org.lowfirst.planning.contents;

import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.Evaluated;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/** What a gauge would show with more or less gas in the cylinder, real gas. */
final class ShownPressure {

    private final Surroundings surroundings;

    ShownPressure(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    /**
     * @param measurement what the gauge shows now
     * @param more_mol gas to be added; negative to be taken away
     */
    GaugePressure after(MeteredCylinder cylinder, ContentsMeasurement measurement, double more_mol) {
        double then_mol = measurement.amount_mol() + more_mol;
        return at(
                cylinder,
                measurement,
                then_mol,
                measurement.reading().temperature().value());
    }

    /** What the same gauge would show with another amount at another temperature. */
    GaugePressure at(
            MeteredCylinder cylinder, ContentsMeasurement measurement, double amount_mol, Temperature temperature) {
        Temperature now = measurement.reading().temperature().value();
        double shown_Pa = measurement.shown().pascals();
        double offset_Pa = shown_Pa - gauge_Pa(cylinder, measurement.amount_mol(), now);
        return new GaugePressure(gauge_Pa(cylinder, amount_mol, temperature) + offset_Pa);
    }

    /** Gauge pressure of an amount in a cylinder [Pa]; an estimate below nothing counts as vacuum. */
    private double gauge_Pa(MeteredCylinder cylinder, double amount_mol, Temperature temperature) {
        double V_m3 = cylinder.waterVolume().cubicMetres();
        Density density = new Density(Math.max(0.0, amount_mol / V_m3));
        Evaluated<AbsolutePressure> found = surroundings.gas().pressure(density, temperature);
        return found.orElseThrow().pascals() - surroundings.ambient().pascals();
    }
}
