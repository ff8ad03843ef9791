package org.lowfirst.station.rules;

import java.util.List;
import org.lowfirst.gas.GaugePressure;

/** What may be done with the cylinder today. */
public sealed interface Fitness {

    /** It may be filled. */
    record Fit() implements Fitness {}

    /** It may be filled; the warnings are to be shown. */
    record FitWithWarnings(List<Finding> warnings) implements Fitness {

        public FitWithWarnings {
            warnings = List.copyOf(warnings);
        }
    }

    /** It may be filled, but not to what was wanted. */
    record TargetTooHigh(List<Finding> refusals, List<PressureLimit> limits) implements Fitness {

        public TargetTooHigh {
            refusals = List.copyOf(refusals);
            limits = List.copyOf(limits);
        }
    }

    /** What it holds may be used up; no fill, not even a part. */
    record UseUpOnly(List<Finding> refusals, GaugePressure holds) implements Fitness {

        public UseUpOnly {
            refusals = List.copyOf(refusals);
        }
    }

    /** Not to be filled until something is found out or done. */
    record Unfit(List<Finding> refusals) implements Fitness {

        public Unfit {
            refusals = List.copyOf(refusals);
        }
    }

    /** Not to be filled any more. */
    record LifeOver(List<Finding> refusals) implements Fitness {

        public LifeOver {
            refusals = List.copyOf(refusals);
        }
    }

    /** Whether a fill to what was wanted may be guided. */
    default boolean mayBeFilled() {
        return this instanceof Fit || this instanceof FitWithWarnings;
    }
}
