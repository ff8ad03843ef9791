package org.lowfirst.web.verdict;

import org.lowfirst.app.honest.BalanceReport;
import org.lowfirst.app.honest.StandingVerdict;
import org.lowfirst.planning.contents.VerdictCode;

/**
 * A verdict in words and a shape.
 *
 * @param name the verdict in words
 * @param tone calm, watch or accuses
 * @param shape outline of its shape in a square of 20
 */
public record VerdictBadge(String name, String tone, String shape) {

    public static VerdictBadge of(StandingVerdict verdict) {
        return of(verdict.code(), verdict.name());
    }

    public static VerdictBadge of(BalanceReport report) {
        return of(report.balance().code(), report.name());
    }

    private static VerdictBadge of(VerdictCode code, String name) {
        String tone = code == VerdictCode.WATCH ? "watch" : code.accuses() ? "accuses" : "calm";
        return new VerdictBadge(name, tone, shape(code));
    }

    private static String shape(VerdictCode code) {
        return switch (code) {
            case INSIDE_GAUGE_UNCERTAINTY -> "M10 3a7 7 0 1 0 0 14a7 7 0 1 0 0-14z";
            case WATCH -> "M10 2L18.5 17.5H1.5z";
            case LIKELY_LEAK -> "M10 1.5C6.5 7 4 9.5 4 12.8a6 6 0 0 0 12 0C16 9.5 13.5 7 10 1.5z";
            case LIKELY_WRONG_VOLUME -> "M3 3h14v14H3zM3 10h14";
            case LIKELY_WRONG_VALVE_OR_UNRECORDED_FILL -> "M3.5 3.5L16.5 16.5M16.5 3.5L3.5 16.5";
            case GAUGE_DISAGREES -> "M2 6h16M2 14h16M14 1.5L6 18.5";
        };
    }
}
