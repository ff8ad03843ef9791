package org.lowfirst.app.plan;

import java.util.List;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.plan.CylinderReader.Line;
import org.lowfirst.app.plan.CylinderReader.SupplyLine;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.SupplyState;

/**
 * A bank as a file tells it.
 *
 * @param conditions gas, temperatures and hose
 * @param rules whose reference temperature counts
 * @param units the units the file uses, in which the sheet answers
 * @param lines the supplies in the order of the file, at least one
 */
public record FileBank(Conditions conditions, ReferenceRule rules, ShownUnits units, List<SupplyLine> lines) {

    public FileBank {
        lines = List.copyOf(lines);
    }

    public List<SupplyState> supplies() {
        return lines.stream().map(SupplyLine::supply).toList();
    }

    /** The condition at which an amount of gas is stated as litres. */
    public ReferenceCondition standard() {
        return rules == ReferenceRule.US ? ReferenceCondition.US_70F_1ATM : ReferenceCondition.ISO_15C_1ATM;
    }

    /** Litres of gas at {@link #standard()}. */
    public double standardLitres(Amount amount) {
        return conditions.gas().freeVolume(amount, standard()).toLitres();
    }

    /** Warns of readings in another unit than the first supply's, of supplies and these others. */
    public void warnOfMixedUnits(List<? extends Line> others, Problems problems) {
        MixedUnits mixed = new MixedUnits(problems);
        mixed.warn(lines.get(0).reading(), lines);
        mixed.warn(lines.get(0).reading(), others);
    }
}
