package org.lowfirst.transfer.warm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DatasheetTest {

    private static final String GOOD = "a.b | 0.5 | 1 | 0 to 1 | remembered | Somebody1999";

    @Test
    void aFigureHasUnitRangeStatusAndSource() {
        Figure figure = Datasheet.parse("x.txt", List.of("# words", "", GOOD)).figure("a.b");
        assertThat(figure).isEqualTo(new Figure("a.b", 0.5, "1", "0 to 1", Status.REMEMBERED, "Somebody1999"));
    }

    @Test
    void aFigureIsOnlyGivenInItsUnit() {
        Datasheet sheet = Datasheet.parse("x.txt", List.of(GOOD));
        assertThat(sheet.value("a.b", "1")).isEqualTo(0.5);
        assertThatThrownBy(() -> sheet.value("a.b", "K")).hasMessageContaining("is in 1, not in K");
        assertThatThrownBy(() -> sheet.value("a.c", "1")).hasMessageContaining("no figure 'a.c'");
    }

    @Test
    void aBadLineIsShownWithACaretUnderWhatIsWrong() {
        assertThatThrownBy(() -> Datasheet.parse("x.txt", List.of(GOOD, "c | many | 1 | | read | me")))
                .hasMessage("'many' is not a number.\nx.txt:2:4\nc | many | 1 | | read | me\n   ^");
        assertThatThrownBy(() -> Datasheet.parse("x.txt", List.of("c | 1 | 1 | | heard | me")))
                .hasMessage("'heard' is not a status.\nx.txt:1:14\nc | 1 | 1 | | heard | me\n             ^");
        assertThatThrownBy(() -> Datasheet.parse("x.txt", List.of("c | 1"))).hasMessageContaining("6 fields, not 2");
        assertThatThrownBy(() -> Datasheet.parse("x.txt", List.of(GOOD, GOOD))).hasMessageContaining("appears twice");
    }

    @Test
    void aMissingFileIsNamed() {
        assertThatThrownBy(() -> Datasheet.beside(DatasheetTest.class, "none.txt"))
                .hasMessageContaining("none.txt");
    }

    @ParameterizedTest
    @ValueSource(strings = {"heat-transfer.txt", "wall-materials.txt"})
    void everyFigureOfTheModelHasAUnitAndASource(String file) {
        for (Figure figure : Datasheet.beside(HeatModel.class, file).all()) {
            assertThat(figure.unit()).as(figure.name()).isNotBlank();
            assertThat(figure.source()).as(figure.name()).isNotBlank();
            assertThat(figure.range()).as(figure.name()).isNotBlank();
            if (figure.status() != Status.ASSUMED) {
                assertThat(figure.source()).as(figure.name()).isNotEqualTo("none");
            }
        }
    }
}
