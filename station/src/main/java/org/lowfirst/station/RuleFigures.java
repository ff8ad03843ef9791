package org.lowfirst.station;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The figures of one rule set, from the resource file rule-sets.csv. Immutable. */
public final class RuleFigures {

    private static final int COLUMNS = 6;

    private final Map<String, CsvTable.Row> byName;

    /** Read when first asked for. */
    private static final class Loaded {

        private static final Map<RuleSet, RuleFigures> FIGURES =
                Arrays.stream(RuleSet.values()).collect(Collectors.toMap(rules -> rules, RuleFigures::load));
    }

    private RuleFigures(Map<String, CsvTable.Row> byName) {
        this.byName = Map.copyOf(byName);
    }

    static RuleFigures of(RuleSet rules) {
        return Optional.ofNullable(Loaded.FIGURES.get(rules)).orElseThrow();
    }

    private static RuleFigures load(RuleSet rules) {
        String name = rules.name().toLowerCase(Locale.ROOT);
        Map<String, CsvTable.Row> byName = new HashMap<>();
        for (CsvTable.Row row : CsvTable.ofResource("rule-sets.csv", COLUMNS).rows()) {
            if (row.cell(0).equals(name) && byName.put(row.cell(1), row) != null) {
                throw row.wrong("the figure " + row.cell(1) + " is given twice.");
            }
        }
        return new RuleFigures(byName);
    }

    /** Temperature at which a marked service pressure counts. */
    public StatedTemperature referenceTemperature() {
        return temperature("reference_temperature");
    }

    public StatedTemperature lowestTemperature() {
        return temperature("temperature_lowest");
    }

    public StatedTemperature highestTemperature() {
        return temperature("temperature_highest");
    }

    /** No gas in a bottle is taken to be warmer. */
    public StatedTemperature highestGasTemperature() {
        return temperature("gas_temperature_highest");
    }

    /** Below this service pressure the person is asked to look again. */
    public StatedPressure lowestServicePressure() {
        return pressure("service_pressure_lowest");
    }

    /** Above this service pressure the person is asked to look again. */
    public StatedPressure highestServicePressure() {
        return pressure("service_pressure_highest");
    }

    /** No cylinder is marked above this. */
    public StatedPressure possibleServicePressure() {
        return pressure("service_pressure_possible");
    }

    /** Below this water volume the person is asked to look again. */
    public StatedVolume lowestWaterVolume() {
        return volume("water_volume_lowest");
    }

    /** Above this water volume the person is asked to look again. */
    public StatedVolume highestWaterVolume() {
        return volume("water_volume_highest");
    }

    /** How far two readings of one gauge may differ without anything having happened. */
    public StatedPressure repeatability() {
        return pressure("repeatability");
    }

    /** Test pressure as a multiple of the marked service pressure [1]. */
    public double testPressureFactor() {
        String[] parts = row("test_pressure_factor").cell(2).split("/", 2);
        double above = Double.parseDouble(parts[0]);
        return parts.length == 1 ? above : above / Double.parseDouble(parts[1]);
    }

    /**
     * Where a figure comes from.
     *
     * @param figure name of the figure as in the file, e.g. "reference_temperature"
     */
    public String source(String figure) {
        return row(figure).cell(4);
    }

    private CsvTable.Row row(String figure) {
        return Optional.ofNullable(byName.get(figure))
                .orElseThrow(() -> new IllegalArgumentException("The rule set has no figure " + figure + "."));
    }

    private StatedPressure pressure(String figure) {
        CsvTable.Row row = row(figure);
        return StatedPressure.of(
                row.cell(2),
                UnitSymbols.findPressure(row.cell(3)).orElseThrow(() -> row.wrong("the unit is not one of pressure.")));
    }

    private StatedTemperature temperature(String figure) {
        CsvTable.Row row = row(figure);
        return StatedTemperature.of(
                row.cell(2),
                UnitSymbols.findTemperature(row.cell(3))
                        .orElseThrow(() -> row.wrong("the unit is not one of temperature.")));
    }

    private StatedVolume volume(String figure) {
        CsvTable.Row row = row(figure);
        return StatedVolume.of(
                row.cell(2),
                UnitSymbols.findVolume(row.cell(3)).orElseThrow(() -> row.wrong("the unit is not one of volume.")));
    }
}
