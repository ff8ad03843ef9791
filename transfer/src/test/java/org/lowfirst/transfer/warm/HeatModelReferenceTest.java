package org.lowfirst.transfer.warm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Heat transfer coefficients against published ones: P. L. Woodfield, M. Monde, T. Takano, J. Thermal Science and Technology 3
 * (2008) 241 fitted 250 W/(m2 K) between hydrogen and wall after filling and 4.5 W/(m2 K) between wall and air to measurements on
 * vessels of 39 to 205 L filled to 35 and 70 MPa (abstract, read). Air: Cengel, table of air at 1 atm (second hand, read).
 */
class HeatModelReferenceTest {

    private final HeatModel heat = HeatModel.published();

    /**
     * Hydrogen after filling to 35 MPa: 350 K, 10 K above the wall, diameter 0.4 m. Properties of hydrogen from memory, good to some
     * 10 %: density 21 kg/m3, expansion 0.0025 1/K, cp 14 800 J/(kg K), viscosity 1.02e-5 Pa s, conductivity 0.21 W/(m K). The
     * coefficient lies within a factor of 1.6 of the published one.
     */
    @Test
    void theCoefficientAtRestIsNearThatFittedForHydrogen() {
        double group = 21.0 * 21.0 * 0.0025 * 14_800.0 / 1.02e-5;
        double h = heat.inside().natural_WPerM2K(10.0, 0.4, 0.21, group);
        assertThat(h).isBetween(250.0 / 1.6, 250.0 * 1.6);
    }

    /** The wall 8 K above air, height 0.8 m, a bright tank that hardly radiates. */
    @Test
    void theCoefficientToAirIsNearThatFitted() {
        assertThat(heat.outside().coefficient_WPerM2K(301.0, 293.0, 0.8, 0.1)).isBetween(3.0, 6.0);
    }

    /** Nu = 0.1 Ra^(1/3) of a plate 1 m high, 20 K above air at 20 C, with the air of the table at 30 C: by hand. */
    @Test
    void turbulentConvectionIsThatOfTheHandCalculation() {
        double ra = 9.80665 * 20.0 / 303.15 * 0.7282 / (1.608e-5 * 1.608e-5);
        double byHand = 0.1 * Math.cbrt(ra) * 0.02588;
        assertThat(heat.outside().coefficient_WPerM2K(313.15, 293.15, 1.0, 0.0))
                .isCloseTo(byHand, within(0.01 * byHand));
    }

    /** Radiation alone: 0.9 sigma (T1^2 + T2^2) (T1 + T2). */
    @Test
    void radiationAddsWhatTheLawSays() {
        double without = heat.outside().coefficient_WPerM2K(303.0, 293.0, 0.5, 0.0);
        double with = heat.outside().coefficient_WPerM2K(303.0, 293.0, 0.5, 0.9);
        double law = 0.9 * 5.670374419e-8 * (303.0 * 303.0 + 293.0 * 293.0) * 596.0;
        assertThat(with - without).isCloseTo(law, within(1e-9));
    }

    /** Rows of the table: temperature in C, conductivity, kinematic viscosity; within 1 %. */
    @ParameterizedTest
    @CsvSource({"-20, 0.02211, 1.169e-5", "0, 0.02364, 1.338e-5", "40, 0.02662, 1.702e-5", "80, 0.02953, 2.097e-5"})
    void airIsThatOfTheTable(double celsius, double k, double nu) {
        Datasheet sheet = Datasheet.beside(HeatModel.class, "heat-transfer.txt");
        double warmth = (celsius + 273.15) / 293.15;
        assertThat(sheet.value("air.conductivity", "W/(m K)")
                        * Math.pow(warmth, sheet.value("air.conductivity-exponent", "1")))
                .isCloseTo(k, within(0.01 * k));
        assertThat(sheet.value("air.kinematic-viscosity", "m2/s")
                        * Math.pow(warmth, sheet.value("air.kinematic-viscosity-exponent", "1")))
                .isCloseTo(nu, within(0.01 * nu));
    }
}
