package org.lowfirst.web.kept;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.AheadFigure;
import org.lowfirst.station.Happening;
import org.lowfirst.station.OutlookFact;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.kept.KeptPage.FigureLine;
import org.lowfirst.web.kept.KeptPage.Group;
import org.lowfirst.web.workplace.BenchNow;

/** The fields of the forms of what is kept. */
final class KeptFields {

    private static final Map<String, List<AheadFigure>> GROUPS = new java.util.LinkedHashMap<>();

    static {
        GROUPS.put(
                "kept.ordering", List.of(AheadFigure.LEAD_DAYS, AheadFigure.RESERVE_FILLS, AheadFigure.FILLS_PER_YEAR));
        GROUPS.put(
                "kept.prices",
                List.of(
                        AheadFigure.CONTENT_PRICE,
                        AheadFigure.DELIVERY_PRICE,
                        AheadFigure.RENT_PER_DAY,
                        AheadFigure.MISSED_FILL_PRICE,
                        AheadFigure.INTERCONNECT_PRICE));
        GROUPS.put(
                "kept.camp",
                List.of(AheadFigure.FILLS_PER_PILOT, AheadFigure.FLYABLE_PERCENT, AheadFigure.CHANCE_PERCENT));
    }

    private KeptFields() {}

    static List<Group> groups(BenchNow now, Defaults defaults) {
        return GROUPS.entrySet().stream()
                .map(group -> new Group(
                        now.words().of(group.getKey()),
                        group.getValue().stream()
                                .map(figure -> new FigureLine(
                                        figure.key(), now.words().of("figure." + figure.key()), defaults.hint(figure)))
                                .toList()))
                .toList();
    }

    static Form figures(Defaults defaults) {
        Map<String, String> fields = new HashMap<>();
        for (AheadFigure figure : AheadFigure.values()) {
            defaults.fill(fields, figure.key(), figure, "");
        }
        return Form.with(fields);
    }

    /** The figures that are new or differ, or null with faults in the reader. */
    static OutlookFact.@Nullable FiguresKept read(Reader reader, BenchNow now, Defaults defaults) {
        Map<AheadFigure, BigDecimal> figures = new EnumMap<>(AheadFigure.class);
        for (AheadFigure figure : AheadFigure.values()) {
            @Nullable BigDecimal number = reader.numberIfTyped(figure.key());
            if (number == null) {
                continue;
            }
            if (!within(figure, number)) {
                reader.fault(
                        figure.key(),
                        now.words()
                                .of(
                                        figure.whole() ? "fault.figure.whole" : "fault.figure",
                                        now.figures().toType(number),
                                        now.figures().toType(figure.lowest()),
                                        Figures.number(
                                                figure.highest(), now.words().locale())));
            } else if (!defaults.same(figure, number)) {
                figures.put(figure, number);
            }
        }
        return reader.form().sound() ? new OutlookFact.FiguresKept(figures) : null;
    }

    private static boolean within(AheadFigure figure, BigDecimal number) {
        return number.compareTo(figure.lowest()) >= 0
                && number.compareTo(figure.highest()) <= 0
                && (!figure.whole() || number.stripTrailingZeros().scale() <= 0);
    }

    /** What is planned, or null with faults in the reader. */
    static OutlookFact.@Nullable HappeningPlanned planned(Reader reader, BenchNow now) {
        String name = reader.required("name", "fault.name");
        if (reader.empty("from")) {
            reader.fault("from", now.words().of("fault.day.empty"));
        }
        @Nullable LocalDate from = reader.dayIfTyped("from");
        @Nullable BigDecimal days = reader.empty("days") ? BigDecimal.ONE : reader.numberIfTyped("days");
        if (reader.empty("fills")) {
            reader.fault("fills", now.words().of("fault.number.empty"));
        }
        @Nullable BigDecimal fills = reader.numberIfTyped("fills");
        range(reader, now, "days", days, 1, 100, true);
        range(reader, now, "fills", fills, 0, 1_000, false);
        return from == null || days == null || fills == null || !reader.form().sound()
                ? null
                : new OutlookFact.HappeningPlanned(new Happening(name, from, days.intValueExact(), fills));
    }

    private static void range(
            Reader reader, BenchNow now, String field, @Nullable BigDecimal number, int low, int high, boolean whole) {
        boolean fits = number == null
                || (number.compareTo(BigDecimal.valueOf(low)) >= 0
                        && number.compareTo(BigDecimal.valueOf(high)) <= 0
                        && (!whole || number.stripTrailingZeros().scale() <= 0));
        if (!fits) {
            reader.fault(
                    field,
                    now.words()
                            .of(
                                    whole ? "fault.figure.whole" : "fault.figure",
                                    reader.text(field),
                                    low,
                                    now.figures().number(high, 0)));
        }
    }
}
