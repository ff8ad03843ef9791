package org.lowfirst.transfer.warm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Mass;
import org.lowfirst.gas.Volume;

/** Masses sized from service pressure and water volume against published and remembered masses of common sizes. */
class WallsReferenceTest {

    private record Row(WallMaterial material, double psi, double pounds, double litres) {}

    private static List<Row> rows() throws IOException {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(WallsReferenceTest.class.getResourceAsStream("/reference/cylinder-masses.csv")),
                StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(","))
                    .map(p -> new Row(
                            WallMaterial.valueOf(p[2]),
                            Double.parseDouble(p[1]),
                            Double.parseDouble(p[3]),
                            Double.parseDouble(p[4])))
                    .toList();
        }
    }

    private static double ratio(Row row) {
        return Walls.assumedMass(row.material(), Volume.ofLitres(row.litres()), GaugePressure.ofPsi(row.psi()))
                        .toPounds()
                / row.pounds();
    }

    /** Small bottles have relatively heavy heads and necks, and old steel ones thick walls: a factor of 1.4 either way. */
    @Test
    void sizedMassesAreWithinFortyPerCentOfTheKnownOnes() throws IOException {
        assertThat(rows()).hasSize(16);
        for (Row row : rows()) {
            assertThat(ratio(row)).as(row.toString()).isBetween(1 / 1.4, 1.4);
        }
    }

    @Test
    void sizedMassesAreRightOnAverage() throws IOException {
        for (WallMaterial material : List.of(WallMaterial.ALUMINIUM, WallMaterial.STEEL)) {
            double meanLog = rows().stream()
                    .filter(row -> row.material() == material)
                    .mapToDouble(row -> Math.log(ratio(row)))
                    .average()
                    .orElseThrow();
            assertThat(meanLog).as(material.name()).isCloseTo(0.0, within(0.03));
        }
    }

    /** Wall stress of 49 CFR 178.46 by hand: 2 015 psi, S = 25 460 psi, D / d = sqrt((S + 0.4 P) / (S - 1.3 P)), P = 3 358 psi. */
    @Test
    void theShellFollowsTheWallStressFormula() {
        double areaRatio = (25_460 + 0.4 * 3358.33) / (25_460 - 1.3 * 3358.33);
        double shell_kg = 2700 * 2.9e-3 * (areaRatio - 1.0);
        double factor = WallMaterial.ALUMINIUM.figure("heads-factor", "1");
        Mass sized = Walls.assumedMass(WallMaterial.ALUMINIUM, Volume.ofLitres(2.9), GaugePressure.ofPsi(2015));
        assertThat(sized.kilograms() / factor).isCloseTo(shell_kg, within(0.001 * shell_kg));
    }
}
