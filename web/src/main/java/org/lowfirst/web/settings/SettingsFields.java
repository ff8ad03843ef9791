package org.lowfirst.web.settings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.Settings;
import org.lowfirst.station.StatedAbsolutePressure;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.Surroundings;
import org.lowfirst.station.Units;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.words.Words;

/** The fields of the settings form. */
final class SettingsFields {

    private static final String US = "us";
    private static final String METRIC = "metric";

    private SettingsFields() {}

    /** What a new bench starts from. */
    static Map<String, String> fresh() {
        return Map.of("units", METRIC, "rules", "eu", "hose", "0");
    }

    static Map<String, String> filled(Settings settings) {
        Map<String, String> fields = new HashMap<>();
        fields.put("name", settings.name());
        fields.put("units", settings.units().temperature() == TemperatureUnit.FAHRENHEIT ? US : METRIC);
        fields.put("rules", settings.rules() == RuleSet.US ? "us" : "eu");
        StatedTemperature usual = settings.surroundings().usualTemperature();
        fields.put("temperature", Figures.plain(usual.value()) + " " + usual.symbol());
        StatedPressure full = settings.fullSupply();
        fields.put("full", Figures.plain(full.value()) + " " + full.symbol());
        StatedVolume hose = settings.surroundings().hoseVolume();
        fields.put("hose", Figures.plain(hose.value()) + " " + hose.symbol());
        fields.put("people", String.join("\n", settings.people()));
        return fields;
    }

    /** The units the form chooses; every other field is read in them. */
    static Units units(Map<String, String> typed) {
        return US.equals(typed.get("units")) ? Units.US : Units.METRIC;
    }

    /**
     * Reads the form.
     *
     * @param ambient pressure of the surroundings, which the form does not ask
     * @return the settings, or null with faults in the reader
     */
    static @Nullable Settings read(Reader reader, StatedAbsolutePressure ambient, Words words) {
        String name = reader.required("name", "fault.name");
        Units units = units(reader.form().typed());
        RuleSet rules = reader.text("rules").equals("us") ? RuleSet.US : RuleSet.EU;
        @Nullable StatedTemperature usual = reader.temperatureIfTyped("temperature");
        if (usual == null && reader.empty("temperature")) {
            reader.fault(
                    "temperature",
                    words.of("fault.temperature.empty", units.temperature().symbol()));
        }
        @Nullable StatedPressure full = reader.pressure("full");
        @Nullable StatedVolume hose = reader.volumeOrZero("hose", VolumeUnit.LITRE);
        List<String> people = people(reader);
        if (people.isEmpty()) {
            reader.fault("people", words.of("fault.people"));
        }
        return usual == null || full == null || hose == null || !reader.form().sound()
                ? null
                : new Settings(name, units, rules, new Surroundings(usual, ambient, hose), full, people);
    }

    private static List<String> people(Reader reader) {
        List<String> people = new ArrayList<>();
        reader.text("people")
                .lines()
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .forEach(name -> {
                    if (!people.contains(name)) {
                        people.add(name);
                    }
                });
        return people;
    }
}
