package org.lowfirst.planning.warm;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lowfirst.transfer.warm.Datasheet;
import org.lowfirst.transfer.warm.Figure;
import org.lowfirst.transfer.warm.Status;

/** Every figure of a datasheet of this package has a source in docs/references.bib or is marked as assumed. */
class WarmSourcesTest {

    private static final Pattern ENTRY = Pattern.compile("(?m)^@\\w+\\{([\\w-]+),");

    @ParameterizedTest
    @ValueSource(
            strings = {"developed-pressure-limits.txt", "plan-assumptions.txt", "rise-limits.txt", "snap-opening.txt"})
    void everySourceIsInTheBibliography(String file) throws IOException {
        Set<String> known = new TreeSet<>();
        Matcher entry = ENTRY.matcher(Files.readString(Path.of("..", "docs", "references.bib")));
        while (entry.find()) {
            known.add(entry.group(1));
        }
        for (Figure figure : Datasheet.beside(Pace.class, file).all()) {
            if (figure.source().equals("none")) {
                assertThat(figure.status()).as(figure.name()).isEqualTo(Status.ASSUMED);
            } else {
                assertThat(known).as(figure.name()).contains(figure.source());
            }
        }
    }
}
