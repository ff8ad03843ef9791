package org.lowfirst.gas;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every source that this module cites stands in docs/references.bib. */
class ReferencesTest {

    private static final Pattern CITED = Pattern.compile("\\[([A-Z][A-Za-z]+[0-9]{4})]");
    private static final Pattern DATA = Pattern.compile("-source = (.+)");
    private static final Pattern TABLE = Pattern.compile("-([A-Z][A-Za-z]+[0-9]{4})\\.csv$");
    private static final Pattern ENTRY = Pattern.compile("(?m)^@\\w+\\{(\\w+),");

    @Test
    void everyCitedKeyExists() throws IOException {
        Set<String> known = new TreeSet<>();
        Matcher entry = ENTRY.matcher(Files.readString(Path.of("..", "docs", "references.bib")));
        while (entry.find()) {
            known.add(entry.group(1));
        }
        Set<String> cited = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("src"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                collect(TABLE.matcher(file.getFileName().toString()), cited);
                String text = Files.readString(file);
                if (file.toString().endsWith(".java")) {
                    collect(CITED.matcher(text), cited);
                } else if (file.startsWith(Path.of("src", "main"))) {
                    collect(DATA.matcher(text), cited);
                }
            }
        }
        assertThat(cited).contains("SchmidtWagner1985", "LemmonJacobsen2004", "KunzWagner2012");
        assertThat(known).containsAll(cited);
    }

    private static void collect(Matcher matcher, Set<String> keys) {
        while (matcher.find()) {
            keys.addAll(Set.of(matcher.group(1).strip().split(" ")));
        }
    }
}
