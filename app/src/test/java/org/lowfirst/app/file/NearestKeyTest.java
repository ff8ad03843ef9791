package org.lowfirst.app.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class NearestKeyTest {

    private static final List<String> KEYS = List.of("name", "water_volume", "reading", "target", "service_pressure");

    @ParameterizedTest
    @CsvSource({
        "raeding, reading",
        "Reading, reading",
        "watervolume, water_volume",
        "water-volume, water_volume",
        "WaterVol, water_volume",
        "service presure, service_pressure",
        "tarjet, target",
        "nam, name"
    })
    void aSlipIsGuessed(String typed, String meant) {
        assertThat(NearestKey.find(typed, KEYS)).contains(meant);
    }

    @ParameterizedTest
    @CsvSource({"colour", "owner", "x", "serial"})
    void anotherWordIsNotGuessed(String typed) {
        assertThat(NearestKey.find(typed, KEYS)).isEmpty();
    }
}
