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
        Reading before =
                stages == 1 ? fill.before() : fill.stages().get(stages - 2).bottleAfter();
        SupplyAccount supply = state.book().accounts().get(latest.supply());
        if (supply == null) {
            return false;
        }
        double ended_Pa = latest.bottleAfter().pressure().gauge().pascals();
        double target_Pa = fill.target().gauge().pascals();
        double equal_Pa = equal(supply, before, latest.bottleAfter()).pascals();
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
    private GaugePressure equal(SupplyAccount supply, Reading before, Reading after) {
        BottleDetails details = state.bench().getBottle(fill.bottle()).details();
        Volume bottle = details.waterVolume().stated().volume();
        AbsolutePressure ambient =
                state.bench().settings().surroundings().ambient().absolute();
        double found_mol = count.contents(bottle, before, ambient).moles();
        double gained_mol = count.contents(bottle, after, ambient).moles() - found_mol;
        double all_mol = supply.contents().moles() + gained_mol + found_mol;
        Volume both = new Volume(supply.waterVolume().cubicMetres() + bottle.cubicMetres());
        Temperature temperature = after.temperature().temperature();
        return count.shown(both, new Amount(Math.max(0.0, all_mol)), temperature, ambient);
    }
}
