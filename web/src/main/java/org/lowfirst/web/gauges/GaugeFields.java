package org.lowfirst.web.gauges;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.station.GaugeDetails;
import org.lowfirst.station.GaugeUse;
import org.lowfirst.station.Rule;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.Units;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Sender;

/** The fields that describe a gauge. */
final class GaugeFields {

    /** A dial that ends below or above this is more likely a slip of the unit (common practice, no source). */
    private static final GaugePressure LOWEST_SCALE = GaugePressure.ofBar(5);

    private static final GaugePressure HIGHEST_SCALE = GaugePressure.ofBar(1_000);

    private static final Map<Rule, String> FIELDS = Map.of(
            Rule.NAME_EMPTY, "name",
            Rule.GAUGE_SCALE_NOT_ABOVE_ZERO, "scale",
            Rule.GAUGE_DIVISION_OUT_OF_RANGE, "division",
            Rule.GAUGE_ACCURACY_NEEDED, "class",
            Rule.GAUGE_CLASS_OUT_OF_RANGE, "class",
            Rule.GAUGE_ERROR_OUT_OF_RANGE, "error",
            Rule.REASON_EMPTY, "reason");

    private GaugeFields() {}

    static String field(Optional<Rule> rule) {
        return rule.map(broken -> FIELDS.getOrDefault(broken, "form")).orElse("form");
    }

    /** Symbols of the units a dial can have. */
    static List<String> units() {
        return Arrays.stream(PressureUnit.values()).map(PressureUnit::symbol).toList();
    }

    static Form blank(BenchNow now) {
        return Form.with(Map.of("use", "supplies", "unit", now.figures().pressureUnit()));
    }

    static Form filled(GaugeDetails gauge, Figures figures) {
        Map<String, String> fields = new HashMap<>();
        fields.put("name", gauge.name());
        fields.put("use", gauge.use().name().toLowerCase(Locale.ROOT));
        fields.put("unit", gauge.fullScale().unit().symbol());
        fields.put("scale", figures.toType(gauge.fullScale().value()));
        fields.put("division", figures.toType(gauge.division().value()));
        @Nullable BigDecimal percent = gauge.classPercent();
        fields.put("class", percent == null ? "" : figures.toType(percent));
        @Nullable StatedPressure error = gauge.error();
        fields.put("error", error == null ? "" : figures.toType(error.value()));
        @Nullable LocalDate day = gauge.calibrated();
        fields.put("calibrated", day == null ? "" : day.toString());
        return Form.with(fields);
    }

    /** Reads in the unit of the dial, whatever the bench's. */
    static Reader reader(Map<String, String> typed, BenchNow now) {
        Units units = now.bench().settings().units();
        PressureUnit dial = Arrays.stream(PressureUnit.values())
                .filter(unit -> unit.symbol().equals(typed.get("unit")))
                .findFirst()
                .orElse(units.pressure());
        return new Reader(typed, new Units(dial, units.temperature(), units.volume()), now.words());
    }

    /** @return null with faults in the reader when something is missing or cannot be */
    static @Nullable GaugeDetails read(Reader reader, BenchNow now) {
        Words words = now.words();
        String name = reader.required("name", "fault.name");
        reader.required("scale", "fault.gauge.scale");
        reader.required("division", "fault.gauge.division");
        @Nullable StatedPressure scale = reader.dialIfTyped("scale");
        @Nullable StatedPressure division = reader.dialIfTyped("division");
        @Nullable BigDecimal percent = reader.numberIfTyped("class");
        @Nullable StatedPressure error = reader.dialIfTyped("error");
        @Nullable LocalDate day = reader.dayIfTyped("calibrated");
        if (scale != null && scale.value().signum() > 0 && unlikely(scale.gauge())) {
            reader.fault(
                    "scale",
                    words.of("fault.gauge.scale.unlikely", now.figures().asTyped(scale)));
        }
        if (day != null && day.isAfter(now.now().atZone(now.times().zone()).toLocalDate())) {
            reader.fault("calibrated", words.of("fault.gauge.calibrated", day));
        }
        reader.required(Sender.WHO, "fault.who");
        if (!Sender.of(reader.form().typed()).hasKey()) {
            reader.fault("form", words.of("fault.key"));
        }
        return scale == null || division == null || !reader.form().sound()
                ? null
                : new GaugeDetails(name, use(reader.text("use")), scale, division, percent, error, day);
    }

    private static boolean unlikely(GaugePressure scale) {
        return scale.compareTo(LOWEST_SCALE) < 0 || scale.compareTo(HIGHEST_SCALE) > 0;
    }

    private static GaugeUse use(String text) {
        return Arrays.stream(GaugeUse.values())
                .filter(use -> use.name().toLowerCase(Locale.ROOT).equals(text))
                .findFirst()
                .orElse(GaugeUse.SPARE);
    }
}
