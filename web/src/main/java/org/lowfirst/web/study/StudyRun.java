package org.lowfirst.web.study;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.planning.study.StudyOutcome;
import org.lowfirst.planning.study.StudyRequest;
import org.lowfirst.planning.study.StudyResult;

/** One study, waiting, under way or done. Written by one thread, read by many. */
final class StudyRun {

    private final String id;
    private final String bench;
    private final Map<String, String> typed;
    private final StudyRequest request;
    private volatile boolean stopped;
    private volatile long runsDone;
    private volatile @Nullable Instant started;
    private volatile @Nullable StudyOutcome outcome;

    /** @param typed the form it came from, to change it and run it again */
    StudyRun(String id, String bench, Map<String, String> typed, StudyRequest request) {
        this.id = id;
        this.bench = bench;
        this.typed = Map.copyOf(typed);
        this.request = request;
    }

    String id() {
        return id;
    }

    String bench() {
        return bench;
    }

    Map<String, String> typed() {
        return typed;
    }

    StudyRequest request() {
        return request;
    }

    void begin(Instant now) {
        started = now;
    }

    /** Takes note of the progress; false when it is to end. */
    boolean goOn(long done) {
        runsDone = done;
        return !stopped;
    }

    void end(StudyOutcome came) {
        outcome = came;
    }

    void stop() {
        stopped = true;
    }

    long runsDone() {
        return runsDone;
    }

    /** When it began; empty while it waits for another. */
    Optional<Instant> started() {
        return Optional.ofNullable(started);
    }

    boolean done() {
        return outcome != null;
    }

    /** The result; empty while it is under way, and when it was stopped before there was one. */
    Optional<StudyResult> result() {
        return outcome instanceof StudyResult result ? Optional.of(result) : Optional.empty();
    }
}
