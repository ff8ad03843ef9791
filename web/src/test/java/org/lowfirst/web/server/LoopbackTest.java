package org.lowfirst.web.server;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class LoopbackTest {

    @ParameterizedTest
    @ValueSource(
            strings = {"localhost", "localhost:8080", "LOCALHOST:1", "127.0.0.1", "127.0.0.1:8080", "[::1]", "[::1]:80"
            })
    void namesOfThisMachineAreAnswered(String host) {
        assertThat(Loopback.isHost(host)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "example.org",
                "example.org:8080",
                "localhost.example.org",
                "127.0.0.1.example.org",
                "192.168.1.20",
                "[2001:db8::1]:80",
                "localhost@example.org",
                "127.0.0.2.example",
                ""
            })
    void anyOtherNameIsNot(String host) {
        assertThat(Loopback.isHost(host)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "http://127.0.0.1:8080, 127.0.0.1:8080, true",
        "http://localhost:8080, localhost:8080, true",
        "http://localhost:8081, localhost:8080, false",
        "https://localhost:8080, localhost:8080, false",
        "http://example.org, localhost:8080, false",
        "null, localhost:8080, false",
        "http://[broken, localhost:8080, false"
    })
    void anOriginIsOursOnlyWhenSchemeHostAndPortAreTheSame(String origin, String host, boolean ours) {
        assertThat(Loopback.isOrigin(origin, host)).isEqualTo(ours);
    }
}
