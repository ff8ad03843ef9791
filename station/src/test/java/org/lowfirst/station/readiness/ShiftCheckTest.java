package org.lowfirst.station.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lowfirst.gas.GaugePressure;

class ShiftCheckTest {

    private static final Instant START = Instant.parse("2026-06-14T06:00:00Z");
    private static final Group JUMP = new Group("jump kits", 1, GaugePressure.ofPsi(1_000), GaugePressure.ofPsi(1_800));
    private static final Group RIG = new Group("rig", 2, GaugePressure.ofPsi(500), GaugePressure.ofPsi(1_500));

    private static GroupBottle bottle(String name, Group group, Place place, @Nullable Integer psi) {
        return psi == null
                ? new GroupBottle(name, group.name(), place, null, null, true)
                : new GroupBottle(name, group.name(), place, GaugePressure.ofPsi(psi), START.plusSeconds(600), true);
    }

    @ParameterizedTest(name = "{0} psi: {1}")
    @CsvSource({"999, SWAP", "1000, REFILL", "1799, REFILL", "1800, READY", "2100, READY"})
    void aBottleIsSwappedBelowTheFloorAndRefilledBelowTheWish(int psi, ShiftState state) {
        ShiftCheck check = ShiftCheck.of(List.of(JUMP), List.of(bottle("J-1", JUMP, Place.IN_SERVICE, psi)), START);

        assertThat(check.lines()).extracting(ShiftLine::state).containsExactly(state);
    }

    @Test
    void aReadingFromBeforeTheShiftDoesNotCount() {
        GroupBottle old = new GroupBottle(
                "J-1", JUMP.name(), Place.IN_SERVICE, GaugePressure.ofPsi(1_900), START.minusSeconds(1), true);

        assertThat(ShiftCheck.of(List.of(JUMP), List.of(old), START).lines())
                .extracting(ShiftLine::state)
                .containsExactly(ShiftState.READ);
    }

    @Test
    void eachSpareIsGivenOnceAndTheRestAreToBeFilled() {
        ShiftCheck check = ShiftCheck.of(
                List.of(RIG, JUMP),
                List.of(
                        bottle("R-1", RIG, Place.IN_SERVICE, 1_600),
                        bottle("J-2", JUMP, Place.IN_SERVICE, 300),
                        bottle("J-1", JUMP, Place.IN_SERVICE, 700),
                        bottle("J-3", JUMP, Place.IN_SERVICE, 1_500),
                        bottle("J-8", JUMP, Place.SPARE, 1_850),
                        bottle("J-9", JUMP, Place.SPARE, 1_200),
                        bottle("R-9", RIG, Place.SPARE, 1_900),
                        bottle("J-7", JUMP, Place.AWAY, 2_000)),
                START);

        assertThat(check.lines())
                .extracting(line -> line.bottle().name() + " " + line.state() + " " + line.swapFor())
                .containsExactly("J-1 SWAP J-8", "J-2 SWAP null", "J-3 REFILL null", "R-1 READY null");
        assertThat(check.spares()).extracting(GroupBottle::name).containsExactly("J-9");
        assertThat(check.ready(RIG)).isEqualTo(1);
        assertThat(check.ready(JUMP)).isZero();
    }

    @Test
    void afterACallWhatIsBelowTheFloorIsRefilledFirst() {
        RefillList list = RefillList.of(
                List.of(JUMP, RIG),
                List.of(
                        bottle("R-1", RIG, Place.IN_SERVICE, 400),
                        bottle("J-1", JUMP, Place.IN_SERVICE, 1_700),
                        bottle("J-2", JUMP, Place.SPARE, 1_100),
                        bottle("J-3", JUMP, Place.IN_SERVICE, 200),
                        bottle("J-4", JUMP, Place.IN_SERVICE, 1_900),
                        bottle("J-5", JUMP, Place.IN_SERVICE, null),
                        bottle("J-6", JUMP, Place.AWAY, 100),
                        new GroupBottle("R-2", RIG.name(), Place.SPARE, GaugePressure.ofPsi(100), START, false)));

        assertThat(list.refill())
                .extracting(line ->
                        line.bottle().name() + " " + Math.round(line.missing().toPsi()))
                .containsExactly("J-3 1600", "R-1 1100", "J-2 700", "J-1 100");
        assertThat(list.unfit()).extracting(GroupBottle::name).containsExactly("R-2");
        assertThat(list.unread()).extracting(GroupBottle::name).containsExactly("J-5");
    }

    @Test
    void aFloorAboveTheWishAndAGroupThatIsNotThereAreSlips() {
        assertThatThrownBy(() -> new Group("x", 1, GaugePressure.ofPsi(2), GaugePressure.ofPsi(1)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(
                        () -> ShiftCheck.of(List.of(JUMP), List.of(bottle("R-1", RIG, Place.IN_SERVICE, 400)), START))
                .hasMessageContaining("The group of R-1 (rig) must be one of [jump kits]");
    }

    /** Every bottle in service has one line, no spare is given twice, and none below the wish is given at all. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void nothingIsForgottenAndNothingGivenTwice(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 100; round++) {
            List<GroupBottle> bottles = new ArrayList<>();
            for (int i = 0; i < 25; i++) {
                Group group = random.nextBoolean() ? JUMP : RIG;
                Integer psi = random.nextInt(8) == 0 ? null : random.nextInt(2_200);
                bottles.add(bottle("N-" + i, group, List.of(Place.values()).get(random.nextInt(3)), psi));
            }
            ShiftCheck check = ShiftCheck.of(List.of(JUMP, RIG), bottles, START);

            assertThat(check.lines())
                    .extracting(ShiftLine::bottle)
                    .containsExactlyInAnyOrderElementsOf(bottles.stream()
                            .filter(bottle -> bottle.place() == Place.IN_SERVICE)
                            .toList());
            Set<String> given = new HashSet<>();
            for (ShiftLine line : check.lines()) {
                if (line.swapFor() != null) {
                    assertThat(line.state()).isEqualTo(ShiftState.SWAP);
                    assertThat(given.add(line.swapFor())).isTrue();
                    GroupBottle spare = bottles.stream()
                            .filter(bottle -> bottle.name().equals(line.swapFor()))
                            .findFirst()
                            .orElseThrow();
                    assertThat(spare.group()).isEqualTo(line.group().name());
                    assertThat(ShiftCheck.state(spare, line.group(), START)).isEqualTo(ShiftState.READY);
                }
            }
        }
    }
}
