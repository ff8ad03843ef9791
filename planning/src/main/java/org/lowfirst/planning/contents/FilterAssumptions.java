package org.lowfirst.planning.contents;

/**
 * What the filter of contents takes for ordinary.
 *
 * @param ordinaryLossShare share of the contents lost unnoticed, standard deviation per square root of a day
 * @param surprise how many standard deviations off a reading must be to start the estimate afresh
 */
public record FilterAssumptions(double ordinaryLossShare, double surprise) {

    static FilterAssumptions read(SettingsFile file) {
        return new FilterAssumptions(
                file.positive("filter.ordinaryLoss.share_perRootDay"), file.positive("filter.surprise.sd"));
    }
}
