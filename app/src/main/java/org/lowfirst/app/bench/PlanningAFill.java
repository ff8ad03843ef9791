package org.lowfirst.app.bench;

import java.util.List;
import org.lowfirst.planning.PlanOutcome;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;

/** Plans a fill on the bank as it stands now. Enters nothing. */
public final class PlanningAFill {

    private final Recorder recorder;
    private final BenchPlanner planner;

    PlanningAFill(Recorder recorder, BenchPlanner planner) {
        this.recorder = recorder;
        this.planner = planner;
    }

    /**
     * @param target settled gauge reading wanted
     * @param before what the bottle's gauge shows, settled, at the temperature all is planned for
     * @throws java.util.NoSuchElementException when there is no such bench or bottle
     */
    public PlanOutcome plan(BenchId bench, BottleId bottle, StatedPressure target, Reading before) {
        BenchState state = recorder.getState(bench);
        return planner.plan(state, state.bench().usualBank(), bottle, target, before);
    }

    /**
     * One bottle of several.
     *
     * @param before settled; all at one temperature
     */
    public record Wanted(BottleId bottle, StatedPressure target, Reading before) {}

    /**
     * Plans several bottles one after another from the usual bank, each on what the one before leaves; one that is refused leaves
     * the bank as it is.
     *
     * @return one outcome for each, in the order given
     */
    public List<PlanOutcome> oneAfterAnother(BenchId bench, List<Wanted> bottles) {
        BenchState state = recorder.getState(bench);
        return planner.inOrder(state, state.bench().usualBank(), bottles);
    }

    /** The same from one of several banks, by its name; empty for the one without a name. */
    public PlanOutcome plan(BenchId bench, String bank, BottleId bottle, StatedPressure target, Reading before) {
        return planner.plan(recorder.getState(bench), bank, bottle, target, before);
    }
}
