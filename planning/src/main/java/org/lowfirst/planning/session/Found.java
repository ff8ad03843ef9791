package org.lowfirst.planning.session;

import java.util.List;

/**
 * What a search found.
 *
 * @param candidates plans that are best as far as number, choice and gas go, best gas first; not empty
 * @param readyAtMost bottles no plan can exceed
 * @param bestChoice whether no plan makes a better choice of bottles by the criteria above gas
 * @param lossAtLeast_mol loss no plan of that number and choice can go below [mol]
 */
record Found(List<Candidate> candidates, int readyAtMost, boolean bestChoice, double lossAtLeast_mol) {

    Found {
        candidates = List.copyOf(candidates);
    }
}
