package org.lowfirst.app.money;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.MoneyFact;

/** The entries taken so far, by the fill and the bottle they have to do with. */
final class Index {

    private final Map<Long, Subject> subjects = new HashMap<>();
    private final Map<FillId, List<Entry>> fills = new HashMap<>();
    private final Map<FillId, Set<BottleId>> bottlesOf = new HashMap<>();
    private final Map<BottleId, List<Entry>> bottles = new HashMap<>();
    private final List<Entry> forAll = new ArrayList<>();
    private final Map<FillId, Ended> ended = new LinkedHashMap<>();

    /** When a fill ended and on which day; null once it was taken back. */
    private record Ended(@Nullable Instant at, @Nullable LocalDate day) {}

    /** Takes the next entry; returns the fills of which another thing may be true now. */
    Set<FillId> take(Entry entry) {
        Subject subject = Subject.of(entry, subjects);
        if (subject.nothing()) {
            return Set.of();
        }
        subjects.put(entry.seq(), subject);
        Set<FillId> affected = new LinkedHashSet<>();
        for (FillId fill : subject.fills()) {
            fills.computeIfAbsent(fill, id -> new ArrayList<>()).add(entry);
            bottlesOf.computeIfAbsent(fill, id -> new HashSet<>()).addAll(subject.bottles());
            if (!(entry.fact() instanceof Fact.StageRecorded) || ended.containsKey(fill)) {
                affected.add(fill);
            }
        }
        if (subject.fills().isEmpty()) {
            if (subject.forAll()) {
                forAll.add(entry);
            }
            subject.bottles()
                    .forEach(bottle -> bottles.computeIfAbsent(bottle, id -> new ArrayList<>())
                            .add(entry));
            ended.forEach((fill, when) -> {
                if (touches(entry, subject, fill, when)) {
                    affected.add(fill);
                }
            });
        }
        return affected;
    }

    /** Whether an entry about no fill in particular can change one that has ended. */
    private boolean touches(Entry entry, Subject subject, FillId fill, Ended when) {
        if (when.at() == null || when.day() == null) {
            return false;
        }
        if (!subject.forAll()
                && bottlesOf.getOrDefault(fill, Set.of()).stream().noneMatch(subject.bottles()::contains)) {
            return false;
        }
        if (entry.fact() instanceof MoneyFact.TariffSet tariff) {
            return !tariff.from().isAfter(when.day());
        }
        return entry.fact() instanceof Fact.EntryCorrected
                || !entry.origin().effectiveAt().isAfter(when.at());
    }

    /** Everything that has to do with a fill, as far as it was entered. */
    List<Entry> about(FillId fill) {
        List<Entry> about = new ArrayList<>(forAll);
        for (BottleId bottle : bottlesOf.getOrDefault(fill, Set.of())) {
            about.addAll(bottles.getOrDefault(bottle, List.of()));
        }
        about.addAll(fills.getOrDefault(fill, List.of()));
        return about;
    }

    /** Number of the latest entry about what happened in a fill, or another one when there is none. */
    long latestOwn(FillId fill, long otherwise) {
        long latest = 0;
        for (Entry entry : fills.getOrDefault(fill, List.of())) {
            latest = entry.fact() instanceof MoneyFact ? latest : entry.seq();
        }
        return latest == 0 ? otherwise : latest;
    }

    /** Whether nothing but who pays was ever said of a fill. */
    boolean unheardOf(FillId fill) {
        return bottlesOf.getOrDefault(fill, Set.of()).isEmpty();
    }

    /** Notes when a fill was last told to have ended. */
    void ended(FillId fill, @Nullable Instant at, @Nullable LocalDate day) {
        if (at != null || ended.containsKey(fill)) {
            ended.put(fill, new Ended(at, day));
        }
    }
}
