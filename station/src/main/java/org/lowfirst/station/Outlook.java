package org.lowfirst.station;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What the bench looks ahead with. Immutable.
 *
 * @param figures those that were kept
 * @param happenings planned, in order of their first day
 * @param ordered day a delivery is expected; null when none is on its way
 */
public record Outlook(
        Map<AheadFigure, BigDecimal> figures,
        List<Happening> happenings,
        @Nullable LocalDate ordered) {

    static final Outlook NEW = new Outlook(Map.of(), List.of(), null);

    public Outlook {
        figures = new TreeMap<>(figures);
        happenings = List.copyOf(happenings);
    }

    public Optional<BigDecimal> findFigure(AheadFigure figure) {
        return Optional.ofNullable(figures.get(figure));
    }

    /** Those that are not over on a day. */
    public List<Happening> listFrom(LocalDate day) {
        return happenings.stream()
                .filter(happening -> !happening.until().isBefore(day))
                .toList();
    }

    /** The day a delivery is expected, while that day has not passed. */
    public Optional<LocalDate> findOrdered(LocalDate today) {
        return Optional.ofNullable(ordered).filter(expected -> !expected.isBefore(today));
    }

    boolean plans(String name, LocalDate from) {
        return happenings.stream().anyMatch(happening -> same(happening, name, from));
    }

    Outlook after(OutlookFact fact) {
        if (fact instanceof OutlookFact.FiguresKept f) {
            Map<AheadFigure, BigDecimal> more = new TreeMap<>(figures);
            more.putAll(f.figures());
            return new Outlook(more, happenings, ordered);
        } else if (fact instanceof OutlookFact.HappeningPlanned f) {
            List<Happening> more = without(f.happening().name(), f.happening().from());
            more.add(f.happening());
            more.sort(Comparator.comparing(Happening::from).thenComparing(Happening::name));
            return new Outlook(figures, more, ordered);
        } else if (fact instanceof OutlookFact.HappeningDropped f) {
            return new Outlook(figures, without(f.name(), f.from()), ordered);
        } else if (fact instanceof OutlookFact.SuppliesOrdered f) {
            return new Outlook(figures, happenings, f.expected());
        }
        throw new AssertionError("unhandled " + fact);
    }

    /** A supply has come. */
    Outlook delivered() {
        return ordered == null ? this : new Outlook(figures, happenings, null);
    }

    private List<Happening> without(String name, LocalDate from) {
        List<Happening> rest = new ArrayList<>(happenings);
        rest.removeIf(happening -> same(happening, name, from));
        return rest;
    }

    private static boolean same(Happening happening, String name, LocalDate from) {
        return happening.name().equals(name) && happening.from().equals(from);
    }
}
