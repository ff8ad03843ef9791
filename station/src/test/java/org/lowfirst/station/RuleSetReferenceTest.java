package org.lowfirst.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RuleSetReferenceTest {

    /** 49 CFR 173.301a(c): pressure counts at 70 F. */
    @Test
    void theUsSetCountsPressureAt70F() {
        assertThat(RuleSet.US.figures().referenceTemperature().temperature().toFahrenheit())
                .isCloseTo(70.0, within(1e-9));
    }

    /** ADR 1.2.1, from memory: working pressure is the settled pressure at 15 C. */
    @Test
    void theEuropeanSetCountsPressureAt15C() {
        assertThat(RuleSet.EU.figures().referenceTemperature().temperature().toCelsius())
                .isCloseTo(15.0, within(1e-9));
    }

    /** 49 CFR 180.209(a) Table 1: test pressure 5/3 of the service pressure. RID P200 (3)(f): 3/2. */
    @Test
    void testPressuresAreFiveThirdsAndThreeHalves() {
        assertThat(RuleSet.US.figures().testPressureFactor()).isEqualTo(5.0 / 3.0);
        assertThat(RuleSet.EU.figures().testPressureFactor()).isEqualTo(1.5);
    }

    @Test
    void everyFigureNamesItsSource() {
        for (RuleSet rules : RuleSet.values()) {
            assertThat(rules.figures().source("repeatability")).isEqualTo("common practice, no source");
            assertThat(rules.figures().lowestWaterVolume().volume())
                    .isLessThan(rules.figures().highestWaterVolume().volume());
            assertThat(rules.figures().lowestServicePressure())
                    .isLessThan(rules.figures().highestServicePressure());
        }
    }
}
