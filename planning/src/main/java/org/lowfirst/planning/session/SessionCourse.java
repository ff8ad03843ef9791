package org.lowfirst.planning.session;

import java.util.List;
import org.lowfirst.planning.RankedSupply;

/**
 * What is done and what it leads to.
 *
 * @param steps the stages in the order to follow
 * @param ends what becomes of each bottle, as listed
 * @param bankAfter every supply afterwards, in its new rank
 */
public record SessionCourse(List<SessionStep> steps, List<BottleEnd> ends, List<RankedSupply> bankAfter) {

    public SessionCourse {
        steps = List.copyOf(steps);
        ends = List.copyOf(ends);
        bankAfter = List.copyOf(bankAfter);
    }
}
