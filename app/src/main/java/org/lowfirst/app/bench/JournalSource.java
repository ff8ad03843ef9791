package org.lowfirst.app.bench;

import java.time.Instant;
import java.util.List;
import org.lowfirst.app.honest.BenchSource;
import org.lowfirst.app.journal.Head;
import org.lowfirst.app.journal.StoredEntry;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Timeline;

/** The benches of a journal, for those who judge readings. */
record JournalSource(Recorder recorder, GasCount count, PermittedPressure permitted) implements BenchSource {

    @Override
    public Standing getStanding(BenchId bench) {
        BenchState state = recorder.getState(bench);
        return new Standing(state.bench(), state.head());
    }

    @Override
    public List<Entry> listEntries(BenchId bench, Head head) {
        return list(bench, 1, head);
    }

    @Override
    public List<Entry> listLatest(BenchId bench, Head head, int most) {
        return list(bench, Math.max(1, head.seq() - most + 1), head);
    }

    private List<Entry> list(BenchId bench, long first, Head head) {
        return Timeline.of(recorder.journal().listFrom(bench, first).stream()
                .map(StoredEntry::entry)
                .filter(entry -> entry.seq() <= head.seq())
                .toList());
    }

    @Override
    public List<Banked> listBank(BenchId bench, Temperature temperature) {
        return listBank(bench, recorder.getState(bench).bench().usualBank(), temperature);
    }

    @Override
    public List<Banked> listBank(BenchId bench, String bank, Temperature temperature) {
        return BankNow.of(recorder.getState(bench), bank, temperature, count).supplies().stream()
                .filter(shown -> shown.standing().turn().planned())
                .map(shown -> new Banked(
                        shown.supply(),
                        shown.reading(),
                        BenchPlanner.turn(shown.standing().turn())))
                .toList();
    }

    @Override
    public GaugePressure permitted(Bench bench, BottleId bottle, Instant when) {
        return permitted.atReference(bench, bottle, when);
    }

    @Override
    public Instant now() {
        return recorder.clock().instant();
    }

    @Override
    public EquationOfState gas() {
        return count.gas();
    }
}
