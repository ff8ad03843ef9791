package org.lowfirst.station;

import java.time.Instant;
import java.util.List;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;

/** An invented bench to test with: metric, three supplies of 50 L, one bottle of 5 L. */
final class Larkmoor {

    static final BenchId BENCH = new BenchId("larkmoor");
    static final SupplyId A = new SupplyId("supply-a");
    static final SupplyId B = new SupplyId("supply-b");
    static final SupplyId C = new SupplyId("supply-c");
    static final BottleId M_03 = new BottleId("m-03");
    static final FillId FILL = new FillId("fill-1");
    static final Instant TEN = Instant.parse("2026-06-14T10:00:00Z");

    private Larkmoor() {}

    static Settings settings() {
        return new Settings(
                "Larkmoor Gliders",
                Units.METRIC,
                RuleSet.EU,
                new Surroundings(
                        celsius("20"),
                        StatedAbsolutePressure.of("101.3", PressureUnit.KILOPASCAL),
                        StatedVolume.of("0", VolumeUnit.LITRE)),
                bar("200"),
                List.of("Ida", "Tom"));
    }

    static StatedPressure bar(String value) {
        return StatedPressure.of(value, PressureUnit.BAR);
    }

    static StatedTemperature celsius(String value) {
        return StatedTemperature.of(value, TemperatureUnit.CELSIUS);
    }

    static WaterVolume litres(String value) {
        return WaterVolume.stamped(StatedVolume.of(value, VolumeUnit.LITRE));
    }

    static Reading reads(String bar, int minute) {
        return new Reading(bar(bar), TEN.plusSeconds(60L * minute), celsius("20"), false, null);
    }

    static SupplyDetails supply(String name) {
        return new SupplyDetails(name, null, litres("50"), bar("200"));
    }

    static BottleDetails bottle(String name) {
        return new BottleDetails(name, "Ida", litres("5"), bar("200"), Material.STEEL, bar("150"));
    }

    static List<Fact> facts() {
        return List.of(
                new Fact.BenchOpened(settings()),
                new Fact.SupplyConnected(A, supply("A"), reads("62", 0)),
                new Fact.SupplyConnected(B, supply("B"), reads("118", 0)),
                new Fact.SupplyConnected(C, supply("C"), reads("190", 0)),
                new Fact.BottleRegistered(M_03, bottle("M-03"), reads("40", 0)));
    }

    static Stage stage(SupplyId supply, String bottleAfter, int minute) {
        return new Stage(supply, reads(bottleAfter, minute), null, null);
    }
}
