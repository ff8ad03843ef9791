package org.lowfirst.planning.contents;

import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lowfirst.planning.contents.ReadingOutcome.Refused;

/**
 * What the facts of a bench come to.
 *
 * @param track the estimates as they went, in order of time
 * @param verdicts one for each reading and each pair of gauges, in order of time
 * @param refused facts that could not be used, as given, with the reason; nothing is lost
 * @param contents estimates after the last fact
 * @param offsets what was learned about the gauges
 * @param standing the verdict that stands for each cylinder after the last fact
 */
public record BenchHistory(
        List<TrackPoint> track,
        List<DatedVerdict> verdicts,
        List<RefusedFact> refused,
        Map<String, ContentsEstimate> contents,
        Map<String, GaugeOffset> offsets,
        Map<String, Verdict> standing) {

    /**
     * One estimate.
     *
     * @param surprise standard deviations the reading was off its forecast; 0 when there was none
     */
    public record TrackPoint(Instant at, String cylinder, ContentsEstimate estimate, double surprise) {}

    /** A verdict and when it was reached. */
    public record DatedVerdict(Instant at, Verdict verdict) {}

    /** A fact, or one reading of it, that could not be used. */
    public record RefusedFact(BenchFact fact, Refused why) {}

    public BenchHistory {
        track = List.copyOf(track);
        verdicts = List.copyOf(verdicts);
        refused = List.copyOf(refused);
        contents = Collections.unmodifiableMap(new LinkedHashMap<>(contents));
        offsets = Collections.unmodifiableMap(new LinkedHashMap<>(offsets));
        standing = Collections.unmodifiableMap(new LinkedHashMap<>(standing));
    }
}
