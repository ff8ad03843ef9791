package org.lowfirst.planning.contents;

/** What estimates and verdicts assume; the values used come from {@code contents-assumptions.properties}. */
public record ContentsAssumptions(
        GaugeAssumptions gauges,
        TemperatureAssumptions temperatures,
        VolumeAssumptions volumes,
        FilterAssumptions filter,
        VerdictThresholds verdicts) {

    /** The assumptions of the resource file, where each has its reason. */
    public static ContentsAssumptions standard() {
        return Loaded.STANDARD;
    }

    public ContentsAssumptions with(VerdictThresholds other) {
        return new ContentsAssumptions(gauges, temperatures, volumes, filter, other);
    }

    private static final class Loaded {
        static final ContentsAssumptions STANDARD = read();

        private static ContentsAssumptions read() {
            SettingsFile file = new SettingsFile("contents-assumptions.properties");
            ContentsAssumptions read = new ContentsAssumptions(
                    GaugeAssumptions.read(file),
                    TemperatureAssumptions.read(file),
                    VolumeAssumptions.read(file),
                    FilterAssumptions.read(file),
                    VerdictThresholds.read(file));
            file.end();
            return read;
        }
    }
}
