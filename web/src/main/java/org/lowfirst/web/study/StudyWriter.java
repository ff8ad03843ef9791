package org.lowfirst.web.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.lowfirst.planning.study.Alternative;
import org.lowfirst.planning.study.AlternativeResult;
import org.lowfirst.planning.study.BreakEven;
import org.lowfirst.planning.study.CostParts;
import org.lowfirst.planning.study.CostSpread;
import org.lowfirst.planning.study.Estimate;
import org.lowfirst.planning.study.Limit;
import org.lowfirst.planning.study.SentBack;
import org.lowfirst.planning.study.StudyRequest;
import org.lowfirst.planning.study.StudyResult;
import org.lowfirst.planning.study.When;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.picture.CurvesPicture;
import org.lowfirst.web.picture.CurvesPicture.Curve;
import org.lowfirst.web.picture.CurvesPicture.Point;
import org.lowfirst.web.study.StudyResultPage.AlternativeLine;
import org.lowfirst.web.study.StudyResultPage.StudySheet;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;

/** Writes what came of a study for people. */
final class StudyWriter {

    private static final double FARTHEST_FACTOR = 100.0;
    private static final double MOST_FILLS = 1e5;
    /** Missed fills of this share of the fills made are few. */
    private static final double LITTLE = 0.01;

    private final BenchNow now;
    private final Words words;
    private final Figures figures;
    private final StudyRequest request;

    StudyWriter(BenchNow now, StudyRequest request) {
        this.now = now;
        this.words = now.words();
        this.figures = now.figures();
        this.request = request;
    }

    StudySheet sheet(StudyResult result) {
        String cheapest = result.cheapest();
        return new StudySheet(
                cheapest == null ? words.of("study.no-fill") : words.of("study.cheapest", cheapest),
                words.of(
                        result.runs() < result.runsAsked() ? "study.extent.early" : "study.extent",
                        figures.number((double) result.runs(), 0),
                        request.extent().years(),
                        figures.number(request.demand().fillsPerYear(), 0)),
                costs(result).draw(),
                curves(
                                result,
                                words.of("study.picture.residual", figures.pressureUnit()),
                                "study.picture.residual.said",
                                this::residual)
                        .draw(),
                curves(result, words.of("study.picture.fills"), "study.picture.fills.said", StudyWriter::fills)
                        .draw(),
                result.alternatives().stream().map(one -> line(one, cheapest)).toList(),
                result.breakEvens().stream().map(this::breakEven).toList(),
                notes(result));
    }

    /** What makes a cost per fill say less than it seems to. */
    private List<String> notes(StudyResult result) {
        List<String> notes = new ArrayList<>();
        for (AlternativeResult one : result.alternatives()) {
            double share = one.usage().gasFromBefore();
            if (one.usage().tooShort()) {
                notes.add(words.of(
                        share > 0 ? "study.note.before" : "study.note.after",
                        one.alternative().name(),
                        figures.number(100 * Math.abs(share), 0)));
            }
        }
        boolean missed = result.alternatives().stream()
                .anyMatch(one -> one.usage().missedPerYear().mean()
                        > LITTLE * one.usage().fillsPerYear().mean());
        if (missed && request.prices().perMissedFill() == 0.0) {
            notes.add(words.of("study.note.missed"));
        }
        notes.add(words.of("study.note.limit"));
        return notes;
    }

    private CurvesPicture costs(StudyResult result) {
        List<Curve> curves = new ArrayList<>(byHabit(result, StudyWriter::cost));
        List<Point> limit = new ArrayList<>();
        for (AlternativeResult one : result.alternatives()) {
            Limit least = one.limit();
            int size = one.alternative().bankSize();
            if (least != null && habit(one.alternative()) == StudyHabit.ONE) {
                limit.add(new Point(size, least.costPerFill(), least.costPerFill(), least.costPerFill()));
            }
        }
        if (!limit.isEmpty()) {
            curves.add(new Curve(words.of("study.limit"), -1, limit));
        }
        String cheapest = result.cheapest();
        return new CurvesPicture(
                curves,
                false,
                new CurvesPicture.Wording(
                        words.of("study.picture.cost.said", cheapest == null ? "-" : cheapest),
                        words.of("study.picture.cost"),
                        words.of("study.picture.size"),
                        words.locale()));
    }

    private CurvesPicture curves(
            StudyResult result, String title, String said, Function<AlternativeResult, @Nullable Point> point) {
        return new CurvesPicture(
                byHabit(result, point),
                true,
                new CurvesPicture.Wording(words.of(said), title, words.of("study.picture.size"), words.locale()));
    }

    private List<Curve> byHabit(StudyResult result, Function<AlternativeResult, @Nullable Point> point) {
        List<Curve> curves = new ArrayList<>();
        for (StudyHabit habit : StudyHabit.values()) {
            List<Point> points = result.alternatives().stream()
                    .filter(one -> habit(one.alternative()) == habit)
                    .map(point)
                    .filter(Objects::nonNull)
                    .map(Objects::requireNonNull)
                    .toList();
            if (!points.isEmpty()) {
                curves.add(new Curve(words.of(habit.key()), habit.looks(), points));
            }
        }
        return curves;
    }

    private static StudyHabit habit(Alternative way) {
        if (way.booster() != null) {
            return StudyHabit.BOOSTER;
        }
        if (way.habit().when() == When.THE_NEXT_MIGHT_FAIL) {
            return StudyHabit.EARLY;
        }
        if (way.habit().when() == When.LOWEST_AT_RESIDUAL) {
            return StudyHabit.RESIDUAL;
        }
        return way.habit().together() == 2 ? StudyHabit.PAIRS : StudyHabit.ONE;
    }

    private static @Nullable Point cost(AlternativeResult one) {
        return point(one, one.costPerFill());
    }

    private static @Nullable Point fills(AlternativeResult one) {
        return point(one, one.usage().fillsPerSupply());
    }

    private @Nullable Point residual(AlternativeResult one) {
        SentBack back = one.sentBack();
        if (back == null) {
            return null;
        }
        double shown = back.meanReading().to(figures.pressureUnitOf());
        return new Point(one.alternative().bankSize(), shown, shown, shown);
    }

    private static @Nullable Point point(AlternativeResult one, @Nullable Estimate estimate) {
        return estimate == null
                ? null
                : new Point(one.alternative().bankSize(), estimate.mean(), estimate.low(), estimate.high());
    }

    private AlternativeLine line(AlternativeResult one, @Nullable String cheapest) {
        Estimate cost = one.costPerFill();
        CostSpread spread = one.spread();
        SentBack back = one.sentBack();
        Limit limit = one.limit();
        Estimate perSupply = one.usage().fillsPerSupply();
        return new AlternativeLine(
                one.alternative().name(),
                one.alternative().name().equals(cheapest),
                cost == null ? words.of("study.no-fill.short") : money(cost.mean()),
                cost == null ? "" : words.of("study.interval", money((cost.high() - cost.low()) / 2)),
                spread == null ? "" : words.of("forecast.span", money(spread.low()), money(spread.high())),
                parts(one.parts()),
                words.of(
                        "study.fills",
                        tenths(one.usage().fillsPerYear().mean()),
                        tenths(one.usage().missedPerYear().mean()),
                        perSupply == null ? "-" : tenths(perSupply.mean())),
                back == null
                        ? words.of("study.back.none")
                        : words.of(
                                "study.back",
                                Math.round(100 * back.share().mean()),
                                figures.pressureWithUnit(back.meanReading())),
                words.of(
                        "study.storage",
                        one.storage().places(),
                        now.gas(one.storage().mostGas()),
                        money(one.storage().firstOutlay())),
                limit == null
                        ? ""
                        : words.of("study.limit.line", money(limit.costPerFill()), tenths(limit.fillsPerSupply())));
    }

    private String parts(@Nullable CostParts parts) {
        return parts == null
                ? ""
                : words.of(
                        "study.parts",
                        money(parts.content()),
                        money(parts.deliveries()),
                        money(parts.rent()),
                        money(parts.purchases() + parts.boosting()),
                        money(parts.missed()));
    }

    private String breakEven(BreakEven one) {
        List<String> points = new ArrayList<>();
        factor(points, "study.break.content", one.contentFactor());
        factor(points, "study.break.delivery", one.deliveryFactor());
        factor(points, "study.break.rent", one.rentFactor());
        Double fills = one.fillsPerYear();
        if (fills != null && fills < MOST_FILLS) {
            points.add(words.of("study.break.fills", figures.number(fills, 0)));
        }
        return words.of(
                "study.break",
                one.alternative(),
                one.against(),
                points.isEmpty() ? words.of("study.break.none") : String.join(", ", points));
    }

    private void factor(List<String> points, String key, @Nullable Double factor) {
        if (factor != null && factor < FARTHEST_FACTOR) {
            points.add(words.of(key, figures.number(factor, 2)));
        }
    }

    private String money(double value) {
        return figures.number(value + 0.0, 2);
    }

    private String tenths(double value) {
        return figures.number(value, 1);
    }
}
