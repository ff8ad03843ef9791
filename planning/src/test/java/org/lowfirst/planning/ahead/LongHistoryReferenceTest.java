package org.lowfirst.planning.ahead;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.junit.jupiter.api.Test;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.FillRequest;
import org.lowfirst.planning.PlanOutcome;
import org.lowfirst.planning.study.kernel.Draws;

/**
 * After years of an even use the days left are the waiting time for one more Poisson event than there are fills in the bank: a
 * gamma distribution (textbook result, from memory; quantiles of a general-purpose library, Hipparchus).
 */
final class LongHistoryReferenceTest {

    private static final UsualFill SMALL = Aheads.usual("small", 0.1);
    private static final double A_DAY = 20;

    @Test
    void theBandIsTheGammaDistributionsAndTheCountThePlanners() {
        LocalDate from = Aheads.TODAY.minusDays(1_095);
        Draws draws = new Draws(1, 1);
        List<FilledOn> fills = new ArrayList<>();
        for (int day = 0; day < 1_095; day++) {
            for (int i = draws.poisson(A_DAY); i > 0; i--) {
                fills.add(new FilledOn(from.plusDays(day), SMALL));
            }
        }
        AheadRequest request = new AheadRequest(
                Aheads.CONDITIONS,
                Aheads.bank(70, 130, 190),
                new UseHistory(from, 1_095, fills),
                List.of(SMALL),
                List.of(),
                null,
                new Ordering(0, 0),
                Aheads.TODAY,
                1);
        Forecast forecast = Aheads.forecast(LookingAhead.look(request));
        int count = planned(request);
        assertThat(forecast.fillsLeft()).isEqualTo(new Band(count, count, count, count, count));
        GammaDistribution wait = new GammaDistribution(count + 1.0, 7.0 / forecast.fillsPerWeek());
        Band days = forecast.daysLeft();
        assertThat((double) days.middle()).isEqualTo(wait.inverseCumulativeProbability(0.5), within(2.0));
        assertThat((double) days.low90()).isEqualTo(wait.inverseCumulativeProbability(0.05), within(2.0));
        assertThat((double) days.high90()).isEqualTo(wait.inverseCumulativeProbability(0.95), within(2.0));
        assertThat(forecast.fillsPerWeek()).isEqualTo(7 * A_DAY, within(0.04 * 7 * A_DAY));
        assertThat(forecast.knowledge().shareOfHistory()).isGreaterThan(0.99);
        assertThat(forecast.knowledge().inWords()).isEqualTo("From %s fills and 1095 days.".formatted(fills.size()));
    }

    private static int planned(AheadRequest request) {
        UsualFill usual = SMALL;
        PlanOutcome plan = FillPlanner.under(request.conditions())
                .plan(new FillRequest(
                        request.bank(),
                        new BottleToFill(
                                usual.bottle(),
                                usual.waterVolume(),
                                usual.start(),
                                usual.target(),
                                usual.servicePressure())));
        return ((FillPlan) plan).fillsLeft().complete();
    }
}
