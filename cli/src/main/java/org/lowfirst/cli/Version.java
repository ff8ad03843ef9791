package org.lowfirst.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import picocli.CommandLine.IVersionProvider;

/** Says which version this is; the build writes it into version.txt. */
final class Version implements IVersionProvider {

    @Override
    public String[] getVersion() throws IOException {
        try (InputStream in = Objects.requireNonNull(Version.class.getResourceAsStream("version.txt"), "version.txt")) {
            String version = new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
            return new String[] {"lowfirst " + version + " on Java " + System.getProperty("java.version")};
        }
    }
}
