package org.lowfirst.app.honest;

import java.util.List;
import org.lowfirst.gas.GaugePressure;

/**
 * Where the valve of a fill under way is shut while its gas is warm, on a bench that allows stops above the mark.
 *
 * @param shutAt gauge reading at which the bottle has what was wanted
 * @param neverAbove gauge reading beyond which it would hold more than marking and rule book permit
 * @param sentences what it settles to, what the limit is and how warm the gas is taken to be
 */
public record StepStop(GaugePressure shutAt, GaugePressure neverAbove, List<String> sentences) {

    public StepStop {
        sentences = List.copyOf(sentences);
    }
}
