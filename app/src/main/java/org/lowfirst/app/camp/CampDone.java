package org.lowfirst.app.camp;

import java.util.List;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.camp.CampPlan;
import org.lowfirst.planning.camp.CampRequest;

/**
 * A camp with what it needs.
 *
 * @param request the camp
 * @param plan what it needs
 * @param rules at which temperature marked pressures count
 * @param units in which the sheet answers
 */
public record CampDone(CampRequest request, CampPlan plan, ReferenceRule rules, ShownUnits units) {

    /** Whether a number of supplies was found that is enough. */
    public boolean found() {
        return plan.supplies().isPresent();
    }

    ReferenceCondition standard() {
        return rules == ReferenceRule.US ? ReferenceCondition.US_70F_1ATM : ReferenceCondition.ISO_15C_1ATM;
    }

    /** What a reader of the numbers has to know, in sentences. */
    List<String> notes() {
        return List.of(
                "Litres are litres of gas at " + standard().label() + ".",
                "Bottles come at random around the use of the file, all at "
                        + units.show(request.conditions().bench()) + "; each number of supplies meets the same camps.",
                "Carriage, storing and handling of oxygen on a field have rules of their own; ask the supplier and the"
                        + " field.");
    }
}
