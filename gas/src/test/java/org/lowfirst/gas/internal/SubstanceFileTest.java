package org.lowfirst.gas.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SubstanceFileTest {

    @TempDir
    Path directory;

    private String good = "";

    @BeforeEach
    void readTheGoodFile() throws IOException {
        try (var bytes = AnotherGasTest.file().openStream()) {
            good = new String(bytes.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '|', textBlock = """
            0.030 kg/mol       ; 30 g/mol       ; 10:27 ; The unit of molar-mass must be 'kg/mol'.
            0.030 kg/mol       ; 0.030          ; 10:30 ; The unit of molar-mass must be 'kg/mol'.
            0.030 kg/mol       ; 30 kg/mol      ; 10:24 ; The molar-mass (30 kg/mol) must be 0.001 to 1.0.
            0.030 kg/mol       ; 0,030 kg/mol   ; 10:24 ; '0,030' is not a number.
            0.030 kg/mol       ; NaN kg/mol     ; 10:24 ; 'NaN' is not a finite number.
            molar-mass  ; molar-mas ; 10:1  ; The file must state molar-mass.
            ideal-a1           ; ideal-log-tau  ; 15:1  ; The key ideal-log-tau appears twice.
            cas = 0-00-0       ; cas = 0-00-0\\ncolour = none ; 4:1 ; Unknown key 'colour'.
            gas = virial       ; gas virial     ; 2:1   ; Neither a comment, nor 'key = value', nor '[section] digits N'.
            0.3 2 0.3 0        ; 0.3 2 0.3      ; 25:1  ; The table residual has 4 columns, this row has 3.
            0.3 2 0.3 0        ; 0.3 2 O.3 0    ; 25:7  ; 'O.3' is not a number.
            0.3 2 0.3 0        ; 0.3001 2 0.3 0 ; 25:1  ; '0.3001' has more than the 3 digits of its section.
            0.3 2 0.3 0        ; 0.3 2.5 0.3 0  ; 22:1  ; Column 'd' of residual must hold whole numbers from 1 to 20, not 2.5.
            0.3 2 0.3 0        ; 0.3 0 0.3 0    ; 22:1  ; Column 'd' of residual must hold whole numbers from 1 to 20, not 0.0.
            columns n d t l    ; columns n d t m ; 22:1 ; The table residual needs a column 'l'.
            columns n d t l    ; 1 1 1 1        ; 23:1  ; The table residual must start with its columns.
            """)
    void aSlipIsPointedAt(String right, String wrong, String place, String problem) throws IOException {
        assertThat(good).contains(right);
        Path file = directory.resolve("slip.txt");
        Files.writeString(file, good.replace(right, wrong.replace("\\n", "\n")));
        assertThatExceptionOfType(MalformedSubstanceFile.class)
                .isThrownBy(() -> HelmholtzEquation.read(file.toUri().toURL()))
                .satisfies(slip -> {
                    String[] lines = Objects.requireNonNull(slip.getMessage()).split("\n", -1);
                    assertThat(lines[0]).isEqualTo(problem);
                    if (!problem.startsWith("The file must state")) {
                        assertThat(lines[1]).endsWith("slip.txt:" + place);
                        int column = Integer.parseInt(place.substring(place.indexOf(':') + 1));
                        assertThat(lines[3]).isEqualTo(" ".repeat(column - 1) + "^");
                    }
                });
    }

    @Test
    void aMissingTableIsNamed() throws IOException {
        Path file = directory.resolve("short.txt");
        Files.writeString(file, good.substring(0, good.indexOf("[residual]")));
        assertThatExceptionOfType(MalformedSubstanceFile.class)
                .isThrownBy(() -> HelmholtzEquation.read(file.toUri().toURL()))
                .withMessageStartingWith("The file must state [residual].");
    }
}
