package org.lowfirst.web.flight;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.flight.Altitude;
import org.lowfirst.planning.flight.BottleOnBoard;
import org.lowfirst.planning.flight.FlightRequest;
import org.lowfirst.planning.flight.Flow;
import org.lowfirst.planning.flight.Occupant;
import org.lowfirst.planning.flight.OxygenRules;
import org.lowfirst.planning.flight.Profile;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;

/** The fields of the flight form. What a value can be meant to be: common practice, no source. */
final class FlightFields {

    static final int PEOPLE = 4;
    static final int BOTTLES = 2;

    private static final double MOST_FLOW = 40.0;
    private static final double MOST_SAVING = 20.0;
    private static final double MOST_MARGIN = 500.0;
    private static final double MOST_RESERVE_MIN = 1_440.0;
    private static final double STEEPEST_FT_MIN = 10_000.0;
    private static final double SLOWEST_FT_MIN = 50.0;
    private static final double HIGHEST_FT = 60_000.0;
    private static final double METRES_PER_FOOT = 0.3048;

    private final Reader reader;
    private final BenchNow now;
    private final Words words;

    FlightFields(Reader reader, BenchNow now) {
        this.reader = reader;
        this.now = now;
        this.words = now.words();
    }

    /** What a bench begins with. */
    static Map<String, String> filled(BenchNow now, Map<String, String> typed) {
        Map<String, String> fields = new HashMap<>(typed);
        boolean us = now.bench().settings().rules() == RuleSet.US;
        fields.putIfAbsent("rules", us ? "us-91" : "eu-nco");
        fields.putIfAbsent("altitude", "ft");
        fields.putIfAbsent("reserve", "30");
        fields.putIfAbsent("margin", "15");
        fields.putIfAbsent("descent", "500");
        fields.putIfAbsent("keep", us ? "200" : "15");
        fields.putIfAbsent("name-1", now.words().of("flight.pilot"));
        fields.putIfAbsent("role-1", "crew");
        fields.putIfAbsent("kind-1", "by-altitude");
        fields.putIfAbsent("flow-1", "1");
        fields.putIfAbsent("on-1", fields.getOrDefault("altitude", "ft").equals("ft") ? "8000" : "2400");
        for (int i = 2; i <= PEOPLE; i++) {
            fields.putIfAbsent("role-" + i, "passenger");
            fields.putIfAbsent("kind-" + i, "by-altitude");
        }
        return fields;
    }

    boolean feet() {
        return !reader.text("altitude").equals("m");
    }

    /** What the form asks, or null with faults in the reader. */
    @Nullable
    FlightRequest read() {
        ProfileText text = new ProfileText(feet(), words);
        Optional<Profile> profile = text.read(reader.text("profile"));
        if (profile.isEmpty()) {
            reader.fault("profile", text.fault());
        }
        List<Occupant> people = people();
        List<BottleOnBoard> bottles = bottles();
        double reserve_min = within("reserve", 0, MOST_RESERVE_MIN, "min");
        double margin = within("margin", 0, MOST_MARGIN, "%");
        double descent = within("descent", SLOWEST_FT_MIN, STEEPEST_FT_MIN, "ft/min");
        @Nullable StatedTemperature temperature = reader.temperatureIfTyped("temperature");
        if (!reader.form().sound() || profile.isEmpty()) {
            return null;
        }
        String rules = reader.text("rules");
        Temperature usual =
                now.bench().settings().surroundings().usualTemperature().temperature();
        return new FlightRequest(
                profile.get(),
                people,
                OxygenRules.ofSet(rules),
                bottles,
                rules.startsWith("us") ? ReferenceCondition.US_70F_1ATM : ReferenceCondition.ISO_15C_1ATM,
                temperature == null ? usual : temperature.temperature(),
                Duration.ofMillis(Math.round(reserve_min * 60_000)),
                margin,
                descent * METRES_PER_FOOT / 60.0);
    }

    private List<Occupant> people() {
        List<Occupant> people = new ArrayList<>();
        for (int i = 1; i <= PEOPLE; i++) {
            if (reader.empty("name-" + i) && reader.empty("flow-" + i)) {
                continue;
            }
            String name = reader.required("name-" + i, "fault.flight.name");
            double most = feet() ? HIGHEST_FT : HIGHEST_FT * METRES_PER_FOOT;
            double flow = within("flow-" + i, 0, MOST_FLOW, "L/min");
            double on = within("on-" + i, 0, most, feet() ? "ft" : "m");
            double saving = reader.empty("saving-" + i) ? 1.0 : within("saving-" + i, 1, MOST_SAVING, "");
            if (!reader.form().sound()) {
                continue;
            }
            Flow device =
                    reader.text("kind-" + i).equals("constant") ? new Flow.Constant(flow) : new Flow.ByAltitude(flow);
            people.add(new Occupant(
                    name,
                    reader.text("role-" + i).equals("crew") ? Occupant.Role.CREW : Occupant.Role.PASSENGER,
                    saving > 1.0 ? new Flow.Pulse(device, saving) : device,
                    feet() ? Altitude.ofFeet(on) : new Altitude(on)));
        }
        if (people.isEmpty() && reader.form().sound()) {
            reader.fault("name-1", words.of("fault.flight.nobody"));
        }
        return people;
    }

    private List<BottleOnBoard> bottles() {
        List<BottleOnBoard> bottles = new ArrayList<>();
        @Nullable StatedPressure keep = reader.pressure("keep");
        for (int i = 1; i <= BOTTLES; i++) {
            String id = reader.text("bottle-" + i);
            Optional<Bottle> bottle = now.bench().listBottles().stream()
                    .filter(one -> one.id().value().equals(id))
                    .findFirst();
            if (bottle.isEmpty()) {
                continue;
            }
            @Nullable StatedPressure reads = reader.pressure("reading-" + i);
            if (reads != null && keep != null) {
                GaugePressure marked = bottle.get().details().servicePressure().gauge();
                if (keep.gauge().compareTo(marked) >= 0) {
                    reader.fault(
                            "keep", words.of("fault.flight.keep", now.figures().pressureWithUnit(marked)));
                }
                bottles.add(new BottleOnBoard(
                        bottle.get().details().name(),
                        bottle.get().details().waterVolume().stated().volume(),
                        reads.gauge(),
                        marked,
                        keep.gauge()));
            }
        }
        if (bottles.isEmpty() && reader.form().sound()) {
            reader.fault("bottle-1", words.of("fault.flight.bottle"));
        }
        return bottles;
    }

    private double within(String field, double least, double most, String unit) {
        @Nullable BigDecimal typed = reader.numberIfTyped(field);
        if (typed == null) {
            if (reader.empty(field)) {
                reader.fault(
                        field,
                        least > 0.0
                                ? words.of(
                                        "fault.flight.between",
                                        now.figures().number(least, 0),
                                        (now.figures().number(most, 0) + " " + unit).strip())
                                : words.of("fault.flight.empty"));
            }
            return least;
        }
        double value = typed.doubleValue();
        if (value < least || value > most) {
            reader.fault(
                    field,
                    words.of(
                            "fault.flight.range",
                            reader.text(field),
                            now.figures().number(least, 0),
                            (now.figures().number(most, 0) + " " + unit).strip()));
        }
        return value;
    }
}
