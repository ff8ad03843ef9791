package org.lowfirst.app.bench;

import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.OpenFill;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Stage;

/**
 * Whether the latest stage ended elsewhere than it should have: neither equal with its supply nor at the target.
 *
 * @param state the bench after the stage
 */
record StageSurprise(BenchState state, OpenFill fill, GasCount count) {

    boolean isThere() {
        int stages = fill.stages().size();
        if (stages == 0) {
            return false;
        }
        Stage latest = fill.stages().get(stages - 1);
        SupplyAccount supply = state.book().accounts().get(latest.supply());
        if (supply == null) {
            return false;
        }
        double ended_Pa = latest.bottleAfter().pressure().gauge().pascals();
        double target_Pa = fill.target().gauge().pascals();
        double equal_Pa = equal(supply, latest.bottleAfter()).pascals();
        double allowed_Pa = 2.0
                * state.bench()
                        .settings()
                        .rules()
                        .figures()
                        .repeatability()
                        .gauge()
                        .pascals();
        return Math.abs(ended_Pa - Math.min(equal_Pa, target_Pa)) > allowed_Pa;
    }

    /** Where supply and bottle meet, counted back from what the supply holds now. */
    private GaugePressure equal(SupplyAccount supply, Reading after) {
        BottleDetails details = state.bench().getBottle(fill.bottle()).details();
        Volume bottle = details.waterVolume().stated().volume();
        AbsolutePressure ambient =
                state.bench().settings().surroundings().ambient().absolute();
        double bottle_mol =
                count.findContents(bottle, after, ambient).orElse(Amount.NONE).moles();
        Amount all = new Amount(supply.contents().moles() + bottle_mol);
        Volume both = new Volume(supply.waterVolume().cubicMetres() + bottle.cubicMetres());
        Temperature temperature = after.temperature().temperature();
        return count.shown(both, all, temperature, ambient);
    }
}
