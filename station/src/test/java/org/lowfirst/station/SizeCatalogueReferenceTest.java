package org.lowfirst.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Contents of the common sizes against the free-gas factors of the oxygen equation (Schmidt and Wagner 1985, computed with
 * CoolProp 8.0.0): litres at 70 F and 1 atm per litre of water volume, by gauge pressure.
 */
class SizeCatalogueReferenceTest {

    private static final Map<String, Double> LITRES_PER_LITRE =
            Map.of("2015", 147.03, "2216", 161.79, "2265", 165.37, "2400", 175.18, "137", 148.2);

    private final SizeCatalogue catalogue = SizeCatalogue.bundled();

    @Test
    void waterVolumesGiveTheRatedContentsWithinRounding() {
        for (Size size : catalogue.sizes()) {
            if (size.ratedContents() == null || size.label().equals("M older letter")) {
                continue;
            }
            double factor = Optional.ofNullable(
                            LITRES_PER_LITRE.get(size.servicePressure().value().toPlainString()))
                    .orElseThrow();
            double contents = size.ratedContents().doubleValue();
            double lowest = size.waterVolume().lowest().value().doubleValue() * factor;
            double highest = size.waterVolume().highest().value().doubleValue() * factor;
            assertThat(contents).as(size.label()).isBetween(lowest * 0.93, highest * 1.07);
        }
    }

    @ParameterizedTest
    @CsvSource({"M24/E, 4.6, 2015", "M15/D, 2.9, 2015", "50 L, 50, 200"})
    void commonSizesAreThere(String label, double litres, double service) {
        Size size = catalogue.findSize(label).orElseThrow();
        assertThat(size.waterVolume().lowest().volume().toLitres()).isCloseTo(litres, within(1e-9));
        assertThat(size.servicePressure().value().doubleValue()).isEqualTo(service);
    }
}
