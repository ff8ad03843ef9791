package org.lowfirst.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lowfirst.station.Larkmoor.bar;
import static org.lowfirst.station.Larkmoor.celsius;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.VolumeUnit;

class SettingsTest {

    private static final Surroundings USUAL = Larkmoor.settings().surroundings();

    @Test
    void aBenchOpensOnItsSettings() {
        assertThat(open(Larkmoor.settings()))
                .isEqualTo(new Accepted(List.of(new Fact.BenchOpened(Larkmoor.settings()))));
    }

    @Test
    void aBenchNeedsAName() {
        assertThat(open(with(" ", USUAL, bar("200")))).isEqualTo(Refused.of(Rule.NAME_EMPTY, "bench"));
    }

    @Test
    void aFullSupplyReadsMoreThanNothing() {
        assertThat(open(with("Bench", USUAL, bar("0"))))
                .isEqualTo(new Refused(Rule.FULL_SUPPLY_NOT_ABOVE_ZERO, "Bench", bar("0"), null));
    }

    @Test
    void anUnusualFullSupplyIsAskedAbout() {
        assertThat(open(with("Bench", USUAL, bar("29")))).isInstanceOfSatisfying(Refused.class, refused -> {
            assertThat(refused.rule()).isEqualTo(Rule.SERVICE_PRESSURE_UNUSUAL);
            assertThat(refused.confirmable()).isTrue();
        });
    }

    @Test
    void theSurroundingsHaveAnAtmosphere() {
        StatedAbsolutePressure gauge = StatedAbsolutePressure.of("0", PressureUnit.BAR);
        Surroundings wrong = new Surroundings(celsius("20"), gauge, USUAL.hoseVolume());
        assertThat(open(with("Bench", wrong, bar("200"))))
                .isEqualTo(new Refused(
                        Rule.AMBIENT_OUT_OF_RANGE,
                        "",
                        gauge,
                        StatedAbsolutePressure.of("50", PressureUnit.KILOPASCAL)));
    }

    @Test
    void aHoseOfManyLitresIsAskedAbout() {
        StatedVolume large = StatedVolume.of("5", VolumeUnit.LITRE);
        Surroundings odd = new Surroundings(celsius("20"), USUAL.ambient(), large);
        assertThat(open(with("Bench", odd, bar("200"))))
                .isEqualTo(new Refused(Rule.HOSE_VOLUME_UNUSUAL, "", large, StatedVolume.of("2", VolumeUnit.LITRE)));
    }

    private static Settings with(String name, Surroundings surroundings, StatedPressure full) {
        return new Settings(name, Units.METRIC, RuleSet.EU, surroundings, full, List.of());
    }

    private static Decision open(Settings settings) {
        return Deciding.decide(
                null, new Command.OpenBench(settings), new Circumstances(Larkmoor.TEN, Larkmoor.TEN, false));
    }
}
