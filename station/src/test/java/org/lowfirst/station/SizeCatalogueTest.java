package org.lowfirst.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.BufferedReader;
import java.io.StringReader;
import org.junit.jupiter.api.Test;

class SizeCatalogueTest {

    @Test
    void everySizeNamesItsSourceAndStatus() {
        assertThat(SizeCatalogue.bundled().sizes()).isNotEmpty().allSatisfy(size -> {
            assertThat(size.origin().source()).isNotBlank();
            assertThat(size.origin().status()).isNotNull();
        });
    }

    @Test
    void aBadRowIsShownWithFileLineAndTheRow() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SizeCatalogue.of(table("X,2,1,derived,5,200,bar,steel,,,memory,read")))
                .withMessageContaining("sizes.csv, line 2: the lowest water volume is above the highest.")
                .withMessageContaining("X,2,1,derived");
    }

    @Test
    void aNumberBelowZeroIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SizeCatalogue.of(table("X,-2,1,derived,5,200,bar,steel,,,memory,read")))
                .withMessageContaining("column 2 (-2) must be a number above zero");
    }

    @Test
    void anUnknownMaterialIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SizeCatalogue.of(table("X,1,1,derived,5,200,bar,tin,,,memory,read")))
                .withMessageContaining("column 8 (tin) is not one of [ALUMINIUM, STEEL, COMPOSITE]");
    }

    @Test
    void aSizeTwiceIsRefused() {
        String row = "X,1,1,derived,5,200,bar,steel,,,memory,read";
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SizeCatalogue.of(table(row + "\n" + row)))
                .withMessageContaining("line 3: the size X is there twice");
    }

    @Test
    void aRowTooShortIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table("X,1,1"))
                .withMessageContaining("there are 3 cells; there must be 12");
    }

    private static CsvTable table(String rows) {
        return CsvTable.of("sizes.csv", new BufferedReader(new StringReader("# comment\n" + rows)), 12);
    }
}
