package org.lowfirst.planning.warm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.lowfirst.planning.warm.FastestFill.Way;
import org.lowfirst.transfer.warm.RiseRate;
import org.lowfirst.transfer.warm.WarmRefusal;

class FastestFillTest {

    private static FillInTimeRequest request() {
        return Shop.fill(13.7, 40, 62, 118, 190, 230);
    }

    @Test
    void farFromFullTheLimitItselfDoes() {
        FastestFill fastest = FastestFill.find(request(), 12).orElseThrow();
        assertThat(fastest.others()).hasSize(1);
        assertThat(fastest.schedule().request().pace().topUps()).isZero();
        assertThat(fastest.schedule().percentOfWanted()).isGreaterThanOrEqualTo(88.0);
    }

    @Test
    void nearFullItNeedsRestsAndKeepsTheLimit() {
        FastestFill fastest = FastestFill.find(request(), 3).orElseThrow();
        assertThat(fastest.schedule().percentOfWanted()).isGreaterThanOrEqualTo(97.0);
        assertThat(fastest.schedule().request().pace().rate())
                .isLessThanOrEqualTo(RiseRate.ofBarPerMinute(13.7 + 1e-9));
        assertThat(fastest.others()).isSortedAccordingTo((a, b) -> Double.compare(a.total_s(), b.total_s()));
        Way first = fastest.others().get(0);
        assertThat(fastest.schedule().total_s()).isCloseTo(first.total_s(), within(1e-6));
    }

    @Test
    void aLittleLessTimeWouldNotDo() {
        FillInTimeRequest request = request();
        Way way = FastestFill.find(request, 3).orElseThrow().others().get(0);
        Pace shorter = way.topUps() == 0
                ? request.pace().with(way.rate().times(1.03))
                : request.pace().with(way.rate()).toppedUp(way.topUps(), 0.97 * way.rest_s());
        assertThat(FillInTime.plan(request.with(shorter)).orElseThrow().percentOfWanted())
                .isLessThan(97.0);
    }

    @Test
    void closerToFullTakesLonger() {
        double before = 0;
        for (double percentShort : new double[] {12, 6, 4, 3}) {
            double total = FastestFill.find(request(), percentShort)
                    .orElseThrow()
                    .schedule()
                    .total_s();
            assertThat(total).isGreaterThan(before);
            before = total;
        }
    }

    @Test
    void aBankThatIsTooLowIsRefusedWithTheBestThatWasFound() {
        WarmRefusal refusal = Shop.refusal(FastestFill.find(Shop.fill(13.7, 40, 62, 118), 3));
        assertThat(refusal).isInstanceOf(WarmRefusal.NotReachable.class);
        WarmRefusal.NotReachable not = (WarmRefusal.NotReachable) refusal;
        assertThat(not.best()).isBetween(40.0, 70.0);
        assertThat(not.wanted()).isEqualTo(97.0);
        assertThat(Shop.refusal(FastestFill.find(request(), 0)).code()).isEqualTo("number-out-of-range");
    }
}
