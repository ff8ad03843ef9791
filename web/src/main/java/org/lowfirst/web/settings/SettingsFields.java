package org.lowfirst.web.settings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.station.Language;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.Settings;
import org.lowfirst.station.StatedAbsolutePressure;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedQuantity;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.Surroundings;
import org.lowfirst.station.Units;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.words.Spoken;
import org.lowfirst.web.words.Words;

/** The fields of the settings form. */
final class SettingsFields {

    private static final String US = "us";
    private static final String METRIC = "metric";
    private static final String OWN = "own";

    /** The units a bench can choose by itself, in the order shown. */
    static final List<PressureUnit> PRESSURES = List.of(PressureUnit.BAR, PressureUnit.PSI, PressureUnit.KILOPASCAL);

    static final List<TemperatureUnit> TEMPERATURES = List.of(TemperatureUnit.CELSIUS, TemperatureUnit.FAHRENHEIT);
    static final List<VolumeUnit> VOLUMES = List.of(VolumeUnit.LITRE, VolumeUnit.CUBIC_FOOT);

    private SettingsFields() {}

    /** What a new bench starts from. */
    static Map<String, String> fresh() {
        Map<String, String> fields = new HashMap<>(Map.of("units", METRIC, "rules", "eu", "hose", "0"));
        fields.put("language", Spoken.language().tag());
        fill(fields, Units.METRIC);
        return fields;
    }

    static Map<String, String> filled(Settings settings, Figures figures) {
        Map<String, String> fields = new HashMap<>();
        fields.put("name", settings.name());
        fill(fields, settings.units());
        fields.put("language", settings.language().tag());
        fields.put("rules", settings.rules() == RuleSet.US ? "us" : "eu");
        StatedTemperature usual = settings.surroundings().usualTemperature();
        fields.put("temperature", figures.toType(usual));
        StatedPressure full = settings.fullSupply();
        fields.put("full", figures.toType((StatedQuantity) full));
        StatedVolume hose = settings.surroundings().hoseVolume();
        fields.put("hose", figures.toType(hose));
        fields.put("people", String.join("\n", settings.people()));
        return fields;
    }

    private static void fill(Map<String, String> fields, Units units) {
        fields.put("units", units.equals(Units.US) ? US : units.equals(Units.METRIC) ? METRIC : OWN);
        fields.put("unit-pressure", units.pressure().symbol());
        fields.put("unit-temperature", units.temperature().symbol());
        fields.put("unit-gas", units.volume().symbol());
    }

    /** The units the form chooses; every other field is read in them. */
    static Units units(Map<String, String> typed) {
        String choice = typed.getOrDefault("units", METRIC);
        if (!choice.equals(OWN)) {
            return choice.equals(US) ? Units.US : Units.METRIC;
        }
        return new Units(
                chosen(PRESSURES, PressureUnit::symbol, typed.get("unit-pressure")),
                chosen(TEMPERATURES, TemperatureUnit::symbol, typed.get("unit-temperature")),
                chosen(VOLUMES, VolumeUnit::symbol, typed.get("unit-gas")));
    }

    /** The one with that symbol, or the first. */
    private static <U> U chosen(List<U> units, Function<U, String> symbol, @Nullable String typed) {
        return units.stream()
                .filter(unit -> symbol.apply(unit).equals(typed))
                .findFirst()
                .orElse(units.get(0));
    }

    private static Language language(Reader reader) {
        return Arrays.stream(Language.values())
                .filter(language -> language.tag().equals(reader.text("language")))
                .findFirst()
                .orElse(Language.ENGLISH);
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
                : new Settings(
                        name, units, rules, new Surroundings(usual, ambient, hose), full, people, language(reader));
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
