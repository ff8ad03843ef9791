package org.lowfirst.planning.warm;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.transfer.warm.WarmRefusal;

class OtherTemperaturesTest {

    private static final EquationOfState OXYGEN = Oxygen.schmidtWagner();
    private static final Temperature WARM = Temperature.ofCelsius(20);

    private static WarmRefusal refused(AtOtherTemperatures asked) {
        return Shop.refusal(OtherTemperatures.read(asked, OXYGEN));
    }

    @Test
    void warmerReadsMore() {
        SameGas same = OtherTemperatures.read(
                        AtOtherTemperatures.of(
                                GaugePressure.ofBar(150),
                                WARM,
                                Temperature.ofCelsius(-20),
                                WARM,
                                Temperature.ofCelsius(50)),
                        OXYGEN)
                .orElseThrow();
        assertThat(same.readings().get(0).reading()).isLessThan(GaugePressure.ofBar(150));
        assertThat(same.readings().get(2).reading()).isGreaterThan(GaugePressure.ofBar(150));
        assertThat(same.contents()).isNull();
        assertThat(same.full()).isNull();
    }

    @Test
    void whatCannotBeMeantIsRefusedWithValueAndLimit() {
        assertThat(refused(AtOtherTemperatures.of(GaugePressure.ofBar(-1), WARM)))
                .isEqualTo(new WarmRefusal.PressureOutOfRange(
                        "reading", GaugePressure.ofBar(-1), GaugePressure.ZERO, GaugePressure.ofBar(400)));
        assertThat(refused(AtOtherTemperatures.of(GaugePressure.ofBar(2015), WARM))
                        .code())
                .isEqualTo("pressure-out-of-range");
        assertThat(refused(AtOtherTemperatures.of(GaugePressure.ofBar(150), new Temperature(150)))
                        .code())
                .isEqualTo("temperature-out-of-range");
        assertThat(refused(AtOtherTemperatures.of(GaugePressure.ofBar(150), WARM, Temperature.ofCelsius(900)))
                        .code())
                .isEqualTo("temperature-out-of-range");
        assertThat(refused(AtOtherTemperatures.of(GaugePressure.ofBar(150), WARM)
                                .in(Volume.ofLitres(0), ReferenceCondition.US_70F_1ATM))
                        .code())
                .isEqualTo("number-out-of-range");
        assertThat(refused(AtOtherTemperatures.of(GaugePressure.ofBar(150), WARM)
                                .rated(GaugePressure.ZERO, ReferenceRule.US))
                        .code())
                .isEqualTo("pressure-out-of-range");
    }

    /** A stone-cold reading of 400 bar at 220 K would come to more than the gas equation covers at 440 K: refused, not clamped. */
    @Test
    void aReadingBeyondTheGasEquationIsRefused() {
        WarmRefusal refusal =
                refused(AtOtherTemperatures.of(GaugePressure.ofBar(400), new Temperature(220), new Temperature(440)));
        assertThat(refusal.code()).isEqualTo("no-answer");
    }
}
