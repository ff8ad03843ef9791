package org.lowfirst.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;

/** A supply that is used first goes before those of lower rank. The bank of the plain fill: 62, 118 and 190 bar, 50 L, 20 C. */
class UsedFirstTest {

    private static final FillPlanner PLANNER = Planned.oxygen(Temperature.ofCelsius(20), ReferenceRule.EU);
    private static final BottleToFill BOTTLE = Planned.bottle("M-03", 5, 40, 150, 200, PressureUnit.BAR);

    private final List<SupplyState> bank = Planned.bank(50, PressureUnit.BAR, 62, 118, 190);

    @Test
    void theMiddleOneGoesBeforeTheLowest() {
        FillPlan plan = plan(in(1, Turn.FIRST));
        assertThat(Planned.order(plan)).containsExactly("B", "C");
        assertThat(plan.fill().skipped()).extracting(Skipped::supply).containsExactly("A");
        assertThat(plan.fill().skipped().get(0).reason()).isEqualTo(SkipReason.NOT_ABOVE_BOTTLE);
        assertThat(plan.fill().steps()).extracting(Step::rank).containsExactly(2, 3);
    }

    @Test
    void itGivesWhatItWouldGiveAlone() {
        FillPlan alone = plan(List.of(bank.get(1)));
        FillPlan first = plan(in(1, Turn.FIRST));
        assertThat(first.fill().steps().get(0).bottle().after().toBar())
                .isCloseTo(alone.fill().finalReading().toBar(), within(1e-9));
    }

    @Test
    void theFullestOfAllLeavesTheOthersAlone() {
        FillPlan plan = plan(in(2, Turn.FIRST));
        assertThat(Planned.order(plan)).containsExactly("C");
        assertThat(plan.reaches()).isTrue();
        assertThat(plan.fill().skipped())
                .extracting(Skipped::reason)
                .containsExactly(SkipReason.NOT_NEEDED, SkipReason.NOT_NEEDED);
    }

    @Test
    void theFillsLeftAreCountedInThatOrder() {
        assertThat(plan(bank).fillsLeft().complete()).isEqualTo(7);
        assertThat(plan(in(2, Turn.FIRST)).fillsLeft().complete()).isEqualTo(oneByOne(in(2, Turn.FIRST)));
        assertThat(plan(in(1, Turn.FIRST)).fillsLeft().complete()).isEqualTo(oneByOne(in(1, Turn.FIRST)));
    }

    @Test
    void theLowestUsedFirstIsAsIfNobodyHadSaidAnything() {
        assertThat(Planned.bottleReadings(plan(in(0, Turn.FIRST)), PressureUnit.BAR))
                .containsExactly(Planned.bottleReadings(plan(bank), PressureUnit.BAR));
        assertThat(plan(in(0, Turn.FIRST)).fillsLeft()).isEqualTo(plan(bank).fillsLeft());
    }

    @Test
    void oneHeldBackIsNotOpenedThoughItCouldGive() {
        FillPlan plan = plan(in(2, Turn.HELD_BACK));
        assertThat(Planned.order(plan)).containsExactly("A", "B");
        assertThat(plan.reaches()).isFalse();
        assertThat(plan.remedies()).isNotNull();
    }

    /** Fill after fill planned anew on what the one before leaves. */
    private int oneByOne(List<SupplyState> found) {
        List<SupplyState> now = found;
        for (int done = 0; ; done++) {
            FillPlan plan = plan(now);
            if (!plan.reaches()) {
                return done;
            }
            now = Planned.states(plan.fill().bankAfter());
        }
    }

    private List<SupplyState> in(int place, Turn turn) {
        List<SupplyState> changed = new ArrayList<>(bank);
        changed.set(place, bank.get(place).in(turn));
        return changed;
    }

    private static FillPlan plan(List<SupplyState> found) {
        assertThat(found).extracting(SupplyState::reading).doesNotContain(GaugePressure.ZERO);
        return Planned.plan(PLANNER, found, BOTTLE);
    }
}
