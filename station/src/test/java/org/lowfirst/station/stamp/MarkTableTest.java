package org.lowfirst.station.stamp;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.PressureUnit;

class MarkTableTest {

    private static final String HEADER = "convention;code;wall;unit of a bare pressure;status;source;note";

    @Test
    void everyCodeHasASourceAndAStatus() {
        MarkTable table = MarkTable.builtIn();

        assertThat(table.list(Convention.US)).hasSizeGreaterThan(10);
        assertThat(table.list(Convention.EUROPEAN)).hasSizeGreaterThan(5);
        for (Convention convention : Convention.values()) {
            assertThat(table.list(convention)).allSatisfy(mark -> {
                assertThat(mark.source()).isNotBlank();
                assertThat(mark.note()).isNotBlank();
            });
        }
        assertThat(table.find(Convention.US, "3ALM").orElseThrow().bareUnit()).isEqualTo(PressureUnit.BAR);
        assertThat(table.find(Convention.US, "3AL").orElseThrow().wall()).isEqualTo(Wall.ALUMINIUM);
        assertThat(table.find(Convention.EUROPEAN, "3AL")).isEmpty();
    }

    @Test
    void aWrongLineIsNamed() {
        assertThatThrownBy(() -> MarkTable.read("t.csv", List.of(HEADER, "us;3A;steel;psi;read;x")))
                .hasMessage("There are 6 columns, 7 are needed.\nt.csv:2\nus;3A;steel;psi;read;x");
        assertThatThrownBy(() -> MarkTable.read("t.csv", List.of(HEADER, "", "us;3A;wood;psi;read;x;y")))
                .hasMessageStartingWith("\"wood\" is not known here.\nt.csv:3");
        assertThatThrownBy(() -> MarkTable.read("t.csv", List.of(HEADER, "us;3A;steel;torr;read;x;y")))
                .hasMessageStartingWith("\"torr\" is not a unit of pressure.");
        assertThatThrownBy(() -> MarkTable.read("t.csv", List.of(HEADER, "us;3A;steel;psi;guessed;x;y")))
                .hasMessageStartingWith("\"guessed\" is not one of");
        String row = "us;3A;steel;psi;read;x;y";
        assertThatThrownBy(() -> MarkTable.read("t.csv", List.of(HEADER, row, row)))
                .hasMessageStartingWith("The code \"3A\" is there twice.\nt.csv:3");
    }
}
