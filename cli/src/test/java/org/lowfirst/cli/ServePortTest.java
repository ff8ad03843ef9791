package org.lowfirst.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import org.junit.jupiter.api.Test;

final class ServePortTest {

    @Test
    void aTakenPortIsPassedOver() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            int port = ServePort.freeFrom(taken.getLocalPort(), "127.0.0.1");
            assertThat(port).isGreaterThan(taken.getLocalPort()).isLessThan(taken.getLocalPort() + 20);
        }
    }
}
