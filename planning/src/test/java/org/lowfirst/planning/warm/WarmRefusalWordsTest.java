package org.lowfirst.planning.warm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.transfer.warm.WarmRefusal;

class WarmRefusalWordsTest {

    private static final List<WarmRefusal> ONE_OF_EACH = List.of(
            new WarmRefusal.TemperatureOutOfRange(
                    "temperature of the gas", Temperature.ofCelsius(400), new Temperature(220), new Temperature(440)),
            new WarmRefusal.PressureOutOfRange(
                    "reading", GaugePressure.ofBar(2015), GaugePressure.ZERO, GaugePressure.ofBar(400)),
            new WarmRefusal.NumberOutOfRange("hose volume", 50, 0, 10, "L"),
            new WarmRefusal.MustRise("target", GaugePressure.ofBar(90), GaugePressure.ofBar(100)),
            new WarmRefusal.SequenceFalls(3, GaugePressure.ofBar(55), GaugePressure.ofBar(60)),
            new WarmRefusal.TimeGoesBack(3, 30, 60.5),
            new WarmRefusal.NameMissing("rule or table that warm-stop compensation follows"),
            new WarmRefusal.NotReachable("contents of the bottle", 61.237, 97, "%"),
            new WarmRefusal.NoAnswer("it left the range"));

    @Test
    void everyRefusalHasASentence() {
        assertThat(ONE_OF_EACH.stream().map(Object::getClass).collect(Collectors.toSet()))
                .isEqualTo(Arrays.stream(WarmRefusal.class.getPermittedSubclasses())
                        .collect(Collectors.toSet()));
        assertThat(ONE_OF_EACH.stream().map(WarmRefusal::code).distinct()).hasSize(ONE_OF_EACH.size());
        for (WarmRefusal refusal : ONE_OF_EACH) {
            assertThat(WarmRefusalWords.of(refusal, ShownUnits.US))
                    .contains("Please")
                    .endsWith(".");
        }
    }

    @Test
    void theSentenceHasValueLimitAndUnit() {
        assertThat(WarmRefusalWords.of(ONE_OF_EACH.get(0), ShownUnits.METRIC))
                .contains("temperature of the gas (400")
                .contains("must be -53")
                .contains("167");
        assertThat(WarmRefusalWords.of(ONE_OF_EACH.get(1), ShownUnits.METRIC))
                .isEqualTo("The reading (2,015 bar) must be 0 bar to 400 bar. Please check the number and its unit.");
        assertThat(WarmRefusalWords.of(ONE_OF_EACH.get(2), ShownUnits.METRIC))
                .isEqualTo("The hose volume (50 L) must be 0 to 10 L. Please check the number and its unit.");
        assertThat(WarmRefusalWords.of(ONE_OF_EACH.get(4), ShownUnits.METRIC))
                .startsWith("Reading 3 (55 bar) is below the one before it (60 bar)");
        assertThat(WarmRefusalWords.of(ONE_OF_EACH.get(5), ShownUnits.METRIC))
                .startsWith("Reading 3 is at 30 s, which must be later than the one before it at 60.5 s");
        assertThat(WarmRefusalWords.of(ONE_OF_EACH.get(7), ShownUnits.METRIC))
                .contains("97 %")
                .contains("61.24 %");
    }

    @Test
    void noCautionCallsAnythingSafe() {
        for (Caution caution : Caution.values()) {
            assertThat(caution.sentence(Locale.ENGLISH))
                    .doesNotContainIgnoringCase("safe")
                    .endsWith(".");
        }
    }
}
