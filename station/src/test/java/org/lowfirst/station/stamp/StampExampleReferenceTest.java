package org.lowfirst.station.stamp;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.YearMonth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;

/** The examples printed in the two rules for marking, with the meanings printed beside them. */
class StampExampleReferenceTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 6, 14);

    /**
     * Source: 49 CFR 178.35(f)(1), revised as of 2010-10-01, both forms of the example: 3A specification number, 1800 service
     * pressure, 1234 serial number, XY symbol of manufacturer, AB inspector's mark, 5-95 date of test. The copy read had lost
     * the stroke of the date.
     */
    @ParameterizedTest
    @ValueSource(strings = {"DOT-3A1800 1234 XY AB 5-95", "DOT-3A1800-1234-XY AB 5-95"})
    void exampleOf49Cfr178_35(String line) {
        Stamp stamp = Stamp.read(line, Convention.US, TODAY);

        Meaning.Specification specification =
                stamp.find(Meaning.Specification.class).orElseThrow();
        assertThat(specification.authority()).isEqualTo("DOT");
        assertThat(specification.code()).isEqualTo("3A");
        assertThat(stamp.find(Meaning.ServicePressure.class))
                .contains(new Meaning.ServicePressure(GaugePressure.ofPsi(1_800)));
        assertThat(stamp.find(Meaning.SerialNumber.class)).contains(new Meaning.SerialNumber("1234"));
        assertThat(stamp.find(Meaning.Maker.class)).contains(new Meaning.Maker("XY"));
        assertThat(stamp.find(Meaning.InspectionMark.class)).contains(new Meaning.InspectionMark("AB"));
        assertThat(stamp.findLatestTest()).contains(new Meaning.TestDate(YearMonth.of(1995, 5), "", false, false, ""));
        assertThat(stamp.unknown()).isEmpty();
    }

    /**
     * Source: UN Model Regulations, 17th revised edition (2011), 6.2.2.7.5, figure, its three rows read from the lowest up; the
     * letters (b) to (p) under it are explained in 6.2.2.7.2 to 6.2.2.7.4.
     */
    @Test
    void exampleOfUnModelRegulations6_2_2_7_5() {
        Stamp stamp = Stamp.read(
                "ISO 9809-1 F IB 2000/12 PW200 PH300BAR 62.1 KG 50 L 5.8 MM 25E D MF 765432 H",
                Convention.EUROPEAN,
                TODAY);

        assertThat(stamp.find(Meaning.Specification.class).orElseThrow().code()).isEqualTo("ISO 9809-1");
        assertThat(stamp.list(Meaning.Country.class))
                .containsExactly(new Meaning.Country("F"), new Meaning.Country("D"));
        assertThat(stamp.find(Meaning.InspectionMark.class)).contains(new Meaning.InspectionMark("IB"));
        assertThat(stamp.findFirstTest().orElseThrow().month()).isEqualTo(YearMonth.of(2000, 12));
        assertThat(stamp.find(Meaning.ServicePressure.class))
                .contains(new Meaning.ServicePressure(GaugePressure.ofBar(200)));
        assertThat(stamp.find(Meaning.TestPressure.class)).contains(new Meaning.TestPressure(GaugePressure.ofBar(300)));
        assertThat(stamp.find(Meaning.EmptyMass.class).orElseThrow().mass().kilograms())
                .isEqualTo(62.1);
        assertThat(stamp.find(Meaning.WaterVolume.class)).contains(new Meaning.WaterVolume(Volume.ofLitres(50)));
        assertThat(stamp.find(Meaning.WallThickness.class)).contains(new Meaning.WallThickness(5.8));
        assertThat(stamp.find(Meaning.NeckThread.class)).contains(new Meaning.NeckThread("25E"));
        assertThat(stamp.find(Meaning.Maker.class)).contains(new Meaning.Maker("MF"));
        assertThat(stamp.find(Meaning.SerialNumber.class)).contains(new Meaning.SerialNumber("765432"));
        assertThat(stamp.find(Meaning.SteelForHydrogen.class)).isPresent();
        assertThat(stamp.unknown()).isEmpty();
    }
}
