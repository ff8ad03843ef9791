package org.lowfirst.planning.session;

import java.util.List;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.planning.ShownUnits;

/**
 * The plan of a session.
 *
 * @param request what was asked
 * @param gas the gas, to state amounts as volumes
 * @param course what is done and what it leads to
 * @param score what it comes to
 * @param proof what is proven about it
 * @param advice what to make of it
 */
public record SessionPlan(
        SessionRequest request,
        EquationOfState gas,
        SessionCourse course,
        SessionScore score,
        Proof proof,
        SessionAdvice advice)
        implements SessionOutcome {

    /** The plan explained in full sentences. */
    public List<String> notes(ShownUnits units) {
        return new SessionSentences(this, units).notes();
    }
}
