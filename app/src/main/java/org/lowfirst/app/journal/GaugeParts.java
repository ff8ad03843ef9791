package org.lowfirst.app.journal;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.GaugeDetails;
import org.lowfirst.station.GaugeUse;

/** How a gauge is written: quantities as typed, the class as digits, the day in ISO 8601. */
final class GaugeParts {

    private GaugeParts() {}

    static Payload write(GaugeDetails gauge) {
        BigDecimal percent = gauge.classPercent();
        LocalDate calibrated = gauge.calibrated();
        return new Payload()
                .with("gauge", gauge.name())
                .with("use", gauge.use().name().toLowerCase(Locale.ROOT))
                .with("fullScale", Parts.write(gauge.fullScale()))
                .with("division", Parts.write(gauge.division()))
                .with("classPercent", percent == null ? null : percent.toPlainString())
                .with("error", gauge.error() == null ? null : Parts.write(gauge.error()))
                .with("calibrated", calibrated == null ? null : calibrated.toString());
    }

    static GaugeDetails gauge(Payload p) {
        return new GaugeDetails(
                p.text("gauge"),
                GaugeUse.valueOf(p.text("use").toUpperCase(Locale.ROOT)),
                p.part("fullScale", Parts::pressure),
                p.part("division", Parts::pressure),
                percent(p.textOrNull("classPercent")),
                p.partOrNull("error", Parts::pressure),
                day(p.textOrNull("calibrated")));
    }

    private static @Nullable BigDecimal percent(@Nullable String digits) {
        return digits == null ? null : new BigDecimal(digits);
    }

    private static @Nullable LocalDate day(@Nullable String text) {
        try {
            return text == null ? null : LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("The day (" + text + ") must look like 2026-06-14.", e);
        }
    }
}
