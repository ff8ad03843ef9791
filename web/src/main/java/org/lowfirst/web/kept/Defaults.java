package org.lowfirst.web.kept;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.lowfirst.app.outlook.KeptFigure;
import org.lowfirst.app.outlook.KeptFigures;
import org.lowfirst.station.AheadFigure;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;

/** What the fields of a page that looks ahead begin with: what the bench keeps, paid or agreed. */
public final class Defaults {

    private final BenchNow now;
    private final KeptFigures kept;

    private Defaults(BenchNow now, KeptFigures kept) {
        this.now = now;
        this.kept = kept;
    }

    public static Defaults of(BenchNow now, Workplace workplace) {
        return new Defaults(
                now,
                workplace.benches().askingAhead().kept(now.id(), now.times().zone(), now.today()));
    }

    /**
     * Puts what is known of a figure into a field that nothing was typed into.
     *
     * @param otherwise when nothing is known; empty leaves the field as it is
     */
    public void fill(Map<String, String> fields, String field, AheadFigure figure, String otherwise) {
        String text = find(figure).map(this::text).orElse(otherwise);
        if (!text.isEmpty()) {
            fields.putIfAbsent(field, text);
        }
    }

    public boolean knows(AheadFigure figure) {
        return find(figure).isPresent();
    }

    /** Where a figure comes from, as a hint beside its field; empty when nothing is known. */
    public String hint(AheadFigure figure) {
        return find(figure)
                .map(known -> now.words()
                        .of(
                                "kept." + known.source().name().toLowerCase(java.util.Locale.ROOT),
                                text(known),
                                day(known)))
                .orElse("");
    }

    /** Whether a number is what the fields begin with anyway. */
    boolean same(AheadFigure figure, BigDecimal typed) {
        return find(figure).map(known -> known.value().compareTo(typed) == 0).orElse(false);
    }

    private Optional<KeptFigure> find(AheadFigure figure) {
        return kept.find(figure);
    }

    private String text(KeptFigure known) {
        return now.figures().toType(known.value());
    }

    private String day(KeptFigure known) {
        return now.times().day(known.day());
    }
}
