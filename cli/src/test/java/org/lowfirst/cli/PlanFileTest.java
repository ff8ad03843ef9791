package org.lowfirst.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that are no plan file at all, and how good ones may be written. */
final class PlanFileTest {

    private static final String PLAN = """
            temperature: 70 F
            supplies:
              - {name: A, water_volume: 49 L, reading: 2200 psi}
            bottles:
              - {name: R1, water_volume: 2.9 L, reading: 200 psi, target: 1800 psi, service_pressure: 2015 psi}
            """;

    @TempDir
    Path folder;

    @Test
    void aMissingFileIsSaidToBeMissing() {
        CommandRun run = CommandRun.of("plan", folder.resolve("none.yaml").toString());
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).endsWith("none.yaml: error: there is no such file. Check its name and folder.\n");
        assertThat(run.out()).isEmpty();
    }

    @Test
    void aFolderIsNotAPlanFile() {
        CommandRun run = CommandRun.of("plan", folder.toString());
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("this is a folder");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n\n", "# only a remark\n", "---\n"})
    void anEmptyFileIsSaidToBeEmptyOrNothing(String text) {
        CommandRun run = CommandRun.piped(text, "plan", "-");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).containsAnyOf("The file is empty.", "The file is nothing.");
        assertThat(run.err()).contains("temperature, supplies and bottles");
    }

    @Test
    void textThatIsNotUtf8IsShownWithItsPlace() {
        CommandRun run =
                CommandRun.piped("temperature: 70 F # caf\u00e9\n".getBytes(StandardCharsets.ISO_8859_1), "plan", "-");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).startsWith("standard input:1:24: error: The file is not UTF-8 text: byte 0xE9");
    }

    @Test
    void utf16IsNamed() {
        CommandRun run = CommandRun.piped(PLAN.getBytes(StandardCharsets.UTF_16), "plan", "-");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("The file is UTF-16 text; save it as UTF-8");
    }

    @Test
    void aHugeFileIsRefusedBeforeItIsRead() {
        CommandRun run = CommandRun.piped(new byte[300_000], "plan", "-");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("more than 262,144 bytes");
    }

    @Test
    void deepNestingIsRefusedWhereItGoesTooDeep() {
        CommandRun run = CommandRun.piped("[".repeat(200_000), "plan", "-");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("1:14: error: The file is nested more than 12 levels deep");
    }

    @Test
    void controlCharactersAreRefused() {
        CommandRun run = CommandRun.piped(PLAN.replace("R1", "R\u0007"), "plan", "-");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains(":5:13: error: The file holds the control character U+0007");
    }

    @Test
    void tooManySuppliesAreRefusedAtTheFirstOneTooMany() {
        StringBuilder text = new StringBuilder("temperature: 70 F\nsupplies:\n");
        for (int i = 1; i <= 65; i++) {
            text.append("  - {name: S").append(i).append(", water_volume: 49 L, reading: 100 bar}\n");
        }
        CommandRun run = CommandRun.piped(text + PLAN.substring(PLAN.indexOf("bottles")), "plan", "-");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains(":67:5: error: There are 65 supplies; a plan takes at most 64.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\uFEFF", "# a remark\n", "---\n", "rules: US\n", "hose_volume: 0.05 L\n"})
    void aGoodFileMayStartWith(String start) {
        assertThat(CommandRun.piped(start + PLAN, "plan", "-").exit()).isEqualTo(0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"2,200 psi\"", "'2200 psig'", "2 200 psi", "\"151,7 bar\"", "15.17 MPa", "2214.7 psia"})
    void readingsMayBeWrittenAsPeopleDo(String reading) {
        CommandRun run = CommandRun.piped(PLAN.replace("2200 psi", reading), "plan", "-", "--json");
        assertThat(run.err()).doesNotContain("error");
        assertThat(run.exit()).isEqualTo(0);
        double before = run.json().at("/bottles/0/steps/0/supply_before/psi").asDouble();
        assertThat(before).isBetween(2199.5, 2200.5);
    }

    @Test
    void anchorsStandForWhatTheyName() {
        String text = PLAN.replace("name: A, water_volume: 49 L", "name: A, water_volume: &large 49 L")
                .replace("bottles:", "  - {name: B, water_volume: *large, reading: 1000 psi}\nbottles:");
        CommandRun run = CommandRun.piped(text, "plan", "-", "--json");
        assertThat(run.exit()).isEqualTo(0);
        assertThat(run.json().get("supplies")).hasSize(2);
    }

    @Test
    void theSameFileGivesTheSameBytes() throws IOException {
        Path file = Files.writeString(folder.resolve("plan.yaml"), PLAN);
        CommandRun first = CommandRun.of("plan", file.toString(), "--json");
        assertThat(CommandRun.of("plan", file.toString(), "--json")).isEqualTo(first);
        assertThat(first.out()).endsWith("}\n").containsOnlyOnce("\n");
    }
}
