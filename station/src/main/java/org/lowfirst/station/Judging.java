package org.lowfirst.station;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.station.rules.Answer;
import org.lowfirst.station.rules.CylinderFacts;
import org.lowfirst.station.rules.Finding;
import org.lowfirst.station.rules.Judgement;
import org.lowfirst.station.rules.Nameplate;
import org.lowfirst.station.rules.PressureAt;
import org.lowfirst.station.rules.PressureLimit;
import org.lowfirst.station.rules.RuleBook;
import org.lowfirst.station.rules.Service;
import org.lowfirst.station.rules.TestMark;
import org.lowfirst.station.rules.Use;
import org.lowfirst.station.rules.WallMaterial;

/** Judges the bottles of a bench by the rule book in force. What nobody entered is not known, and the book says what that means. */
public final class Judging {

    private static final Service NOT_KNOWN = new Service(null, null, Answer.NOT_SURE, Answer.NOT_SURE, Answer.NOT_SURE);

    private Judging() {}

    /** The book in force: the one adopted, or the built-in one of the bench's rule set. */
    public static RuleBook book(Bench bench) {
        return bench.areas().gate().book(bench.settings().rules());
    }

    /**
     * A bottle in the terms of the rules, with nothing wanted.
     *
     * @param reading what it reads now; null when nobody has read it
     * @param day day at the bench; answers given on another day do not count
     * @throws java.util.NoSuchElementException when it was never registered
     */
    public static CylinderFacts facts(Bench bench, BottleId id, @Nullable GaugePressure reading, LocalDate day) {
        Bottle bottle = bench.getBottle(id);
        BottlePapers papers = bench.areas().gate().papersOf(id);
        Marking marking = papers.marking();
        GateChecks checks = papers.checks();
        GateFact.ConditionAnswered condition = checks.condition();
        Integer before = marking == null ? null : marking.fillsBefore();
        TestMark lastTest = marking == null ? null : marking.lastTest();
        return new CylinderFacts(
                bottle.details().name(),
                nameplate(bottle.details(), marking),
                lastTest,
                new Use(
                        before == null ? null : (Integer) (before + papers.fills()),
                        reading,
                        checks.foundOpen() != null,
                        checks.inspectedEmpty(),
                        checks.hammerTested()),
                marking == null ? NOT_KNOWN : marking.service(),
                condition != null && condition.day().equals(day) ? condition.answers() : Map.of(),
                papers.plus(),
                marking == null ? null : marking.permit(),
                List.of());
    }

    /**
     * Judges a bottle.
     *
     * @param wanted contents wanted at the temperatures of the book; empty when only the bottle is judged
     */
    public static Judgement judge(
            Bench bench, BottleId id, @Nullable GaugePressure reading, LocalDate day, List<PressureAt> wanted) {
        return book(bench).judge(facts(bench, id, reading, day).wanting(wanted), day);
    }

    /** The refusals that stand: none of those a second person took on for that day. */
    public static List<Finding> standing(Bench bench, BottleId id, Judgement judgement) {
        GateFact.RefusalsSetAside setAside = bench.areas().gate().papersOf(id).setAside();
        if (setAside == null || !setAside.day().equals(judgement.day())) {
            return judgement.refusals();
        }
        return judgement.refusals().stream()
                .filter(finding -> !setAside.refusals().contains(Refusal.of(finding)))
                .toList();
    }

    /** What a bottle may be filled to at the reference temperature, plus-rating included; empty when not known. */
    public static Optional<GaugePressure> rated(Bench bench, BottleId id, LocalDate day) {
        return judge(bench, id, null, day, List.of())
                .findLowestLimit(book(bench).referenceTemperature(day))
                .map(PressureLimit::most)
                .map(PressureAt::pressure);
    }

    private static Nameplate nameplate(BottleDetails details, @Nullable Marking marking) {
        StatedPressure test = marking == null ? null : marking.plate().testPressure();
        return new Nameplate(
                marking == null ? null : marking.plate().specification(),
                marking == null ? wall(details.material()) : marking.plate().material(),
                details.servicePressure().gauge(),
                test == null ? null : test.gauge(),
                details.waterVolume().stated().volume(),
                marking == null ? null : marking.plate().made());
    }

    private static WallMaterial wall(@Nullable Material material) {
        if (material == null) {
            return WallMaterial.UNKNOWN;
        }
        return switch (material) {
            case ALUMINIUM -> WallMaterial.ALUMINIUM;
            case STEEL -> WallMaterial.STEEL;
            case COMPOSITE -> WallMaterial.COMPOSITE;
        };
    }
}
