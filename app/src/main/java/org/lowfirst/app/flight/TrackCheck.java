package org.lowfirst.app.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lowfirst.app.file.Problems;

/** Looks for what no aircraft flies: altitudes out of range and jumps. Says where the track has holes. */
final class TrackCheck {

    private static final double LOWEST_M = -500.0;
    private static final double HIGHEST_M = 20_000.0;
    /** As steep as a leg of a profile may be. */
    private static final double STEEPEST_M_PER_S = 75.0;
    /** A recorder that is set to save memory takes a fix a minute. */
    private static final double LONGEST_HOLE_S = 180.0;

    private static final int MOST_HOLES = 3;
    private static final int MOST_PROBLEMS = 50;

    private final Problems problems;
    private final TrackNumbers numbers;
    private final List<String> notes = new ArrayList<>();

    TrackCheck(Problems problems) {
        this.problems = problems;
        this.numbers = new TrackNumbers(problems.language());
    }

    /**
     * The track of these fixes; empty when something is wrong with them, and then problems say what.
     *
     * @param fixes in the order of the file, each later than the one before
     * @param readingNotes what is to be said about how they were read
     */
    Optional<Track> track(List<Fix> fixes, List<String> readingNotes) {
        if (fixes.size() < 2 && !problems.haveErrors()) {
            problems.fileError(problems.say(fixes.isEmpty() ? "track.no-fix" : "track.one-fix", Map.of()));
        }
        notes.addAll(readingNotes);
        checkJumps(withinReach(fixes));
        noteHoles(fixes);
        return problems.haveErrors() ? Optional.empty() : Optional.of(new Track(fixes, notes));
    }

    /** The fixes whose altitude can be meant. */
    private List<Fix> withinReach(List<Fix> fixes) {
        List<Fix> within = new ArrayList<>();
        for (Fix fix : fixes) {
            if (fix.metres() >= LOWEST_M && fix.metres() <= HIGHEST_M) {
                within.add(fix);
            } else {
                error(
                        fix,
                        problems.say(
                                "track.altitude",
                                Map.of(
                                        "altitude", numbers.metres(fix.metres()),
                                        "low", numbers.metres(LOWEST_M),
                                        "high", numbers.metres(HIGHEST_M))));
            }
        }
        return within;
    }

    /** A fix that fits neither the last good one nor the bad one after it is a jump; so one bad fix is one problem. */
    private void checkJumps(List<Fix> fixes) {
        if (fixes.isEmpty()) {
            return;
        }
        Fix good = fixes.get(0);
        Fix before = good;
        for (Fix fix : fixes.subList(1, fixes.size())) {
            if (steepness(good, fix) <= STEEPEST_M_PER_S || steepness(before, fix) <= STEEPEST_M_PER_S) {
                good = fix;
            } else {
                error(fix, jump(before, fix));
            }
            before = fix;
        }
    }

    private String jump(Fix before, Fix fix) {
        return problems.say(
                "track.jump",
                Map.of(
                        "from", numbers.metres(before.metres()),
                        "to", numbers.metres(fix.metres()),
                        "seconds", numbers.grouped(fix.seconds() - before.seconds()),
                        "most", numbers.grouped(STEEPEST_M_PER_S)));
    }

    private void noteHoles(List<Fix> fixes) {
        int holes = 0;
        for (int i = 1; i < fixes.size(); i++) {
            double from_s = fixes.get(i - 1).seconds() - fixes.get(0).seconds();
            double to_s = fixes.get(i).seconds() - fixes.get(0).seconds();
            if (to_s - from_s > LONGEST_HOLE_S && ++holes <= MOST_HOLES) {
                notes.add(problems.say(
                        "track.hole",
                        Map.of("from", HoursAndMinutes.before(from_s), "to", HoursAndMinutes.after(to_s))));
            }
        }
        if (holes > MOST_HOLES) {
            notes.add(problems.say("track.holes", Map.of("count", Integer.toString(holes - MOST_HOLES))));
        }
    }

    private void error(Fix fix, String sentence) {
        if (problems.count() < MOST_PROBLEMS) {
            problems.error(fix.place(), sentence);
        }
    }

    private static double steepness(Fix from, Fix to) {
        return Math.abs(to.metres() - from.metres()) / (to.seconds() - from.seconds());
    }
}
