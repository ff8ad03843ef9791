package org.lowfirst.app.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.station.Standing;
import org.lowfirst.station.Supply;

/**
 * The bank at one temperature, ranked.
 *
 * @param supplies rank 1 = lowest pressure first; equal pressures in order of connection
 */
record BankNow(List<Shown> supplies) {

    /**
     * @param standing when it is opened
     * @param reading what the gauge should show at that temperature
     * @param drawn true when gas has moved since the gauge was read
     */
    record Shown(Supply supply, Standing standing, GaugePressure reading, Amount contents, boolean drawn) {}

    BankNow {
        supplies = List.copyOf(supplies);
    }

    /** Every connected supply, whatever its bank. */
    static BankNow of(BenchState state, Temperature temperature, GasCount count) {
        return of(state, state.bench().bank(), temperature, count);
    }

    /** The supplies of one bank. */
    static BankNow of(BenchState state, String bank, Temperature temperature, GasCount count) {
        return of(state, state.bench().bank(bank), temperature, count);
    }

    private static BankNow of(BenchState state, List<Supply> found, Temperature temperature, GasCount count) {
        AbsolutePressure ambient =
                state.bench().settings().surroundings().ambient().absolute();
        List<Shown> supplies = new ArrayList<>();
        for (Supply supply : found) {
            SupplyAccount account = state.book().getAccount(supply.id());
            GaugePressure reading = count.shown(account.waterVolume(), account.contents(), temperature, ambient);
            supplies.add(new Shown(
                    supply,
                    state.bench().stand().standing(supply.id()),
                    atLeastZero(reading),
                    account.contents(),
                    account.drawn()));
        }
        supplies.sort(Comparator.comparing(Shown::reading));
        return new BankNow(supplies);
    }

    /** A gauge shows nothing below the surroundings. */
    private static GaugePressure atLeastZero(GaugePressure reading) {
        return reading.compareTo(GaugePressure.ZERO) < 0 ? GaugePressure.ZERO : reading;
    }
}
