package org.lowfirst.gas.internal;

import java.util.List;
import org.lowfirst.gas.Temperature;

/**
 * Where the numbers of a substance file are from.
 *
 * @param cas registry number of the substance
 * @param equationSources keys in docs/references.bib
 * @param transportSources keys in docs/references.bib, none when the file gives no transport equations
 * @param fittedTo the equation was fitted up to here; hotter states extrapolate
 */
public record Provenance(
        String cas, List<String> equationSources, List<String> transportSources, Temperature fittedTo) {

    public Provenance {
        equationSources = List.copyOf(equationSources);
        transportSources = List.copyOf(transportSources);
    }

    static Provenance of(SubstanceFile file) {
        return new Provenance(
                file.text("cas"),
                List.of(file.text("equation-source").split("\\s+")),
                file.states("transport-source")
                        ? List.of(file.text("transport-source").split("\\s+"))
                        : List.of(),
                new Temperature(file.quantity("fitted-highest-temperature", "K", 1.0, 5000.0)));
    }
}
