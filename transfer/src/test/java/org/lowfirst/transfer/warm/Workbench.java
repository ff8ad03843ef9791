package org.lowfirst.transfer.warm;

import java.util.List;
import org.lowfirst.gas.CaloricEquation;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Mass;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

/** What the tests of warm stages share: invented cylinders at 294.26 K and one atmosphere. */
final class Workbench {

    static final CaloricEquation OXYGEN = Oxygen.schmidtWagner();
    static final Surroundings AT_70F = Surroundings.at(new Temperature(294.26));
    static final FlowArea WIDE = FlowArea.ofBore(0.003, 0.8);

    private Workbench() {}

    /** A wall of one layer with this heat capacity and the surfaces of its water volume. */
    static Wall wall(double litres, double kilograms, double specificHeat_JPerKgK) {
        Shape shape = Shape.of(Volume.ofLitres(litres));
        return new Wall(
                List.of(WallLayer.of(new Mass(kilograms), specificHeat_JPerKgK)),
                shape.area_m2(),
                1.1 * shape.area_m2(),
                shape.diameter_m(),
                shape.length_m(),
                0.8,
                WallOrigin.STATED);
    }

    static WarmState bottle(double litres, double psi, Wall wall, Contact contact) {
        return WarmState.settled(
                        new WarmVessel(Volume.ofLitres(litres), wall, contact),
                        GaugePressure.ofPsi(psi),
                        AT_70F,
                        OXYGEN)
                .orElseThrow();
    }

    static WarmSource constant(double psi) {
        return new WarmSource.Constant(
                GaugePressure.ofPsi(psi).toAbsolute(StandardAtmosphere.PRESSURE), AT_70F.temperature());
    }

    static Opening rising(double psiPerMinute) {
        return new Opening.SteadyRise(RiseRate.ofPsiPerMinute(psiPerMinute), WIDE);
    }

    static WarmStage stage(WarmSource source, WarmState bottle, Opening opening, double stopPsi) {
        return new WarmStage(
                source,
                bottle,
                opening,
                Stop.at(GaugePressure.ofPsi(stopPsi)),
                AT_70F,
                new Sampling(5.0, 86_400.0 * 30));
    }

    /** What the gauge shows when the gas is back at the temperature of the surroundings [psi]. */
    static double settledPsi(WarmState state) {
        return state.gaugeAt(AT_70F.temperature(), AT_70F, OXYGEN).orElseThrow().toPsi();
    }
}
