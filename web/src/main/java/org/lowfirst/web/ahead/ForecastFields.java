package org.lowfirst.web.ahead;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.outlook.KeptFigures;
import org.lowfirst.planning.ahead.Ordering;
import org.lowfirst.planning.ahead.PlannedEvent;
import org.lowfirst.planning.ahead.UseGuess;
import org.lowfirst.station.AheadFigure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.kept.Defaults;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;

/** The fields of the forecast's form. */
final class ForecastFields {

    /** Events that can be typed. */
    static final int EVENTS = 2;

    private ForecastFields() {}

    /** Which field holds which figure of the bench. */
    static final Map<String, AheadFigure> FIGURES = new TreeMap<>(Map.of(
            "lead", AheadFigure.LEAD_DAYS,
            "reserve", AheadFigure.RESERVE_FILLS,
            "guess", AheadFigure.FILLS_PER_YEAR));

    static Map<String, String> filled(Map<String, String> typed, Defaults defaults) {
        Map<String, String> fields = new HashMap<>(typed);
        defaults.fill(fields, "lead", AheadFigure.LEAD_DAYS, "3");
        defaults.fill(fields, "reserve", AheadFigure.RESERVE_FILLS, "2");
        defaults.fill(fields, "guess", AheadFigure.FILLS_PER_YEAR, "");
        return fields;
    }

    /**
     * What the form asks.
     *
     * @param temperature null for the usual one
     * @param guess null for none
     */
    record Wish(
            Ordering ordering,
            List<PlannedEvent> events,
            @Nullable UseGuess guess,
            @Nullable StatedTemperature temperature) {}

    /** Whatever cannot be read becomes a fault of the reader. */
    static Wish read(Reader reader, BenchNow now) {
        int lead = whole(reader, now.words(), "lead");
        int reserve = whole(reader, now.words(), "reserve");
        List<PlannedEvent> events = new ArrayList<>();
        for (int i = 1; i <= EVENTS; i++) {
            @Nullable LocalDate day = reader.dayIfTyped("day-" + i);
            @Nullable BigDecimal fills = reader.numberIfTyped("fills-" + i);
            if (day == null && fills != null && reader.empty("day-" + i)) {
                reader.fault("day-" + i, now.words().of("fault.event.day"));
            } else if (day != null && fills == null && reader.empty("fills-" + i)) {
                reader.fault("fills-" + i, now.words().of("fault.event.fills"));
            } else if (day != null && fills != null) {
                events.add(new PlannedEvent(Integer.toString(i), day, fills.doubleValue()));
            }
        }
        @Nullable BigDecimal guess = reader.numberIfTyped("guess");
        return new Wish(
                new Ordering(lead, reserve),
                events,
                KeptFigures.guess(guess),
                reader.temperatureIfTyped("temperature"));
    }

    private static int whole(Reader reader, Words words, String field) {
        @Nullable BigDecimal typed = reader.numberIfTyped(field);
        if (typed == null) {
            return 0;
        }
        if (typed.stripTrailingZeros().scale() > 0) {
            reader.fault(field, words.of("fault.whole", reader.text(field)));
            return 0;
        }
        return typed.intValue();
    }
}
