package org.lowfirst.app.session;

import java.util.Map;
import org.lowfirst.app.file.Kind;
import org.lowfirst.gas.QuantityKind;

/** The kinds of quantity that only session files have. */
final class SessionKinds {

    private static final double PSI_PER_BAR = 100_000 / 6894.757293168;

    /** A stretch of time [s]. */
    static final Kind<Double> TIME = Kind.scaled(
            QuantityKind.of(
                    "a time",
                    "min, h or s",
                    "2 min",
                    "min: min mins minute minutes",
                    "h: h hr hrs hour hours",
                    "s: s sec secs second seconds"),
            "2 min or 30 s",
            Map.of("min", 60.0, "h", 3600.0, "s", 1.0));

    /** How fast a bottle's gauge may rise [bar/min]. */
    static final Kind<Double> RISE = Kind.scaled(
            QuantityKind.of("a rise", "bar/min or psi/min", "14 bar/min", "bar/min: bar/min", "psi/min: psi/min"),
            "14 bar/min or 200 psi/min",
            Map.of("bar/min", 1.0, "psi/min", 1.0 / PSI_PER_BAR));

    private SessionKinds() {}
}
