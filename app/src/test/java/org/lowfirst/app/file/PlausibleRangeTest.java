package org.lowfirst.app.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Parsed;
import org.lowfirst.gas.Temperature;

/** The guard against mixed-up units. The readings are invented; that they are mix-ups is common practice, no source. */
final class PlausibleRangeTest {

    private static final PlausibleRange<GaugePressure> SERVICE = PlausibleRange.of("service_pressure", Kind.PRESSURE);
    private static final PlausibleRange<Temperature> BENCH = PlausibleRange.of("temperature", Kind.TEMPERATURE);

    @ParameterizedTest
    @CsvSource({"2015 bar, 2015 psi", "150 psi, 150 bar", "1850 kPa, 1850 psi", "200 MPa, 200 bar"})
    void theUnitThatFitsIsOffered(String typed, String meant) {
        assertThat(fault(SERVICE, typed).orElseThrow())
                .contains("Maybe " + meant.replace("2015", "2,015").replace("1850", "1,850") + " was meant.");
    }

    @ParameterizedTest
    @CsvSource({"2015 psi", "1800 psi", "450 psi", "139 bar", "150 bar", "300 bar", "20 MPa", "2030 psia"})
    void commonMarkingsPass(String typed) {
        assertThat(fault(SERVICE, typed)).isEmpty();
    }

    @Test
    void limitsAreSaidInTheUnitThatWasTyped() {
        assertThat(fault(SERVICE, "9000 psi").orElseThrow()).contains("must be 363 psi to 5,800 psi");
    }

    @ParameterizedTest
    @CsvSource({"70 C, 70 F", "21 K, 21 F"})
    void temperaturesAreGuardedToo(String typed, String meant) {
        assertThat(fault(BENCH, typed).orElseThrow()).contains("Maybe " + meant + " was meant.");
    }

    private static <T extends Comparable<T>> Optional<String> fault(PlausibleRange<T> range, String typed) {
        Parsed.Read<T> read = (Parsed.Read<T>) range.kind().read().apply(typed);
        return range.findFault("value", new Measure<>(read.value(), read.number(), read.unit(), Place.START));
    }
}
