package org.lowfirst.app.fitness;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Judging;
import org.lowfirst.station.Refusal;
import org.lowfirst.station.rules.Advice;
import org.lowfirst.station.rules.Consequence;
import org.lowfirst.station.rules.Finding;
import org.lowfirst.station.rules.Judgement;
import org.lowfirst.station.rules.Measure;
import org.lowfirst.station.rules.OverridePolicy;
import org.lowfirst.station.rules.PressureAt;
import org.lowfirst.station.rules.Verdict;

/** Writes what the gate says of a bottle, in the units of its bench. */
public final class FitnessWriter {

    /** Refusals that go away by what is asked next; a bottle is not unfit for them. */
    private static final Set<Advice> ASKED_NEXT =
            Set.of(Advice.ANSWER_QUESTION, Advice.TAKE_READING, Advice.STATE_CONTENTS_AT_TEMPERATURE);

    private final Bench bench;
    private final Wording words;
    private final FindingWords findings;

    public FitnessWriter(Bench bench, Locale locale) {
        this.bench = bench;
        this.words = Wording.of(FitnessWriter.class, locale);
        this.findings = new FindingWords(locale, bench.settings().units());
    }

    /**
     * Judges a bottle and says so.
     *
     * @param reading what it reads; null when nobody has read it
     * @param wanted contents wanted at the temperatures of the book; empty when only the bottle is judged
     */
    public FitnessReport report(BottleId id, @Nullable GaugePressure reading, LocalDate day, List<PressureAt> wanted) {
        Judgement judgement = Judging.judge(bench, id, reading, day, wanted);
        List<Finding> standing = Judging.standing(bench, id, judgement);
        List<Finding> against = standing.stream()
                .filter(finding -> !ASKED_NEXT.contains(finding.advice()) && finding.advice() != Advice.CAP_TARGET)
                .toList();
        List<FitnessReport.Question> questions = Judging.book(bench).questions(day).stream()
                .filter(code -> standing.stream().anyMatch(finding -> asks(finding, code)))
                .map(code -> new FitnessReport.Question(code, findings.question(code)))
                .toList();
        List<Finding> setAside = judgement.refusals().stream()
                .filter(finding -> !standing.contains(finding))
                .toList();
        boolean marked = bench.areas().gate().papersOf(id).marking() != null;
        FitnessWord word = word(marked, against, questions, setAside, judgement);
        return new FitnessReport(
                id,
                judgement.name(),
                day,
                word,
                headline(word, judgement),
                new FitnessReport.Lines(
                        lines(against),
                        lines(standing.stream()
                                .filter(finding -> finding.advice() == Advice.CAP_TARGET)
                                .toList()),
                        lines(judgement.warnings()),
                        lines(setAside),
                        lines(passed(judgement, Judging.book(bench).questions(day)))),
                questions,
                toSetAside(against, questions));
    }

    private static boolean asks(Finding finding, String question) {
        return finding.advice() == Advice.ANSWER_QUESTION
                && finding.measured() instanceof Measure.OfWord asked
                && asked.word().equals(question);
    }

    private static FitnessWord word(
            boolean marked,
            List<Finding> against,
            List<FitnessReport.Question> questions,
            List<Finding> setAside,
            Judgement judgement) {
        if (!against.isEmpty()) {
            return marked ? refused(against) : FitnessWord.NOT_ENTERED;
        }
        if (!questions.isEmpty()) {
            return FitnessWord.TO_LOOK_AT;
        }
        if (!setAside.isEmpty()) {
            return FitnessWord.SET_ASIDE;
        }
        return judgement.warnings().isEmpty() ? FitnessWord.FIT : FitnessWord.FIT_WITH_NOTE;
    }

    private static FitnessWord refused(List<Finding> against) {
        if (against.stream().anyMatch(finding -> finding.advice().consequence() == Consequence.RETIRE)) {
            return FitnessWord.LIFE_OVER;
        }
        return against.stream().allMatch(finding -> finding.advice().consequence() == Consequence.USE_UP)
                ? FitnessWord.USE_UP
                : FitnessWord.UNFIT;
    }

    private static List<Refusal> toSetAside(List<Finding> against, List<FitnessReport.Question> questions) {
        boolean open = !questions.isEmpty();
        boolean never = against.stream().anyMatch(finding -> finding.override() == OverridePolicy.NEVER);
        return open || never ? List.of() : against.stream().map(Refusal::of).toList();
    }

    /** The word with the days and fills that are left, the fewest of each. */
    private String headline(FitnessWord word, Judgement judgement) {
        String said = words.text("fitness." + FindingWords.code(word), Map.of());
        List<String> left = new ArrayList<>();
        if (!word.refused()) {
            judgement.findings().stream()
                    .filter(finding -> finding.left() instanceof Measure.OfDays)
                    .min(Comparator.comparingLong(finding -> ((Measure.OfDays) finding.left()).days()))
                    .ifPresent(finding -> left.add(findings.line(finding).left()));
            judgement.findings().stream()
                    .filter(finding -> finding.left() instanceof Measure.OfFills)
                    .min(Comparator.comparingLong(finding -> ((Measure.OfFills) finding.left()).fills()))
                    .ifPresent(finding -> left.add(findings.line(finding).left()));
        }
        return left.isEmpty()
                ? said
                : words.text("fitness.left", Map.of("word", said, "left", String.join(", ", left)));
    }

    /** Rules that passed and have something to show; the answers of the day are known to who gave them. */
    private static List<Finding> passed(Judgement judgement, List<String> questions) {
        return judgement.findings().stream()
                .filter(finding -> finding.verdict() == Verdict.ALLOW && !(finding.limit() instanceof Measure.Nothing))
                .filter(finding ->
                        !(finding.measured() instanceof Measure.OfWord word && questions.contains(word.word())))
                .toList();
    }

    private List<FindingLine> lines(List<Finding> found) {
        return found.stream().map(findings::line).toList();
    }
}
