package org.lowfirst.app.honest;

import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.Settings;
import org.lowfirst.station.Units;

/** A bench's units and rule set in the words of the planner. */
final class BenchUnits {

    private BenchUnits() {}

    static ShownUnits shown(Settings settings) {
        Units units = settings.units();
        return new ShownUnits(
                units.pressure(),
                units.temperature(),
                units.volume(),
                settings.language().locale());
    }

    static ReferenceRule rule(Settings settings) {
        return settings.rules() == RuleSet.US ? ReferenceRule.US : ReferenceRule.EU;
    }

    /** Condition at which contents are told as a volume of free gas. */
    static ReferenceCondition free(Settings settings) {
        return settings.rules() == RuleSet.US ? ReferenceCondition.US_70F_1ATM : ReferenceCondition.ISO_15C_1ATM;
    }
}
