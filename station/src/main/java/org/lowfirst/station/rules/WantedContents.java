package org.lowfirst.station.rules;

/** Holds the contents wanted against a pressure limit. */
final class WantedContents {

    /** Below what any gauge shows, above the error of computing one settled pressure from another [Pa]. */
    private static final double TOLERANCE_PA = 100.0;

    private WantedContents() {}

    static Finding against(PressureLimit limit, CylinderFacts facts) {
        PressureAt most = limit.most();
        Measure allowed = new Measure.OfPressure(most.pressure(), most.temperature());
        if (facts.wanted().isEmpty()) {
            return Finding.allow(limit.rule(), Measure.NOTHING, allowed);
        }
        for (PressureAt wanted : facts.wanted()) {
            if (wanted.isAt(most.temperature())) {
                Measure measured = new Measure.OfPressure(wanted.pressure(), wanted.temperature());
                return wanted.pressure().pascals() > most.pressure().pascals() + TOLERANCE_PA
                        ? Finding.refuse(limit.rule(), Advice.CAP_TARGET, measured, allowed)
                        : Finding.allow(limit.rule(), measured, allowed);
            }
        }
        return Finding.refuse(limit.rule(), Advice.STATE_CONTENTS_AT_TEMPERATURE, Measure.NOTHING, allowed);
    }
}
