package org.lowfirst.planning.session;

/**
 * How hard to look. Counted in steps of the search, not in time, so that the same input gives the same plan on any machine.
 *
 * @param nodes steps of the exact search, at least 1; a million take about a tenth of a second
 * @param rounds rounds of improving the bound and the plan of a large session, at least 1
 */
public record Effort(long nodes, int rounds) {

    public static final Effort USUAL = new Effort(4_500_000, 1_500);

    public Effort {
        if (nodes < 1 || rounds < 1) {
            throw new IllegalArgumentException(
                    "The effort (" + nodes + " nodes, " + rounds + " rounds) must be at least 1.");
        }
    }
}
