package org.lowfirst.planning.ahead;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lowfirst.planning.study.kernel.Draws;

/**
 * Bands hold what they promise: rates are drawn from the guess, a history and a future from the rates, and the forecast is made
 * from the history alone.
 */
final class CalibrationTest {

    private static final int BENCHES = 120;

    @ParameterizedTest
    @ValueSource(ints = {0, 20, 250})
    void nineInTenAndHalfOfTheFuturesLieInTheBands(int days) {
        AheadAssumptions assumptions = AheadAssumptions.withLives(200);
        int in90 = 0;
        int in50 = 0;
        for (int bench = 0; bench < BENCHES; bench++) {
            UseModel truth = new UseModel(
                    new Tally(UseHistory.none(Aheads.TODAY), Aheads.TODAY, 1),
                    assumptions.guess(),
                    assumptions,
                    new Draws(bench, 77));
            UseHistory history = history(truth, days);
            AheadRequest request = Aheads.request(history, new Ordering(0, 0), bench, 70, 130, 190);
            Forecast forecast = Aheads.forecast(LookingAhead.look(request, assumptions));
            int until = daysUntil(truth, forecast.fillsLeft().middle(), forecast.longestDays());
            Band band = forecast.daysLeft();
            in90 += band.low90() <= until && until <= band.high90() ? 1 : 0;
            in50 += band.low50() <= until && until <= band.high50() ? 1 : 0;
        }
        // binomial(120, 0.9): 108 plus or minus three times 3.3; (120, 0.5): 60 plus or minus three times 5.5.
        // Both ends of a band of whole days belong to it, which adds a little at the top.
        assertThat(in90).isBetween(98, 118);
        assertThat(in50).isBetween(43, 79);
    }

    private static UseHistory history(UseModel truth, int days) {
        LocalDate from = Aheads.TODAY.minusDays(days);
        List<FilledOn> fills = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            LocalDate date = from.plusDays(day);
            for (int i = truth.comingOn(date); i > 0; i--) {
                fills.add(new FilledOn(date, Aheads.USUAL));
            }
        }
        return new UseHistory(from, days, fills);
    }

    private static int daysUntil(UseModel truth, int fillsLeft, int longest) {
        int wanted = 0;
        for (int day = 0; day < longest; day++) {
            wanted += truth.comingOn(Aheads.TODAY.plusDays(day));
            if (wanted > fillsLeft) {
                return day;
            }
        }
        return longest;
    }
}
