package org.lowfirst.planning.warm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.transfer.warm.WallMaterial;

/**
 * The table of filling pressure against ambient temperature for 1,850 psi at 70 F, from memory: warm-stop compensation at 25 F of
 * warming gives it within 1.5 %; the same computed outside this project, within half of its last digit.
 */
class FillPressureTableReferenceTest {

    static Stream<List<String>> rows() throws IOException {
        return Shop.rows("fill-pressure-1850.csv").stream();
    }

    private static double stop_psi(double ambient_F) {
        RatedBottle bottle = RatedBottle.of(
                        "A-1", Volume.ofLitres(22), GaugePressure.ofPsi(1850), WallMaterial.STEEL, null)
                .orElseThrow();
        Temperature gas = Temperature.ofFahrenheit(ambient_F + 25);
        StopRequest request =
                new StopRequest(bottle, new GasNow.Stated(GaugePressure.ofPsi(1000), gas), Shop.usBench(ambient_F));
        Compensation on = new Compensation.On("fill pressure table at 25 F of warming", "the responsible person");
        return StopAndSettle.plan(request.with(on))
                .orElseThrow()
                .stop()
                .reading()
                .toPsi();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void compensationReproducesTheRecalledTable(List<String> row) {
        double recalled = Double.parseDouble(row.get(1));
        assertThat(stop_psi(Double.parseDouble(row.get(0)))).isCloseTo(recalled, within(0.015 * recalled));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void compensationReproducesTheComputedTable(List<String> row) {
        assertThat(stop_psi(Double.parseDouble(row.get(0)))).isCloseTo(Double.parseDouble(row.get(2)), within(0.55));
    }
}
