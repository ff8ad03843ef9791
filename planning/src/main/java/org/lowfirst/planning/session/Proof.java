package org.lowfirst.planning.session;

import org.lowfirst.gas.Amount;

/**
 * What is proven about a plan against all plans (see the package's description of a plan).
 *
 * @param readyAtMost bottles that no plan of whole stages can exceed
 * @param bestReady true when no plan makes more bottles ready
 * @param bestChoice true when, in addition, no plan makes a better choice of bottles by the criteria above gas
 * @param gasAtMost gas that no plan with that number ready, and no better choice, can leave above the highest stop
 * @param bestGas true when the plan leaves no more than {@code gasStep} less than that
 * @param gasStep differences of gas below this do not count: half a bar in the largest supply, less than a gauge shows
 * @param nodes steps the search took
 * @param stopped whether somebody stopped the search; the plan is then the best found so far
 */
public record Proof(
        int readyAtMost,
        boolean bestReady,
        boolean bestChoice,
        Amount gasAtMost,
        boolean bestGas,
        Amount gasStep,
        long nodes,
        boolean stopped) {}
