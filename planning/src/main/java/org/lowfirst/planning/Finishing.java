package org.lowfirst.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;

/** Looks for what would make a fill finish that cannot. */
final class Finishing {

    private static final int HALVINGS = 60;

    private static final Comparator<ExchangeChoice> BEST_FIRST = Comparator.comparing(
                    (ExchangeChoice c) -> !c.reaches())
            .thenComparing(
                    c -> c.withFull() == null ? 0 : -c.withFull().fillsLeft().complete())
            .thenComparing(c -> c.leastReading() == null)
            .thenComparing(ExchangeChoice::returned);

    private final Bench bench;
    private final BankState bank;
    private final Charge charge;
    private final @Nullable GaugePressure fullSupply;

    Finishing(Bench bench, BankState bank, Charge charge, @Nullable GaugePressure fullSupply) {
        this.bench = bench;
        this.bank = bank;
        this.charge = charge;
        this.fullSupply = fullSupply;
    }

    Remedies remedies(Fill fill) {
        List<ExchangeChoice> choices = new ArrayList<>(bank.size());
        for (int place = 0; place < bank.size(); place++) {
            RankedSupply supply = bank.supplies().get(place);
            if (!supply.heldBack()) {
                choices.add(new ExchangeChoice(
                        supply.name(), supply.reading(), supply.contents(), leastReading(place), withFull(place)));
            }
        }
        choices.sort(BEST_FIRST);
        return new Remedies(fill.steps().isEmpty() ? null : fill.finalReading(), choices);
    }

    private ExchangeChoice.@Nullable WithFull withFull(int place) {
        if (fullSupply == null) {
            return null;
        }
        BankState exchanged = bank.exchanged(place, fullSupply, bench.now());
        Cascade cascade = new Cascade(exchanged, bench);
        double end_mol = cascade.fill(charge, Habit.LOWEST_FIRST);
        return new ExchangeChoice.WithFull(
                cascade.reached(),
                bench.now().reading(end_mol / charge.volume_m3()),
                Counting.fillsLeft(exchanged, bench, charge, Habit.LOWEST_FIRST));
    }

    /** The end of a fill rises with the gas in any one supply, so the least contents are found by halving. */
    private @Nullable GaugePressure leastReading(int place) {
        double volume_m3 = bank.supplies().get(place).waterVolume().cubicMetres();
        double low_mol = volume_m3 * charge.start_mol() / charge.volume_m3();
        double high_mol = volume_m3 * bench.now().density_molPerM3(bench.highestReading());
        if (!reachesWith(place, high_mol)) {
            return null;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle_mol = 0.5 * (low_mol + high_mol);
            if (reachesWith(place, middle_mol)) {
                high_mol = middle_mol;
            } else {
                low_mol = middle_mol;
            }
        }
        return bench.now().reading(high_mol / volume_m3);
    }

    private boolean reachesWith(int place, double contents_mol) {
        Cascade cascade = new Cascade(bank, bench);
        cascade.setContents(place, contents_mol);
        cascade.fill(charge, Habit.LOWEST_FIRST);
        return cascade.reached();
    }
}
