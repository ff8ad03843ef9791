package org.lowfirst.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a person sees of {@code lowfirst gas}. */
final class GasCommandTest {

    private static final String HEADER =
            "T_K,p_Pa,rho_kg_m3,Z,u_J_kg,h_J_kg,s_J_kgK,cv_J_kgK,cp_J_kgK,w_m_s," + "viscosity_Pa_s,conductivity_W_mK";

    @Test
    void aReadingIsShownAtOtherTemperatures() {
        CommandRun run = CommandRun.of(
                "gas",
                "--reading",
                "2,015 psi",
                "--at",
                "70 F",
                "--reads-at",
                "20 F",
                "--reads-at",
                "100 F",
                "--volume",
                "2.9 L",
                "--rated",
                "2015 psi");
        assertThat(run.exit()).isZero();
        assertThat(run.out()).startsWith("""
                OXYGEN: the gauge reads 2,015 psi, the gas is at 70 F.

                                               real gas      ideal gas
                  reads at 20 F               1,749 psi      1,823 psi
                  reads at 100 F              2,174 psi      2,130 psi

                  free gas                      426.4 L        400.5 L
                                            15.06 cu ft    14.14 cu ft
                  amount                      17.67 mol      16.59 mol
                  mass                        0.5654 kg      0.5308 kg

                  full                          100.0 %        100.0 %
                  reads at 70 F               2,015 psi      2,015 psi
                  a full one at 70 F          2,015 psi      2,015 psi
                  Full is 2,015 psi at 70 F (US rules).
                """);
        assertThat(run.out()).contains("Free gas counts at 70 F, 1 atm.", "The cylinder's marking");
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @ParameterizedTest
    @CsvSource({"70 F, 100 F", "20 C, 40 C", "290 K, 310 K"})
    void withoutTemperaturesToReadAtCommonOnesAreTaken(String at, String last) {
        CommandRun run = CommandRun.of("gas", "--reading", "150 bar", "--at", at);
        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("reads at " + last).doesNotContain("free gas  ", "full  ");
    }

    @Test
    void moreThanTheMarkingAllowsIsSaid() {
        CommandRun run =
                CommandRun.of("gas", "--reading", "200 bar", "--at", "0 C", "--rated", "200 bar", "--rules", "eu");
        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("It holds more than its marking allows");
    }

    @Test
    void aNumberWithoutItsUnitIsRefusedAndEveryObjectionIsShown() {
        CommandRun run = CommandRun.of(
                "gas",
                "--reading",
                "2015",
                "--at",
                "70",
                "--reads-at",
                "5 bar",
                "--volume",
                "2,9",
                "--rated",
                "x psi",
                "--rules",
                "uk",
                "--json");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).isEqualTo("""
                lowfirst gas: --reading 2015: 2015 needs a unit: psi, bar, kPa or MPa.
                lowfirst gas: --at 70: 70 needs a unit: F, C or K.
                lowfirst gas: --reads-at 5 bar: '5 bar' is a pressure; a temperature is needed here, in F, C or K.
                lowfirst gas: --volume 2,9: 2,9 needs a unit: L, cu ft, cu in or m3.
                lowfirst gas: --rated x psi: 'x psi' does not start with a number. Please type a pressure such as 150 bar.
                lowfirst gas: --rules uk: This rule set is not known. Write us (marked pressures count at 70 F) or eu (at 15 C).
                """);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--reading|6000 psi|--at|70 F|The reading (6,000 psi) must be 0 psi to 5,802 psi.",
                "--reading|150 bar|--at|500 F|The temperature of the gas (500 F) must be -64 F to 332 F.",
                "--snap|6000 psi|--at|70 F|must be 1.01 to 400 bar absolute.",
                "--snap|150 bar|--at|-90 C|(-90 C) must be -50 C to 60 C."
            })
    void outOfRangeTellsMeasuredAndLimit(String asked, String value, String at, String degrees, String sentence) {
        CommandRun run = CommandRun.of("gas", asked, value, at, degrees);
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(sentence);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "gas",
                "gas --at 70F",
                "gas --reading 150bar",
                "gas --reading 150bar --at 20C --snap 150bar",
                "gas --snap 150bar --at 20C --volume 2L",
                "gas --states - --json",
                "gas --reading 150bar --at 20C more"
            })
    void misuseEndsWithTwoAndSaysWhereToLook(String typed) {
        CommandRun run = CommandRun.of(typed.split(" "));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("lowfirst gas: ").contains("lowfirst gas --help for what it takes.");
    }

    @Test
    void aSnappedValveComesWithItsCaution() {
        CommandRun run = CommandRun.of("gas", "--snap", "2200 psi", "--at", "20 C");
        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("real gas", "Open every oxygen valve slowly", "Both figures are theory");
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(run.out()).doesNotContainIgnoringCase("safe");
    }

    @Test
    void statesAreTabulatedInTheOrderOfTheFileWhateverItsColumns() {
        CommandRun run = CommandRun.piped(
                "# two states\r\np_Pa,note,T_K\r\n\r\n101325,\"a, b\",250\r\n5e5,,300.5\r\n", "gas", "--states", "-");
        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
        assertThat(run.out().lines()).hasSize(3).startsWith(HEADER);
        assertThat(run.out()).contains("\n250.0,101325.0,1.56201410", "\n300.5,500000.0,6.42327195");
    }

    @Test
    void aHeaderAloneGivesAHeaderAlone() {
        assertThat(CommandRun.piped("T_K,p_Pa\n", "gas", "--states", "-").out()).isEqualTo(HEADER + "\n");
    }

    @Test
    void everyWrongRowIsShownAndNothingIsTabulated() {
        CommandRun run = CommandRun.piped("""
                p_Pa,x,T_K
                101325,a,250
                101325,a,100
                1e9,b,300.5
                1,2
                x,,
                -1,3,300
                2e6,c,155
                """, "gas", "--states", "-");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).isEqualTo("""
                standard input:3:10: error: The temperature (100 K) must be 160 to 2,000 K, where the equation holds. Correct it or take the row out.
                    3 | 101325,a,100
                      |          ^~~
                standard input:4:1: error: The absolute pressure (1.0E9 Pa) must be 0 to 80,000,000 Pa, where the equation holds. Correct it or take the row out.
                    4 | 1e9,b,300.5
                      | ^~~
                standard input:5:3: error: The row has 2 cells, the header has 3 cells. Write one cell for each column.
                    5 | 1,2
                      |   ^
                standard input:6:1: error: p_Pa (x) is not a number. Write digits, with a point before decimals.
                    6 | x,,
                      | ^
                standard input:6:4: error: There is no T_K in this row. Write a number.
                    6 | x,,
                      |    ^
                standard input:7:1: error: The absolute pressure (-1 Pa) must be above 0 Pa. A gauge reading counts from the surroundings; add them to it.
                    7 | -1,3,300
                      | ^~
                standard input:8:7: error: The temperature (155 K) must be 160 to 2,000 K, where the equation holds. Correct it or take the row out.
                    8 | 2e6,c,155
                      |       ^~~
                7 errors, nothing was tabulated.
                """);
    }

    @Test
    void missingColumnsAreNamed() {
        CommandRun run = CommandRun.piped("t_k;p_Pa\n250;1e5\n", "gas", "--states", "-");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("There is no column T_K.", "There is no column p_Pa.");
    }

    @Test
    void aHundredProblemsAreEnough() {
        CommandRun run = CommandRun.piped("T_K,p_Pa\n" + "1,1\n".repeat(5_000), "gas", "--states", "-");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("That makes 100 problems", "101 errors, nothing was tabulated.");
    }

    @Test
    void textThatIsNoTextAndFilesThatAreNotThereAreRefused() {
        byte[] latin1 = "T_K,p_Pa\n250,1\u00e9\n".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(CommandRun.piped(latin1, "gas", "--states", "-").err()).contains("standard input:2:6: error:");
        assertThat(CommandRun.of("gas", "--states", "nowhere.csv").exit()).isEqualTo(2);
        assertThat(CommandRun.of("gas", "--states", "nowhere.csv").err()).contains("there is no such file");
    }

    @Test
    void everyAnswerFitsTheSchema() throws IOException {
        PublishedSchema schema = PublishedSchema.of("gas-result.schema.json");
        String plain = CommandRun.of("gas", "--reading", "150 bar", "--at", "20 C", "--json")
                .out();
        assertThat(schema.faults(plain)).isEmpty();
        assertThat(schema.faults(CommandRun.of(
                                "gas",
                                "--reading",
                                "1800 psi",
                                "--at",
                                "40 F",
                                "--volume",
                                "10 L",
                                "--rated",
                                "2015 psi",
                                "--json")
                        .out()))
                .isEmpty();
        assertThat(schema.faults(CommandRun.of("gas", "--snap", "200 bar", "--at", "20 C", "--json")
                        .out()))
                .isEmpty();
        assertThat(schema.faults(plain.replace("\"contents\":null,", ""))).isNotEmpty();
        assertThat(schema.faults(plain.replace("\"gas\":", "\"fluid\":"))).isNotEmpty();
    }
}
