package org.lowfirst.app.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.PlanOutcome;
import org.lowfirst.station.OpenFill;
import org.lowfirst.station.Supply;

/** What to show of the fill that is open. */
public sealed interface Guide {

    /** No fill is open. */
    record NoFill() implements Guide {}

    /**
     * The link or the person was away: ask which valves are open before going on.
     *
     * @param choices the states the bench can be in, each with where to go on
     */
    record AskValves(OpenFill fill, List<Choice> choices) implements Guide {

        public AskValves {
            choices = List.copyOf(choices);
        }

        /**
         * @param valves how the valves stand if this is the one
         * @param goOn where the guide goes on; always by way of a state with the transfer valve shut unless gas is flowing
         */
        public record Choice(List<ValveState> valves, Position goOn) {

            public Choice {
                valves = List.copyOf(valves);
            }
        }
    }

    /**
     * One step to do.
     *
     * @param supply the supply this stage is on; null before and after the stages
     * @param valves every valve of the bench as it stands once the step is done
     * @param expected what the bottle's gauge should show when this stage ends; null when nothing flows
     * @param neverAbove what the bottle's gauge must never pass
     * @param cautions what to mind here
     * @param next the step after this one; null when a reading must be entered first, and after the hose is vented when another
     *     bottle of the session takes its turn
     * @param plan the rest of the fill, planned from what was read last
     */
    record Step(
            OpenFill fill,
            Position position,
            @Nullable Supply supply,
            List<ValveState> valves,
            @Nullable GaugePressure expected,
            GaugePressure neverAbove,
            List<Caution> cautions,
            @Nullable Position next,
            PlanOutcome plan)
            implements Guide {

        public Step {
            valves = List.copyOf(valves);
            cautions = List.copyOf(cautions);
        }
    }
}
