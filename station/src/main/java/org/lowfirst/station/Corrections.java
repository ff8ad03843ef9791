package org.lowfirst.station;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Which entries were corrected, and by which. Immutable. */
public final class Corrections {

    private final Map<Long, Long> correctedBy;
    private final Map<Long, Long> corrects;

    private Corrections(Map<Long, Long> correctedBy) {
        this.correctedBy = Map.copyOf(correctedBy);
        Map<Long, Long> backwards = new HashMap<>();
        correctedBy.forEach((corrected, correction) -> backwards.put(correction, corrected));
        this.corrects = Map.copyOf(backwards);
    }

    /** @param entries all entries of one bench, or at least its corrections */
    public static Corrections of(Collection<Entry> entries) {
        Map<Long, Long> correctedBy = new HashMap<>();
        for (Entry entry : entries) {
            if (entry.fact() instanceof Fact.EntryCorrected correction) {
                correctedBy.put(correction.corrected(), entry.seq());
            }
        }
        return new Corrections(correctedBy);
    }

    /** Whether the entry no longer counts. */
    public boolean struck(long seq) {
        return correctedBy.containsKey(seq);
    }

    public Optional<Long> findCorrection(long seq) {
        return Optional.ofNullable(correctedBy.get(seq));
    }

    /** Number of the entry whose place this one takes: its own, unless it is a correction. */
    public long place(long seq) {
        long place = seq;
        Long earlier = corrects.get(place);
        while (earlier != null) {
            place = earlier;
            earlier = corrects.get(place);
        }
        return place;
    }

    /** The entry as it counts: itself, its replacement if it is a correction, or nothing if it only reverses. */
    public static Optional<Entry> counting(Entry entry) {
        if (!(entry.fact() instanceof Fact.EntryCorrected correction)) {
            return Optional.of(entry);
        }
        return Optional.ofNullable(correction.replacement())
                .map(fact -> new Entry(entry.bench(), entry.seq(), entry.origin(), fact));
    }
}
