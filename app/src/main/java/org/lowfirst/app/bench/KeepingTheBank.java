package org.lowfirst.app.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Command.AmendSupply;
import org.lowfirst.station.Command.ConnectSupply;
import org.lowfirst.station.Command.Enter;
import org.lowfirst.station.Command.RecordTwoOpenTogether;
import org.lowfirst.station.Command.RemoveSupply;
import org.lowfirst.station.Command.TakeInSupply;
import org.lowfirst.station.Settings;
import org.lowfirst.station.StandFact;
import org.lowfirst.station.Supply;

/** Shows the bank and keeps it: supplies come, go, and are sometimes open together. */
public final class KeepingTheBank {

    private final Recorder recorder;
    private final GasCount count;

    KeepingTheBank(Recorder recorder, GasCount count) {
        this.recorder = recorder;
        this.count = count;
    }

    /**
     * The bank now at the bench's usual temperature, rank 1 first; of several banks one after the other.
     *
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public BankView bank(BenchId bench) {
        BenchState state = recorder.getState(bench);
        Temperature usual =
                state.bench().settings().surroundings().usualTemperature().temperature();
        List<SupplyView> views = new ArrayList<>();
        for (String name : state.bench().bankNames()) {
            views.addAll(views(state, name, usual));
        }
        return new BankView(state.bench(), views);
    }

    private List<SupplyView> views(BenchState state, String bank, Temperature usual) {
        Settings settings = state.bench().settings();
        List<SupplyView> views = new ArrayList<>();
        for (BankNow.Shown shown : BankNow.of(state, bank, usual, count).supplies()) {
            Supply supply = shown.supply();
            views.add(new SupplyView(
                    supply,
                    bank,
                    views.size() + 1,
                    shown.standing(),
                    shown.reading(),
                    shown.drawn(),
                    shown.contents(),
                    level(shown, settings, usual),
                    Duration.between(supply.latest().at(), recorder.clock().instant())));
        }
        return views;
    }

    /** Contents as a share of what a supply holds that reads full at the usual temperature. */
    private @Nullable Double level(BankNow.Shown shown, Settings settings, Temperature usual) {
        Volume water = shown.supply().details().waterVolume().stated().volume();
        return count.findContents(
                        water,
                        settings.fullSupply().gauge(),
                        usual,
                        settings.surroundings().ambient().absolute())
                .filter(full -> full.moles() > 0.0)
                .map(full -> shown.contents().moles() / full.moles())
                .orElse(null);
    }

    public Recording connect(BenchId bench, ConnectSupply command, Submission submission) {
        return recorder.record(bench, command, submission);
    }

    public Recording amend(BenchId bench, AmendSupply command, Submission submission) {
        return recorder.record(bench, command, submission);
    }

    public Recording remove(BenchId bench, RemoveSupply command, Submission submission) {
        return recorder.record(bench, command, submission);
    }

    /** Connects a supply and says at once how it stands. */
    public Recording takeIn(BenchId bench, TakeInSupply command, Submission submission) {
        return recorder.record(bench, command, submission);
    }

    /** Says how a supply stands: held back, tagged out, used first, released, delivered with, in which bank. */
    public Recording stand(BenchId bench, StandFact fact, Submission submission) {
        return recorder.record(bench, new Enter(fact), submission);
    }

    public Recording recordTwoOpenTogether(BenchId bench, RecordTwoOpenTogether command, Submission submission) {
        return recorder.record(bench, command, submission);
    }
}
