package org.lowfirst.station;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What the bench can look ahead with. Limits: common practice, no source. */
final class OutlookRules {

    private static final int MOST_DAYS = 100;
    private static final int MOST_FILLS = 1_000;
    private static final int MOST_HAPPENINGS = 200;
    private static final int YEARS_AHEAD = 3;

    private OutlookRules() {}

    static @Nullable Refused check(Outlook outlook, OutlookFact fact, Circumstances circumstances) {
        LocalDate today = LocalDate.ofInstant(circumstances.now(), circumstances.zone());
        if (fact instanceof OutlookFact.FiguresKept f) {
            return figures(f.figures());
        } else if (fact instanceof OutlookFact.HappeningPlanned f) {
            return outlook.listFrom(today).size() >= MOST_HAPPENINGS
                    ? outOfRange(BigDecimal.valueOf(MOST_HAPPENINGS + 1L), BigDecimal.ZERO, MOST_HAPPENINGS)
                    : happening(f.happening(), today);
        } else if (fact instanceof OutlookFact.HappeningDropped f) {
            return outlook.plans(f.name(), f.from()) ? null : Refused.of(Rule.HAPPENING_UNKNOWN, f.name());
        } else if (fact instanceof OutlookFact.SuppliesOrdered f) {
            boolean meant = !f.expected().isBefore(today) && f.expected().isBefore(today.plusDays(366));
            return meant ? null : Refused.of(Rule.DAY_OUT_OF_RANGE, f.expected().toString());
        }
        throw new AssertionError("unhandled " + fact);
    }

    private static @Nullable Refused figures(Map<AheadFigure, BigDecimal> figures) {
        if (figures.isEmpty()) {
            return Refused.of(Rule.NO_FIGURES, "");
        }
        for (Map.Entry<AheadFigure, BigDecimal> kept : figures.entrySet()) {
            AheadFigure figure = kept.getKey();
            if (!figure.takes(kept.getValue())) {
                return Refused.of(Rule.FIGURE_OUT_OF_RANGE, text(kept.getValue(), figure.lowest(), figure.highest()));
            }
        }
        return null;
    }

    private static @Nullable Refused happening(Happening happening, LocalDate today) {
        if (happening.name().isBlank()) {
            return Refused.of(Rule.NAME_EMPTY, "happening");
        }
        if (happening.days() < 1 || happening.days() > MOST_DAYS) {
            return outOfRange(BigDecimal.valueOf(happening.days()), BigDecimal.ONE, MOST_DAYS);
        }
        if (happening.until().isBefore(today) || happening.from().isAfter(today.plusYears(YEARS_AHEAD))) {
            return Refused.of(Rule.DAY_OUT_OF_RANGE, happening.from().toString());
        }
        return happening.fills().signum() < 0 || happening.fills().compareTo(BigDecimal.valueOf(MOST_FILLS)) > 0
                ? outOfRange(happening.fills(), BigDecimal.ZERO, MOST_FILLS)
                : null;
    }

    private static Refused outOfRange(BigDecimal value, BigDecimal lowest, long highest) {
        return Refused.of(Rule.FIGURE_OUT_OF_RANGE, text(value, lowest, BigDecimal.valueOf(highest)));
    }

    private static String text(BigDecimal value, BigDecimal lowest, BigDecimal highest) {
        return value.toPlainString() + " (" + lowest.toPlainString() + "–" + highest.toPlainString() + ")";
    }
}
