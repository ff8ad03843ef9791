package org.lowfirst.planning.contents;

/**
 * How the limit of a gauge turns into standard deviations.
 *
 * @param repeatShare scatter of repeated readings, standard deviation / limit
 * @param slopeShare slope of the lasting error along the scale, standard deviation / (limit / full scale)
 * @param driftShare growth of the lasting error, standard deviation / limit, per square root of a year
 */
public record GaugeAssumptions(double repeatShare, double slopeShare, double driftShare) {

    static GaugeAssumptions read(SettingsFile file) {
        return new GaugeAssumptions(
                file.positive("gauge.repeat.share"),
                file.positive("gauge.slope.share"),
                file.positive("gauge.drift.share_perRootYear"));
    }
}
