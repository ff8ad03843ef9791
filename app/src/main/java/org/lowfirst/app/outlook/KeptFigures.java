package org.lowfirst.app.outlook;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.outlook.KeptFigure.Source;
import org.lowfirst.planning.ahead.Ordering;
import org.lowfirst.planning.ahead.UseGuess;
import org.lowfirst.station.AheadFigure;
import org.lowfirst.station.CostKind;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;
import org.lowfirst.station.MoneyFact;
import org.lowfirst.station.OutlookFact;
import org.lowfirst.station.StatedCost;

/**
 * The figures a bench looks ahead with: what somebody kept, and what the bench paid and agreed. Of two, the one of the later day
 * counts. Immutable.
 */
public final class KeptFigures {

    private static final int USUAL_LEAD_DAYS = 3;
    private static final int USUAL_RESERVE_FILLS = 2;
    private static final double GUESS_WEIGHS_FILLS = 5;

    private final Map<AheadFigure, KeptFigure> figures;

    private KeptFigures(Map<AheadFigure, KeptFigure> figures) {
        this.figures = figures;
    }

    /**
     * @param entries those that count, in the order they count
     * @param zone where the bench stands
     * @param today rent agreed for later days does not count yet
     */
    static KeptFigures of(List<Entry> entries, ZoneId zone, LocalDate today) {
        Map<AheadFigure, KeptFigure> figures = new EnumMap<>(AheadFigure.class);
        for (Entry entry : entries) {
            Fact fact = entry.fact();
            if (fact instanceof OutlookFact.FiguresKept f) {
                LocalDate day = LocalDate.ofInstant(entry.origin().effectiveAt(), zone);
                f.figures().forEach((figure, value) -> put(figures, figure, value, day, Source.KEPT));
            } else if (fact instanceof MoneyFact.CostEntered f) {
                paid(figures, f.cost());
            } else if (fact instanceof MoneyFact.RentAgreed f && !f.from().isAfter(today)) {
                put(figures, AheadFigure.RENT_PER_DAY, f.rent().perDay().value(), f.from(), Source.AGREED);
            }
        }
        return new KeptFigures(figures);
    }

    private static void paid(Map<AheadFigure, KeptFigure> figures, StatedCost cost) {
        boolean gas = cost.kind() == CostKind.CONTENT;
        if (cost.amount().value().signum() > 0 && (gas || cost.kind() == CostKind.DELIVERY)) {
            put(
                    figures,
                    gas ? AheadFigure.CONTENT_PRICE : AheadFigure.DELIVERY_PRICE,
                    cost.amount().value(),
                    cost.day(),
                    Source.PAID);
        }
    }

    private static void put(
            Map<AheadFigure, KeptFigure> figures, AheadFigure figure, BigDecimal value, LocalDate day, Source source) {
        figures.merge(
                figure,
                new KeptFigure(value, day, source),
                (known, found) -> found.day().isBefore(known.day()) ? known : found);
    }

    /** What is known of a figure; empty when nobody kept it and the accounts do not say. */
    public Optional<KeptFigure> find(AheadFigure figure) {
        return Optional.ofNullable(figures.get(figure));
    }

    /** How supplies are ordered; 3 days and 2 fills where nobody said (common practice, no source). */
    public Ordering ordering() {
        return new Ordering(
                whole(AheadFigure.LEAD_DAYS, USUAL_LEAD_DAYS), whole(AheadFigure.RESERVE_FILLS, USUAL_RESERVE_FILLS));
    }

    /** What people think a year brings; null when nobody said. */
    public @Nullable UseGuess guess() {
        return guess(find(AheadFigure.FILLS_PER_YEAR).map(KeptFigure::value).orElse(null));
    }

    /**
     * A guess of fills a year.
     *
     * @param fillsPerYear null or 0 for none
     */
    public static @Nullable UseGuess guess(@Nullable BigDecimal fillsPerYear) {
        return fillsPerYear == null || fillsPerYear.signum() == 0
                ? null
                : UseGuess.of(fillsPerYear.doubleValue(), GUESS_WEIGHS_FILLS);
    }

    /** The number, or another when there is none. */
    public int whole(AheadFigure figure, int otherwise) {
        return find(figure).map(kept -> kept.value().intValue()).orElse(otherwise);
    }
}
