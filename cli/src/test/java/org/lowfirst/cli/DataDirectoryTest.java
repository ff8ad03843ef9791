package org.lowfirst.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

final class DataDirectoryTest {

    private static final Path HOME = Path.of("/home/pat");

    /** XDG Base Directory Specification 0.8: default $HOME/.local/share; relative paths are to be ignored. */
    @Test
    void linuxFollowsTheBaseDirectorySpecification() {
        assertThat(DataDirectory.of("Linux", HOME, Map.of())).isEqualTo(Path.of("/home/pat/.local/share/lowfirst"));
        assertThat(DataDirectory.of("Linux", HOME, Map.of("XDG_DATA_HOME", "/srv/data")))
                .isEqualTo(Path.of("/srv/data/lowfirst"));
        assertThat(DataDirectory.of("Linux", HOME, Map.of("XDG_DATA_HOME", "data")))
                .isEqualTo(Path.of("/home/pat/.local/share/lowfirst"));
    }

    @Test
    void otherPlatformsHaveTheirOwn() {
        assertThat(DataDirectory.of("Mac OS X", HOME, Map.of()))
                .isEqualTo(Path.of("/home/pat/Library/Application Support/Lowfirst"));
        assertThat(DataDirectory.of("Windows 11", HOME, Map.of("LOCALAPPDATA", "/local")))
                .isEqualTo(Path.of("/local/Lowfirst"));
    }
}
