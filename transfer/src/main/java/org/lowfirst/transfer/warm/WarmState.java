package org.lowfirst.transfer.warm;

import java.util.Collections;
import java.util.List;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.CaloricEquation;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.Evaluated;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/**
 * A supply or a bottle and what is in it, at one moment.
 *
 * @param vessel the cylinder
 * @param contents gas inside, above 0
 * @param gas temperature of the gas
 * @param wall temperature of each layer of the wall, from inside to outside
 */
public record WarmState(WarmVessel vessel, Amount contents, Temperature gas, List<Temperature> wall) {

    public WarmState {
        wall = List.copyOf(wall);
        if (!(contents.moles() > 0.0)) {
            throw new IllegalArgumentException("The contents (" + contents.moles() + " mol) must be above 0.");
        }
        if (wall.size() != vessel.wall().layers().size()) {
            throw new IllegalArgumentException("The wall temperatures (" + wall.size() + ") must be as many as layers ("
                    + vessel.wall().layers().size() + ").");
        }
    }

    /** Gas and wall at the temperature of the surroundings, the gauge reading this. */
    public static Evaluated<WarmState> settled(
            WarmVessel vessel, GaugePressure reading, Surroundings surroundings, CaloricEquation gas) {
        return at(vessel, reading, surroundings.temperature(), surroundings.temperature(), surroundings, gas);
    }

    /** Gas at one temperature, the wall at another, the gauge reading this. */
    public static Evaluated<WarmState> at(
            WarmVessel vessel,
            GaugePressure reading,
            Temperature gasTemperature,
            Temperature wallTemperature,
            Surroundings surroundings,
            CaloricEquation gas) {
        double p_Pa = reading.pascals() + surroundings.pressure().pascals();
        if (!(p_Pa > 0.0)) {
            return new Evaluated.OutOfRange<>(
                    "pressure", p_Pa, 0.0, gas.range().highestPressure().pascals(), "Pa absolute");
        }
        return gas.density(reading.toAbsolute(surroundings.pressure()), gasTemperature)
                .map(density -> new WarmState(
                        vessel,
                        density.amountIn(vessel.waterVolume()),
                        gasTemperature,
                        Collections.nCopies(vessel.wall().layers().size(), wallTemperature)));
    }

    /** Molar density of the gas. */
    public Density density() {
        return new Density(contents.moles() / vessel.waterVolume().cubicMetres());
    }

    /** What the gauge shows. */
    public Evaluated<GaugePressure> gauge(Surroundings surroundings, CaloricEquation equation) {
        return equation.pressure(density(), gas).map(p -> p.toGauge(surroundings.pressure()));
    }

    /** What the gauge will show once the gas has this temperature. */
    public Evaluated<GaugePressure> gaugeAt(
            Temperature temperature, Surroundings surroundings, CaloricEquation equation) {
        return equation.pressure(density(), temperature).map(p -> p.toGauge(surroundings.pressure()));
    }
}
