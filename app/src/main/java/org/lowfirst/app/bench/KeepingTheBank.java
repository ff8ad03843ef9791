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
import org.lowfirst.station.Command.RecordTwoOpenTogether;
import org.lowfirst.station.Command.RemoveSupply;
import org.lowfirst.station.Settings;
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
     * The bank now at the bench's usual temperature, rank 1 first.
     *
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    public BankView bank(BenchId bench) {
        BenchState state = recorder.getState(bench);
        Settings settings = state.bench().settings();
        Temperature usual = settings.surroundings().usualTemperature().temperature();
        List<SupplyView> views = new ArrayList<>();
        for (BankNow.Shown shown : BankNow.of(state, usual, count).supplies()) {
            Supply supply = shown.supply();
            views.add(new SupplyView(
                    supply,
                    views.size() + 1,
                    shown.reading(),
                    shown.drawn(),
                    shown.contents(),
                    level(shown, settings, usual),
                    Duration.between(supply.latest().at(), recorder.clock().instant())));
        }
        return new BankView(state.bench(), views);
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

    public Recording recordTwoOpenTogether(BenchId bench, RecordTwoOpenTogether command, Submission submission) {
        return recorder.record(bench, command, submission);
    }
}
