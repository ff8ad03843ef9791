package org.lowfirst.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

class QuantityFormatTest {

    private final QuantityFormat english = QuantityFormat.of(Locale.US);
    private final QuantityFormat german = QuantityFormat.of(Locale.GERMANY);

    @Test
    void pressuresAreRoundedToWhatAGaugeShows() {
        assertThat(english.pressure(GaugePressure.ofPsi(2014.9), PressureUnit.PSI))
                .isEqualTo("2,010 psi");
        assertThat(english.pressure(GaugePressure.ofPsi(2015.1), PressureUnit.PSI))
                .isEqualTo("2,020 psi");
        assertThat(english.pressure(GaugePressure.ofBar(150.4), PressureUnit.BAR))
                .isEqualTo("150 bar");
        assertThat(english.pressure(GaugePressure.ofBar(150), PressureUnit.MEGAPASCAL))
                .isEqualTo("15.0 MPa");
        assertThat(german.pressure(GaugePressure.ofBar(150), PressureUnit.KILOPASCAL))
                .isEqualTo("15\u202f000 kPa");
        assertThat(english.pressure(GaugePressure.ofBar(-0.2), PressureUnit.BAR))
                .isEqualTo("0 bar");
        assertThat(english.pressure(AbsolutePressure.ofBar(1.01325), PressureUnit.BAR))
                .isEqualTo("1 bar abs");
    }

    @Test
    void volumesAndTemperaturesFollowTheLocale() {
        assertThat(english.waterVolume(Volume.ofLitres(2.9), VolumeUnit.LITRE)).isEqualTo("2.9 L");
        assertThat(german.waterVolume(Volume.ofLitres(2.9), VolumeUnit.LITRE)).isEqualTo("2,9 L");
        assertThat(english.waterVolume(Volume.ofLitres(2.9), VolumeUnit.CUBIC_FOOT))
                .isEqualTo("0.10 cu ft");
        assertThat(english.freeVolume(Volume.ofLitres(1738), VolumeUnit.LITRE)).isEqualTo("1,740 L");
        assertThat(german.freeVolume(Volume.ofLitres(1738), VolumeUnit.LITRE)).isEqualTo("1\u202f740 L");
        assertThat(english.temperature(Temperature.ofCelsius(-5.2), TemperatureUnit.CELSIUS))
                .isEqualTo("-5 C");
    }

    @Test
    void whatIsWrittenIsReadBackInEveryLocale() {
        Random random = new Random(20260101);
        for (Locale locale : List.of(
                Locale.US,
                Locale.UK,
                Locale.GERMANY,
                Locale.FRANCE,
                Locale.forLanguageTag("pl"),
                Locale.forLanguageTag("de-CH"),
                Locale.forLanguageTag("pt-BR"),
                Locale.forLanguageTag("sv"),
                Locale.forLanguageTag("hi-IN"),
                Locale.forLanguageTag("ar-EG"))) {
            QuantityFormat format = QuantityFormat.of(locale);
            for (int i = 0; i < 200; i++) {
                GaugePressure pressure = GaugePressure.ofBar(random.nextDouble() * 450);
                for (PressureUnit unit : PressureUnit.values()) {
                    String written = format.pressure(pressure, unit);
                    double back = ((GaugePressure) Quantities.pressure(written).orElseThrow()).pascals();
                    assertThat(back).as(written).isCloseTo(pressure.pascals(), within(50_001.0));
                }
                Volume volume = Volume.ofLitres(random.nextDouble() * 9000);
                String litres = format.freeVolume(volume, VolumeUnit.LITRE);
                assertThat(Quantities.volume(litres).orElseThrow().toLitres())
                        .as(litres)
                        .isCloseTo(volume.toLitres(), within(5.001));
            }
        }
    }
}
