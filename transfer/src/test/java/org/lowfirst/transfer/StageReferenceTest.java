package org.lowfirst.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.IdealGas;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

/**
 * A 2.9 L bottle brought to 1,800 psi by one supply and finished from the next fuller one, at 294.26 K.
 *
 * <p>Source of the numbers: computed outside this project with the oxygen equation of Schmidt and Wagner (1985) in an open
 * general-purpose property library (CoolProp 8.0.0) and a second independent program. That a bottle is first brought up from
 * the emptier supply and finished from the fuller one: common practice, no source. Tolerance: half a unit of the last digit
 * given.
 */
final class StageReferenceTest {

    private static final Temperature T = new Temperature(294.26);
    private static final Volume SUPPLY = Volume.ofLitres(49.0);
    private static final Volume BOTTLE = Volume.ofLitres(2.9);

    @Test
    void oxygenEqualisesAndIsFinishedFromTheNextSupply() {
        Isotherm line = Oxygen.schmidtWagner().isotherm(T).orElseThrow();
        StageResult equal = Stage.join(at(SUPPLY, 1800, line), Hose.NONE, at(BOTTLE, 300, line));
        assertThat(equal.ending()).isEqualTo(Ending.EQUAL);
        assertThat(psi(equal.supply(), line)).isEqualTo(1717.61, within(0.005));
        assertThat(psi(equal.bottle(), line)).isEqualTo(1717.61, within(0.005));
        assertThat(equal.moved().moles()).isEqualTo(12.4155, within(0.00005));

        Density stop = at(BOTTLE, 2015, line).density();
        StageResult finish = Stage.join(at(SUPPLY, 2200, line), Hose.NONE, equal.bottle(), stop);
        assertThat(finish.ending()).isEqualTo(Ending.TARGET);
        assertThat(psi(finish.bottle(), line)).isEqualTo(2015, within(1e-6));
        assertThat(psi(finish.supply(), line)).isEqualTo(2182.20, within(0.005));
        assertThat(finish.moved().moles()).isEqualTo(2.64648, within(0.000005));
    }

    @Test
    void anIdealGasWouldEqualiseLower() {
        EquationOfState ideal = new IdealGas("oxygen", 0.0319988);
        Isotherm line = ideal.isotherm(T).orElseThrow();
        StageResult equal = Stage.join(at(SUPPLY, 1800, line), Hose.NONE, at(BOTTLE, 300, line));
        assertThat(psi(equal.bottle(), line)).isEqualTo(1716.18, within(0.005));
    }

    private static Vessel at(Volume volume, double psi, Isotherm line) {
        return Vessel.at(volume, GaugePressure.ofPsi(psi).toAbsolute(StandardAtmosphere.PRESSURE), line);
    }

    private static double psi(Vessel vessel, Isotherm line) {
        return vessel.pressure(line).toGauge(StandardAtmosphere.PRESSURE).toPsi();
    }
}
