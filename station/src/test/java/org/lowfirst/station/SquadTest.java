package org.lowfirst.station;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.lowfirst.station.Command.Enter;
import org.lowfirst.station.due.Upkeep;
import org.lowfirst.station.readiness.Place;

/** Equipment that is looked after and bottles kept ready, as the journal leaves them. */
final class SquadTest {

    private static Squad squad(Fact... more) {
        Journal journal = Journal.given(Squads.facts());
        for (Fact fact : more) {
            journal.add(fact);
        }
        return journal.bench().areas().care().squad();
    }

    private static Decision enter(CareFact fact) {
        return Journal.given(Squads.facts()).when(new Enter(fact));
    }

    @Test
    void aSwapPutsTheSpareInServiceAndTheOtherOnTheShelf() {
        Squad after = squad(new CareFact.BottlesSwapped(Larkmoor.M_03, Squads.SPARE));
        assertThat(after.assigned())
                .containsEntry(Larkmoor.M_03, new Assignment("rescue", Place.SPARE))
                .containsEntry(Squads.SPARE, new Assignment("rescue", Place.IN_SERVICE));
    }

    @Test
    void bottlesOfAGroupThatEndedBelongToNone() {
        Squad after = squad(new CareFact.GroupEnded("rescue"));
        assertThat(after.groups()).isEmpty();
        assertThat(after.assigned()).isEmpty();
        assertThat(squad(new CareFact.BottleAssigned(Larkmoor.M_03, null, Place.AWAY))
                        .assigned())
                .containsOnlyKeys(Squads.SPARE);
    }

    @Test
    void readingsCountFromTheLatestShiftOn() {
        assertThat(squad().shift()).isNull();
        assertThat(squad(
                                new CareFact.ShiftStarted(Larkmoor.TEN),
                                new CareFact.ShiftStarted(Larkmoor.TEN.plusSeconds(60)))
                        .shift())
                .isEqualTo(Larkmoor.TEN.plusSeconds(60));
    }

    @Test
    void aFloorAboveTheWishIsRefusedWithBoth() {
        GroupDetails group = new GroupDetails("first line", 1, Larkmoor.bar("160"), Larkmoor.bar("150"));
        assertThat(enter(new CareFact.GroupDescribed(group)))
                .isEqualTo(new Refused(Rule.FLOOR_ABOVE_WISH, "first line", Larkmoor.bar("160"), Larkmoor.bar("150")));
        assertThat(enter(new CareFact.GroupDescribed(
                        new GroupDetails("first line", 0, Larkmoor.bar("100"), Larkmoor.bar("150")))))
                .isEqualTo(Refused.of(Rule.PRIORITY_BELOW_ONE, "0"));
        assertThat(enter(new CareFact.GroupDescribed(
                        new GroupDetails("first line", 1, Larkmoor.bar("-1"), Larkmoor.bar("150")))))
                .isInstanceOfSatisfying(
                        Refused.class, refused -> assertThat(refused.rule()).isEqualTo(Rule.FLOOR_BELOW_ZERO));
    }

    @Test
    void aWishTheBottleCanNeverHoldIsAskedAbout() {
        Journal journal = Journal.given(
                new CareFact.GroupDescribed(new GroupDetails("heavy", 2, Larkmoor.bar("200"), Larkmoor.bar("300"))));
        CareFact assigned = new CareFact.BottleAssigned(Larkmoor.M_03, "heavy", Place.SPARE);
        assertThat(journal.when(new Enter(assigned)))
                .isEqualTo(new Refused(
                        Rule.WISH_ABOVE_SERVICE_PRESSURE, "M-03", Larkmoor.bar("300"), Larkmoor.bar("200")));
        assertThat(journal.when(new Enter(assigned), true)).isInstanceOf(Accepted.class);
    }

    @Test
    void onlyBottlesOfOneGroupAreSwapped() {
        assertThat(enter(new CareFact.BottlesSwapped(Larkmoor.M_03, Larkmoor.M_03)))
                .isEqualTo(Refused.of(Rule.NOT_IN_ONE_GROUP, "M-03"));
        assertThat(Journal.given().when(new Enter(new CareFact.BottlesSwapped(Larkmoor.M_03, Larkmoor.M_03))))
                .isEqualTo(Refused.of(Rule.NOT_IN_ONE_GROUP, "M-03"));
        assertThat(enter(new CareFact.BottleAssigned(Larkmoor.M_03, "nobody", Place.SPARE)))
                .isEqualTo(Refused.of(Rule.GROUP_UNKNOWN, "nobody"));
    }

    @Test
    void equipmentThatWasDoneFallsDueAnIntervalLater() {
        Journal journal =
                Journal.given(Squads.facts()).add(new CareFact.UpkeepDone("hose 2", LocalDate.of(2026, 6, 14)));
        Upkeep hose =
                Objects.requireNonNull(journal.bench().areas().care().upkeep().get("hose 2"));
        assertThat(hose).isEqualTo(Squads.HOSE.doneOn(LocalDate.of(2026, 6, 14)));
        assertThat(hose.dueItem().lastDay()).isEqualTo(LocalDate.of(2031, 6, 14));
        assertThat(journal.add(new CareFact.UpkeepEnded("hose 2", "cut up"))
                        .bench()
                        .areas()
                        .care()
                        .upkeep())
                .isEmpty();
    }

    @Test
    void whatWasDoneLiesNotAheadAndOnKnownEquipment() {
        assertThat(enter(new CareFact.UpkeepDone("hose 2", LocalDate.of(2026, 6, 15))))
                .isEqualTo(Refused.of(Rule.DAY_TO_COME, "2026-06-15"));
        assertThat(enter(new CareFact.UpkeepDone("hose 9", LocalDate.of(2026, 6, 14))))
                .isEqualTo(Refused.of(Rule.EQUIPMENT_UNKNOWN, "hose 9"));
        assertThat(enter(new CareFact.UpkeepEnded("hose 9", "cut up")))
                .isEqualTo(Refused.of(Rule.EQUIPMENT_UNKNOWN, "hose 9"));
    }
}
