package org.lowfirst.planning.study;

/**
 * How much is simulated.
 *
 * @param years years counted in each run, of 365 days
 * @param warmUpYears years before them that are not counted, so that a run does not start with a bank of full supplies
 * @param runs how often the years are lived through, each time with other chance
 * @param seed where chance starts; the same seed gives the same study
 */
public record Extent(int years, int warmUpYears, long runs, long seed) {

    /** One year of warming up. */
    public static Extent of(int years, long runs, long seed) {
        return new Extent(years, 1, runs, seed);
    }
}
