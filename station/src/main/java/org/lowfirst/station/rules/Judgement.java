package org.lowfirst.station.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/**
 * One cylinder judged by one book on one day.
 *
 * @param name the cylinder
 * @param book id of the book
 * @param findings worst first, otherwise in the order of the book
 * @param limits pressure limits that hold for this cylinder, whatever was wanted
 * @param holds what it reads now; zero when no reading was given
 */
public record Judgement(
        String name,
        LocalDate day,
        String book,
        List<Finding> findings,
        List<PressureLimit> limits,
        GaugePressure holds) {

    public Judgement {
        List<Finding> sorted = new ArrayList<>(findings);
        sorted.sort(Comparator.comparing(Finding::verdict).reversed());
        findings = List.copyOf(sorted);
        limits = List.copyOf(limits);
    }

    /** The worst of all findings. */
    public Verdict overall() {
        return findings.stream().map(Finding::verdict).reduce(Verdict.ALLOW, Verdict::worse);
    }

    public List<Finding> refusals() {
        return findings.stream().filter(Finding::refuses).toList();
    }

    public List<Finding> warnings() {
        return findings.stream()
                .filter(f -> f.verdict() == Verdict.ALLOW_WITH_WARNING)
                .toList();
    }

    /** The lowest limit at a temperature, for capping a target; empty list of limits there gives an empty answer. */
    public Optional<PressureLimit> findLowestLimit(Temperature at) {
        return limits.stream()
                .filter(limit -> limit.most().isAt(at))
                .min(Comparator.comparing(limit -> limit.most().pressure()));
    }

    public Fitness fitness() {
        List<Finding> refusals = refusals();
        if (refusals.isEmpty()) {
            List<Finding> warnings = warnings();
            return warnings.isEmpty() ? new Fitness.Fit() : new Fitness.FitWithWarnings(warnings);
        }
        if (refusals.stream().anyMatch(f -> means(f, Consequence.RETIRE))) {
            return new Fitness.LifeOver(refusals);
        }
        if (refusals.stream().anyMatch(f -> means(f, Consequence.HOLD))) {
            return new Fitness.Unfit(refusals);
        }
        if (refusals.stream().anyMatch(f -> means(f, Consequence.USE_UP))) {
            return new Fitness.UseUpOnly(refusals, holds);
        }
        return new Fitness.TargetTooHigh(refusals, limits);
    }

    private static boolean means(Finding finding, Consequence consequence) {
        return finding.advice().consequence() == consequence;
    }
}
