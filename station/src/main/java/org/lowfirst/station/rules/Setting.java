package org.lowfirst.station.rules;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;

/** A book on a day: the rules in force, and what they say together. */
public record Setting(RuleBook book, LocalDate today) {

    /**
     * The rules in force, in the order of the book. Where none of a required kind is in force the first of the book stands in,
     * so that a gap between two dates never opens the gate.
     */
    List<FillRule> rules() {
        return book.rules().stream().filter(this::holds).toList();
    }

    private boolean holds(FillRule rule) {
        if (rule.heading().inForce().on(today)) {
            return true;
        }
        if (!rule.kind().required()) {
            return false;
        }
        List<FillRule> sameKind = book.rules().stream()
                .filter(other -> other.kind() == rule.kind())
                .toList();
        return sameKind.get(0).equals(rule)
                && sameKind.stream()
                        .noneMatch(other -> other.heading().inForce().on(today));
    }

    <R extends FillRule> Stream<R> rules(Class<R> type) {
        return rules().stream().filter(type::isInstance).map(type::cast);
    }

    /** The first rule of a required kind. */
    <R extends FillRule> R required(Class<R> type) {
        return rules(type).findFirst().orElseThrow();
    }

    LocalDate lastDay(YearMonth start, int years) {
        return required(DueMonth.class).validTo().lastDay(start.plusYears(years));
    }

    NoticePeriod notice() {
        return required(NoticePeriod.class);
    }

    /** The strictest interval that holds for this cylinder; a star that counts comes first, then a permit. */
    TestTerm testTerm(CylinderFacts facts) {
        Nameplate plate = facts.nameplate();
        for (StarInterval star : rules(StarInterval.class).toList()) {
            if (star.counts(facts)) {
                return new TestTerm.Every(star.heading(), star.years());
            }
        }
        for (PermitRule permit : rules(PermitRule.class).toList()) {
            if (permit.cylinders().matches(plate)) {
                PermitTerms terms = facts.permitTerms();
                return terms == null
                        ? new TestTerm.PermitNotEntered(permit.heading())
                        : new TestTerm.Every(permit.heading(), terms.testYears());
            }
        }
        TestTerm.@Nullable Every strictest = null;
        for (RetestInterval interval : rules(RetestInterval.class).toList()) {
            if (interval.cylinders().matches(plate) && (strictest == null || interval.years() < strictest.years())) {
                strictest = new TestTerm.Every(interval.heading(), interval.years());
            }
        }
        if (strictest != null) {
            return strictest;
        }
        return rules(NoRetest.class)
                .filter(rule -> rule.cylinders().matches(plate))
                .findFirst()
                .<TestTerm>map(rule -> new TestTerm.Never(rule.heading()))
                .orElseGet(TestTerm.Unknown::new);
    }

    /** The latest test, or the month made for a cylinder that has had none since. */
    @Nullable
    YearMonth lastTest(CylinderFacts facts) {
        TestMark mark = facts.lastTest();
        return mark != null ? mark.month() : facts.nameplate().made();
    }

    /** Marked service pressure, or the one a rule puts in its place. */
    @Nullable
    GaugePressure servicePressure(Nameplate plate) {
        GaugePressure marked = plate.servicePressure();
        if (marked != null) {
            return marked;
        }
        for (AssumedServicePressure rule : rules(AssumedServicePressure.class).toList()) {
            GaugePressure assumed = rule.assume(plate);
            if (assumed != null) {
                return assumed;
            }
        }
        return null;
    }

    /** The plus-rating that counts for this cylinder: entered with its source, marked, and of a listed specification. */
    @Nullable
    PlusRating plusRating(CylinderFacts facts) {
        TestMark mark = facts.lastTest();
        if (facts.plusEntry() == null || mark == null || !mark.plus()) {
            return null;
        }
        return rules(PlusRating.class)
                .filter(rule -> rule.cylinders().matches(facts.nameplate()))
                .findFirst()
                .orElse(null);
    }

    /** What the contents may settle to at the reference temperature, plus-rating included. */
    @Nullable
    GaugePressure ratedPressure(CylinderFacts facts) {
        GaugePressure service = servicePressure(facts.nameplate());
        PlusRating plus = plusRating(facts);
        return service == null || plus == null ? service : plus.raise(service);
    }
}
