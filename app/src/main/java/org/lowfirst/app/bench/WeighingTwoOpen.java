package org.lowfirst.app.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.journal.StoredEntry;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.planning.TogetherCost;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;
import org.lowfirst.station.SupplyId;
import org.lowfirst.transfer.Together;
import org.lowfirst.transfer.Vessel;

/** Works out what it meant that two supplies were open together: where they met, and what that costs in fills. */
public final class WeighingTwoOpen {

    private final Recorder recorder;
    private final BenchPlanner planner;
    private final GasCount count;

    WeighingTwoOpen(Recorder recorder, BenchPlanner planner, GasCount count) {
        this.recorder = recorder;
        this.planner = planner;
        this.count = count;
    }

    /**
     * The report on one entry, by the bank as it stood when that happened.
     *
     * @param seq number of an entry that two supplies were open together, or of its correction
     * @return empty when there is no such entry, or when one of the two was not in the bank then
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public Optional<TwoOpenReport> findReport(BenchId bench, long seq) {
        BenchState now = recorder.getState(bench);
        Entry entry =
                recorder.journal().findEntry(bench, seq).map(StoredEntry::entry).orElse(null);
        Fact.TwoOpenedTogether fact = entry == null ? null : told(entry.fact());
        if (entry == null || fact == null) {
            return Optional.empty();
        }
        BenchState before =
                Replay.upTo(recorder.journal(), now.head(), entry, false, count).orElse(null);
        BenchState after =
                Replay.upTo(recorder.journal(), now.head(), entry, true, count).orElse(null);
        if (before == null || after == null || !both(before, fact) || !both(after, fact)) {
            return Optional.empty();
        }
        return Optional.of(report(before, after, fact));
    }

    private static Fact.@Nullable TwoOpenedTogether told(Fact fact) {
        Fact counting = fact instanceof Fact.EntryCorrected corrected ? corrected.replacement() : fact;
        return counting instanceof Fact.TwoOpenedTogether together ? together : null;
    }

    private static boolean both(BenchState state, Fact.TwoOpenedTogether fact) {
        return state.book().accounts().keySet().containsAll(Set.of(fact.first(), fact.second()));
    }

    private TwoOpenReport report(BenchState before, BenchState after, Fact.TwoOpenedTogether fact) {
        Vessel first = before.book().getAccount(fact.first()).vessel();
        Vessel second = before.book().getAccount(fact.second()).vessel();
        List<Vessel> levelled = Together.levelled(List.of(first, second));
        double moved_mol =
                Math.abs(levelled.get(0).contents().moles() - first.contents().moles());
        return new TwoOpenReport(
                fact,
                shown(before, first),
                shown(before, second),
                shown(before, levelled.get(0)),
                shown(after, after.book().getAccount(fact.first()).vessel()),
                shown(after, after.book().getAccount(fact.second()).vessel()),
                new Amount(moved_mol),
                UsualBottle.of(before.bench())
                        .map(usual -> cost(before, after, fact, usual))
                        .orElse(null));
    }

    private TwoOpenReport.@Nullable Cost cost(
            BenchState before, BenchState after, Fact.TwoOpenedTogether fact, UsualBottle usual) {
        TwoOpenReport.Useful then = useful(before, fact, usual);
        TwoOpenReport.Useful since = useful(after, fact, usual);
        return then == null || since == null ? null : new TwoOpenReport.Cost(usual, then, since);
    }

    /** The bank kept apart as it stands; of the two banks together when the supplies stand in different ones. */
    private TwoOpenReport.@Nullable Useful useful(BenchState state, Fact.TwoOpenedTogether fact, UsualBottle usual) {
        List<SupplyState> bank = new ArrayList<>(supplies(state, fact.first()));
        supplies(state, fact.second()).stream()
                .filter(supply -> !bank.contains(supply))
                .forEach(bank::add);
        String any = state.bench().getSupply(fact.first()).details().name();
        return planner.together(
                                state,
                                usual,
                                bank,
                                Set.of(any),
                                recorder.clock().instant())
                        instanceof TogetherCost kept
                ? new TwoOpenReport.Useful(kept.fillsApart(), kept.usableApart())
                : null;
    }

    private List<SupplyState> supplies(BenchState state, SupplyId one) {
        String bank = state.bench().stand().bankName(one);
        return BenchPlanner.supplies(BankNow.of(state, bank, usual(state), count));
    }

    private GaugePressure shown(BenchState state, Vessel supply) {
        return count.shown(
                supply.waterVolume(),
                supply.contents(),
                usual(state),
                state.bench().settings().surroundings().ambient().absolute());
    }

    private static Temperature usual(BenchState state) {
        return state.bench().settings().surroundings().usualTemperature().temperature();
    }
}
