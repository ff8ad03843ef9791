package org.lowfirst.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.IdealGas;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

/** Two vessels of oxygen at 20 C, against the table named in the resource. */
final class EqualisationReferenceTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/equalisation-oxygen-coolprop.csv", useHeadersInDisplayName = true)
    void twoVesselsOfOxygenComeToTheComputedPressure(
            double v1_L, double p1_bar, double v2_L, double p2_bar, double real_bar, double ideal_bar) {
        assertThat(joined_bar(Oxygen.schmidtWagner(), v1_L, p1_bar, v2_L, p2_bar))
                .isEqualTo(real_bar, within(0.0005));
        assertThat(joined_bar(new IdealGas("oxygen", 0.0319988), v1_L, p1_bar, v2_L, p2_bar))
                .isEqualTo(ideal_bar, within(0.0005));
    }

    private static double joined_bar(EquationOfState gas, double v1_L, double p1_bar, double v2_L, double p2_bar) {
        Isotherm line = gas.isotherm(Temperature.ofCelsius(20)).orElseThrow();
        Vessel fuller = Vessel.at(Volume.ofLitres(v1_L), AbsolutePressure.ofBar(p1_bar), line);
        Vessel emptier = Vessel.at(Volume.ofLitres(v2_L), AbsolutePressure.ofBar(p2_bar), line);
        StageResult result = Stage.join(fuller, Hose.NONE, emptier);
        assertThat(result.supply().pressure(line).toBar())
                .isEqualTo(result.bottle().pressure(line).toBar(), within(1e-9));
        return result.bottle().pressure(line).toBar();
    }
}
