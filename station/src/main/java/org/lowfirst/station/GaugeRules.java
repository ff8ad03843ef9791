package org.lowfirst.station;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** What a gauge can be, and what it can have shown. */
final class GaugeRules {

    /** The coarsest class a working gauge is made in is 4 (from memory, EN 837-1); twice that and more is a typing slip. */
    private static final BigDecimal COARSEST_CLASS = BigDecimal.TEN;

    private GaugeRules() {}

    static @Nullable Refused check(GaugeDetails gauge) {
        if (gauge.name().isBlank()) {
            return Refused.of(Rule.NAME_EMPTY, "gauge");
        }
        if (gauge.fullScale().value().signum() <= 0) {
            return new Refused(Rule.GAUGE_SCALE_NOT_ABOVE_ZERO, gauge.name(), gauge.fullScale(), null);
        }
        if (gauge.division().value().signum() < 0 || gauge.division().compareTo(gauge.fullScale()) >= 0) {
            return new Refused(Rule.GAUGE_DIVISION_OUT_OF_RANGE, gauge.name(), gauge.division(), gauge.fullScale());
        }
        return accuracy(gauge);
    }

    private static @Nullable Refused accuracy(GaugeDetails gauge) {
        BigDecimal percent = gauge.classPercent();
        StatedPressure error = gauge.error();
        if ((percent == null) == (error == null)) {
            return Refused.of(Rule.GAUGE_ACCURACY_NEEDED, gauge.name());
        }
        if (percent != null && (percent.signum() <= 0 || percent.compareTo(COARSEST_CLASS) > 0)) {
            return Refused.of(Rule.GAUGE_CLASS_OUT_OF_RANGE, gauge.name());
        }
        if (error != null && (error.value().signum() <= 0 || error.compareTo(gauge.fullScale()) >= 0)) {
            return new Refused(Rule.GAUGE_ERROR_OUT_OF_RANGE, gauge.name(), error, gauge.fullScale());
        }
        return null;
    }

    /** A gauge cannot have shown more than its scale holds. */
    static @Nullable Refused onScale(Bench bench, CylinderId cylinder, Reading reading) {
        GaugeDetails gauge = bench.findGauge(cylinder, reading).orElse(null);
        return gauge != null && reading.pressure().compareTo(gauge.fullScale()) > 0
                ? new Refused(Rule.READING_ABOVE_FULL_SCALE, gauge.name(), reading.pressure(), gauge.fullScale())
                : null;
    }
}
