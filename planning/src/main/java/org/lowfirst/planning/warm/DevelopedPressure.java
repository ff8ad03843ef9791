package org.lowfirst.planning.warm;

import java.util.Locale;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.Evaluated;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.transfer.warm.Datasheet;
import org.lowfirst.transfer.warm.Figure;

/**
 * What a bottle would come to when it gets as hot as the rule set looks at, against what it then may come to.
 *
 * @param at the temperature looked at
 * @param reading what the gauge would show there
 * @param limit what it may show there
 * @param source where the limit is from
 */
public record DevelopedPressure(Temperature at, GaugePressure reading, GaugePressure limit, Figure source) {

    private static final Datasheet SHEET = Datasheet.beside(DevelopedPressure.class, "developed-pressure-limits.txt");

    public boolean within() {
        return reading.compareTo(limit) <= 0;
    }

    static Temperature at(ReferenceRule rule) {
        return new Temperature(SHEET.value(key(rule) + ".temperature", "K"));
    }

    static GaugePressure limit(ReferenceRule rule, GaugePressure servicePressure) {
        return new GaugePressure(
                SHEET.value(key(rule) + ".share-of-service-pressure", "1") * servicePressure.pascals());
    }

    static Evaluated<DevelopedPressure> of(WarmBench bench, GaugePressure servicePressure, Density density) {
        Temperature hot = at(bench.rule());
        return bench.gas()
                .pressure(density, hot)
                .map(p -> new DevelopedPressure(
                        hot,
                        p.toGauge(bench.ambient()),
                        limit(bench.rule(), servicePressure),
                        SHEET.figure(key(bench.rule()) + ".share-of-service-pressure")));
    }

    private static String key(ReferenceRule rule) {
        return rule.name().toLowerCase(Locale.ROOT);
    }
}
