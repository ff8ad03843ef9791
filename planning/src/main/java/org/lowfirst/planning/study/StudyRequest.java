package org.lowfirst.planning.study;

import java.util.List;

/**
 * What is to be compared. Every alternative meets the same bottles on the same days at the same temperatures.
 *
 * @param site where the bench stands
 * @param demand the bottles that come
 * @param prices what is paid
 * @param alternatives the ways to run the bench
 * @param extent how much is simulated
 */
public record StudyRequest(Site site, Demand demand, Prices prices, List<Alternative> alternatives, Extent extent) {

    public StudyRequest {
        alternatives = List.copyOf(alternatives);
    }
}
