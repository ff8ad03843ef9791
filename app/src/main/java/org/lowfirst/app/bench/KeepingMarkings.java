package org.lowfirst.app.bench;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lowfirst.station.AreaFact;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.BottlePapers;
import org.lowfirst.station.Command.Enter;
import org.lowfirst.station.GateFact;
import org.lowfirst.station.Marking;
import org.lowfirst.station.Refusal;
import org.lowfirst.station.rules.Answer;
import org.lowfirst.station.rules.PlusEntry;

/** Keeps what the gate needs to know of bottles: markings, answers, tests, refusals set aside. Days are today's at the bench. */
public final class KeepingMarkings {

    private final Recorder recorder;

    KeepingMarkings(Recorder recorder) {
        this.recorder = recorder;
    }

    /** @throws java.util.NoSuchElementException when there is no such bench */
    public BottlePapers papers(BenchId bench, BottleId bottle) {
        return recorder.getState(bench).bench().areas().gate().papersOf(bottle);
    }

    /** The marking as entered; empty while nobody has. */
    public Optional<Marking> findMarking(BenchId bench, BottleId bottle) {
        return Optional.ofNullable(papers(bench, bottle).marking());
    }

    /** All of a marking as it is from now on. */
    public Recording mark(BenchId bench, BottleId bottle, Marking marking, Submission submission) {
        return enter(bench, new GateFact.BottleMarked(bottle, marking), submission);
    }

    /** Answers to the questions of the book, by code; they count today. */
    public Recording answer(BenchId bench, BottleId bottle, Map<String, Answer> answers, Submission submission) {
        return enter(
                bench,
                new GateFact.ConditionAnswered(bottle, day(submission), answers, submission.author()),
                submission);
    }

    public Recording foundOpen(BenchId bench, BottleId bottle, Submission submission) {
        return enter(bench, new GateFact.BottleFoundOpen(bottle, day(submission)), submission);
    }

    public Recording inspected(BenchId bench, BottleId bottle, String by, Submission submission) {
        return enter(bench, new GateFact.EmptyBottleInspected(bottle, day(submission), by), submission);
    }

    public Recording hammerTested(BenchId bench, BottleId bottle, String by, Submission submission) {
        return enter(bench, new GateFact.HammerTested(bottle, day(submission), by), submission);
    }

    /** For those who answer for the bench. */
    public Recording enterPlus(BenchId bench, BottleId bottle, String source, Submission submission) {
        return enter(
                bench, new GateFact.PlusRatingEntered(bottle, new PlusEntry(source, submission.author())), submission);
    }

    public Recording withdrawPlus(BenchId bench, BottleId bottle, String reason, Submission submission) {
        return enter(bench, new GateFact.PlusRatingWithdrawn(bottle, reason), submission);
    }

    /**
     * A second person takes refusals on for one fill today.
     *
     * @param refusals as a {@link org.lowfirst.app.fitness.FitnessReport} offers them
     * @param filler who fills
     * @param submission its author is the second person
     */
    public Recording setAside(
            BenchId bench,
            BottleId bottle,
            List<Refusal> refusals,
            String filler,
            String reason,
            Submission submission) {
        return enter(
                bench,
                new GateFact.RefusalsSetAside(bottle, day(submission), refusals, filler, submission.author(), reason),
                submission);
    }

    private Recording enter(BenchId bench, AreaFact fact, Submission submission) {
        return recorder.record(bench, new Enter(fact), submission);
    }

    private LocalDate day(Submission submission) {
        return LocalDate.ofInstant(
                submission.effectiveAt() == null ? recorder.clock().instant() : submission.effectiveAt(),
                recorder.clock().getZone());
    }
}
