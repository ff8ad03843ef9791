package org.lowfirst.station;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A session that has begun. Immutable.
 *
 * @param bank name of the bank; null for the one that needs no name
 * @param wishes the bottles, in the order listed
 * @param remaining the stages still to do, in order
 * @param since what happened since they were planned
 * @param earlier what had happened when they were planned anew; empty for the first plan
 * @param skipped stages that somebody left out
 * @param out why a bottle is not filled, or not filled further, by its fill
 * @param finished fills that are finished
 * @param latest the fill that was last on the hose and has not ended; null when there is none
 */
public record OpenSession(
        SessionId id,
        @Nullable String bank,
        SessionAim aim,
        List<SessionWish> wishes,
        List<PlannedStage> remaining,
        List<Happened> since,
        List<Happened> earlier,
        List<PlannedStage> skipped,
        Map<FillId, String> out,
        Set<FillId> finished,
        @Nullable FillId latest) {

    public OpenSession {
        wishes = List.copyOf(wishes);
        remaining = List.copyOf(remaining);
        since = List.copyOf(since);
        earlier = List.copyOf(earlier);
        skipped = List.copyOf(skipped);
        out = Collections.unmodifiableMap(new LinkedHashMap<>(out));
        finished = Collections.unmodifiableSet(new LinkedHashSet<>(finished));
    }

    /**
     * What happened since the stages were planned.
     *
     * @param supply the supply of the stage; null when a fill began or a bottle was left out
     * @param expected what the bottle's gauge should have shown; null when nothing was planned there
     * @param read what it showed; null when a stage was skipped or a bottle left out
     */
    public record Happened(
            FillId fill,
            @Nullable SupplyId supply,
            @Nullable StatedPressure expected,
            @Nullable Reading read) {}

    static OpenSession of(SessionFact.SessionBegun f) {
        return new OpenSession(
                f.session(),
                f.bank(),
                f.aim(),
                f.wishes(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Map.of(),
                Set.of(),
                null);
    }

    public Optional<SessionWish> findWish(FillId fill) {
        return wishes.stream().filter(wish -> wish.fill().equals(fill)).findFirst();
    }

    /** The stages still to do with one bottle. */
    public List<PlannedStage> remaining(FillId fill) {
        return remaining.stream().filter(stage -> stage.fill().equals(fill)).toList();
    }

    /** The stage that comes next; empty when all are done. */
    public Optional<PlannedStage> next() {
        return remaining.stream().findFirst();
    }

    OpenSession planned(List<PlannedStage> stages) {
        return new OpenSession(id, bank, aim, wishes, stages, List.of(), since, skipped, out, finished, latest);
    }

    OpenSession skipped(FillId fill, SupplyId supply) {
        List<PlannedStage> more = new ArrayList<>(skipped);
        remaining(fill).stream()
                .filter(stage -> stage.supply().equals(supply))
                .findFirst()
                .ifPresent(more::add);
        OpenSession after = happened(without(fill, supply), new Happened(fill, supply, null, null), latest);
        return new OpenSession(
                id, bank, aim, wishes, after.remaining, after.since, earlier, more, out, finished, latest);
    }

    OpenSession leftOut(FillId fill, String reason) {
        Map<FillId, String> more = new LinkedHashMap<>(out);
        more.put(fill, reason);
        List<Happened> all = new ArrayList<>(since);
        all.add(new Happened(fill, null, null, null));
        return new OpenSession(
                id,
                bank,
                aim,
                wishes,
                without(fill),
                all,
                earlier,
                skipped,
                more,
                finished,
                fill.equals(latest) ? null : latest);
    }

    OpenSession started(FillId fill, Reading before) {
        return findWish(fill)
                .map(wish -> happened(
                        remaining, new Happened(fill, null, wish.before().pressure(), before), fill))
                .orElse(this);
    }

    OpenSession staged(FillId fill, Stage stage) {
        if (findWish(fill).isEmpty()) {
            return this;
        }
        StatedPressure expected = remaining.stream()
                .filter(planned ->
                        planned.fill().equals(fill) && planned.supply().equals(stage.supply()))
                .findFirst()
                .map(PlannedStage::until)
                .orElse(null);
        return happened(
                without(fill, stage.supply()), new Happened(fill, stage.supply(), expected, stage.bottleAfter()), fill);
    }

    OpenSession finished(FillId fill) {
        Set<FillId> more = new LinkedHashSet<>(finished);
        more.add(fill);
        return new OpenSession(
                id,
                bank,
                aim,
                wishes,
                without(fill),
                since,
                earlier,
                skipped,
                out,
                more,
                fill.equals(latest) ? null : latest);
    }

    private OpenSession happened(List<PlannedStage> left, Happened what, @Nullable FillId on) {
        List<Happened> all = new ArrayList<>(since);
        all.add(what);
        return new OpenSession(id, bank, aim, wishes, left, all, earlier, skipped, out, finished, on);
    }

    private List<PlannedStage> without(FillId fill) {
        return remaining.stream().filter(stage -> !stage.fill().equals(fill)).toList();
    }

    /** Without the first stage of a bottle on a supply. */
    private List<PlannedStage> without(FillId fill, SupplyId supply) {
        List<PlannedStage> left = new ArrayList<>(remaining);
        for (int i = 0; i < left.size(); i++) {
            if (left.get(i).fill().equals(fill) && left.get(i).supply().equals(supply)) {
                left.remove(i);
                break;
            }
        }
        return left;
    }
}
