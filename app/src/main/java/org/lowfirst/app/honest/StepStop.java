package org.lowfirst.app.honest;

import java.util.List;
import org.lowfirst.gas.GaugePressure;

/**
 * Where the valve of a fill under way is shut while its gas is warm, on a bench that allows stops above the mark.
 *
 * @param shutAt gauge reading at which the bottle has what was wanted
 * @param neverAbove gauge reading beyond which it would hold more than marking and rule book permit
 * @param settles what it settles to when shut there, in words
 * @param limit what the limit is and why, in words
 * @param gas how warm the gas is taken to be when it is shut, in words
 */
public record StepStop(GaugePressure shutAt, GaugePressure neverAbove, String settles, String limit, String gas) {

    /** All of it, for a step that ends where the valve is shut by the gauge. */
    public List<String> sentences() {
        return List.of(settles, limit, gas);
    }
}
