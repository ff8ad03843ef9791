package org.lowfirst.station.rules;

/**
 * Test interval and life of one cylinder, copied from its permit or approval.
 *
 * @param testYears [a], above 0
 * @param lifeYears [a], above 0
 * @param source permit and revision
 */
public record PermitTerms(int testYears, int lifeYears, String source) {

    public PermitTerms {
        if (testYears <= 0 || lifeYears <= 0) {
            throw new IllegalArgumentException(
                    "The test interval (" + testYears + " a) and the life (" + lifeYears + " a) must be above 0.");
        }
        if (source.isBlank()) {
            throw new IllegalArgumentException("The permit must be named.");
        }
    }
}
