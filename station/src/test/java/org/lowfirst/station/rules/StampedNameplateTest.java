package org.lowfirst.station.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lowfirst.station.rules.Cylinders.TODAY;

import java.time.YearMonth;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;
import org.lowfirst.station.stamp.Convention;
import org.lowfirst.station.stamp.Stamp;

class StampedNameplateTest {

    private static StampedNameplate us(String line) {
        return StampedNameplate.of(Stamp.read(line, Convention.US, TODAY));
    }

    @Test
    void aStampTypedOnOneLineIsJudged() {
        StampedNameplate read = us("DOT-3AA1800 4711 XYZ 6 H 06 06 A123 21+*");

        assertThat(read.nameplate())
                .isEqualTo(new Nameplate(
                        "3AA", WallMaterial.STEEL, GaugePressure.ofPsi(1_800), null, null, YearMonth.of(2006, 6)));
        assertThat(read.lastTest()).isEqualTo(new TestMark(YearMonth.of(2021, 6), true, true, ""));
        Judgement judgement = BuiltInBooks.us()
                .judge(Cylinders.cylinder("B-21", read.nameplate(), read.lastTest(), Cylinders.reads(600)), TODAY);
        assertThat(judgement.warnings())
                .extracting(Finding::advice)
                .containsExactlyInAnyOrder(Advice.STAR_DOES_NOT_COUNT, Advice.RETEST_SOON);
    }

    @Test
    void aRequalificationIsNotTakenForTheMonthItWasMade() {
        StampedNameplate read = us("DOT-3HT1850 X99871 6 B456 23");

        assertThat(read.nameplate().made()).isNull();
        assertThat(read.lastTest()).isEqualTo(TestMark.of(2023, 6));
    }

    @Test
    void ofTwoCountriesTheSpecificationOfTheUnitedStatesIsTakenAndTheLowerPressure() {
        Nameplate plate = us("TC-3ALM 153/DOT-3AL2216 B5671 XYZ 05-19").nameplate();

        assertThat(plate.specification()).isEqualTo("3AL");
        assertThat(plate.material()).isEqualTo(WallMaterial.ALUMINIUM);
        assertThat(plate.servicePressure()).isEqualTo(GaugePressure.ofPsi(2_216));
        assertThat(us("TC-3ALM 153 B5671").nameplate().specification()).isEqualTo("3ALM");
    }

    @Test
    void aEuropeanStampGivesTestPressureVolumeAndMonths() {
        StampedNameplate read = StampedNameplate.of(Stamp.read(
                "EN ISO 7866 PH 300 BAR PW 200 BAR 13,2 KG 10,0 L 2016/05 2026/05", Convention.EUROPEAN, TODAY));

        assertThat(read.nameplate())
                .isEqualTo(new Nameplate(
                        "ISO 7866",
                        WallMaterial.ALUMINIUM,
                        GaugePressure.ofBar(200),
                        GaugePressure.ofBar(300),
                        Volume.ofLitres(10),
                        YearMonth.of(2016, 5)));
        assertThat(read.lastTest()).isEqualTo(TestMark.of(2026, 5));
    }

    @Test
    void anUnreadableStampLeavesEverythingOpen() {
        assertThat(us("~~~")).isEqualTo(new StampedNameplate(Nameplate.UNREADABLE, null));
    }
}
