package org.lowfirst.transfer.warm;

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

/** Every source a datasheet of this package names stands in docs/references.bib. */
class SourcesTest {

    private static final Pattern ENTRY = Pattern.compile("(?m)^@\\w+\\{([\\w-]+),");

    static Set<String> known() throws IOException {
        Set<String> known = new TreeSet<>();
        Matcher entry = ENTRY.matcher(Files.readString(Path.of("..", "docs", "references.bib")));
        while (entry.find()) {
            known.add(entry.group(1));
        }
        return known;
    }

    @ParameterizedTest
    @ValueSource(strings = {"heat-transfer.txt", "wall-materials.txt"})
    void everySourceIsInTheBibliography(String file) throws IOException {
        for (Figure figure : Datasheet.beside(HeatModel.class, file).all()) {
            if (!figure.source().equals("none")) {
                assertThat(known()).as(figure.name()).contains(figure.source());
            }
        }
    }
}
