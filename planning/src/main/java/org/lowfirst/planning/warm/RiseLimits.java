package org.lowfirst.planning.warm;

import java.util.List;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.transfer.warm.Datasheet;
import org.lowfirst.transfer.warm.Figure;
import org.lowfirst.transfer.warm.RiseRate;

/** Published limits to how fast a bottle's gauge may rise. */
public final class RiseLimits {

    private static final Datasheet SHEET = Datasheet.beside(RiseLimits.class, "rise-limits.txt");

    private RiseLimits() {}

    /** A limit with where it is from. */
    public record RiseLimit(RiseRate rate, Figure source) {}

    /** All of them, slowest first. */
    public static List<RiseLimit> all() {
        return SHEET.all().stream()
                .map(figure -> new RiseLimit(rate(figure), figure))
                .sorted((a, b) -> a.rate().compareTo(b.rate()) != 0
                        ? a.rate().compareTo(b.rate())
                        : a.source().name().compareTo(b.source().name()))
                .toList();
    }

    /** The slowest of them. */
    public static RiseLimit slowest() {
        return all().get(0);
    }

    private static RiseRate rate(Figure figure) {
        return switch (figure.unit()) {
            case "psi/min" -> RiseRate.perMinute(figure.value(), PressureUnit.PSI);
            case "bar/min" -> RiseRate.perMinute(figure.value(), PressureUnit.BAR);
            default -> throw new IllegalArgumentException("The unit of " + figure.name() + " is unknown.");
        };
    }
}
