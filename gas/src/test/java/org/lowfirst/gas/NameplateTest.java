package org.lowfirst.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NameplateTest {

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            244 cu ft at 2,200 psi ; 43.02
            244 cu ft @ 2200 psig  ; 43.02
            6,900 L AT 2,200 psi   ; 42.96
            """)
    void waterVolumeFollowsFromContentsAndPressure(String text, double litres) {
        // 160.62 L at 70 F and 1 atm for each litre of water volume at 2,200 psig, so 244 x 28.3168 / 160.62 = 43.02.
        Nameplate nameplate = Nameplate.parse(text).orElseThrow();
        Volume volume = nameplate
                .waterVolume(Oxygen.schmidtWagner(), ReferenceCondition.US_70F_1ATM, StandardAtmosphere.PRESSURE)
                .orElseThrow();
        assertThat(volume.toLitres()).isCloseTo(litres, within(0.01));
    }

    @Test
    void theWayBackGivesTheContents() {
        EquationOfState oxygen = Oxygen.schmidtWagner();
        ReferenceCondition us = ReferenceCondition.US_70F_1ATM;
        Nameplate nameplate = Nameplate.parse("244 cu ft at 2,200 psi").orElseThrow();
        Volume water =
                nameplate.waterVolume(oxygen, us, StandardAtmosphere.PRESSURE).orElseThrow();
        Amount contents = oxygen.contents(
                        water, nameplate.filledTo().toAbsolute(StandardAtmosphere.PRESSURE), us.temperature())
                .orElseThrow();
        assertThat(oxygen.freeVolume(contents, us).to(VolumeUnit.CUBIC_FOOT)).isCloseTo(244.0, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            244 cu ft             ; 9  ; 'The contents need a volume and a pressure, e.g. 244 cu ft at 2,200 psi.'
            244 at 2,200 psi      ; 3  ; '244 needs a unit: L, cu ft, cu in or m3.'
            244 cu ft at 2,200    ; 18 ; '2,200 needs a unit: psi, bar, kPa or MPa.'
            0 L at 150 bar        ; 0  ; 'The contents must be above zero, e.g. 244 cu ft at 2,200 psi.'
            """)
    void unreadableNameplatesSayWhere(String text, int position, String problem) {
        Parsed.Unreadable<Nameplate> unreadable = (Parsed.Unreadable<Nameplate>) Nameplate.parse(text);
        assertThat(unreadable.problem()).isEqualTo(problem);
        assertThat(unreadable.position()).isEqualTo(position);
    }

    @Test
    void contentsInAVacuumAreOutOfRange() {
        Nameplate nameplate = new Nameplate(Volume.ofLitres(100), new AbsolutePressure(0.0));
        assertThat(nameplate.waterVolume(
                        Oxygen.schmidtWagner(), ReferenceCondition.US_70F_1ATM, StandardAtmosphere.PRESSURE))
                .isInstanceOf(Evaluated.OutOfRange.class);
    }
}
