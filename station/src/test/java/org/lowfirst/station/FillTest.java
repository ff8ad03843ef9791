package org.lowfirst.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lowfirst.station.Journal.given;
import static org.lowfirst.station.Larkmoor.A;
import static org.lowfirst.station.Larkmoor.B;
import static org.lowfirst.station.Larkmoor.C;
import static org.lowfirst.station.Larkmoor.FILL;
import static org.lowfirst.station.Larkmoor.M_03;
import static org.lowfirst.station.Larkmoor.bar;
import static org.lowfirst.station.Larkmoor.reads;
import static org.lowfirst.station.Larkmoor.stage;

import java.util.List;
import org.junit.jupiter.api.Test;

class FillTest {

    private static final Fact STARTED = new Fact.FillStarted(FILL, M_03, bar("150"), reads("40", 5));

    @Test
    void aFillStartsFromTheBottlesReading() {
        Decision decision = Markings.given().when(new Command.StartFill(FILL, M_03, bar("150"), reads("40", 5)));
        assertThat(decision).isEqualTo(new Accepted(List.of(STARTED)));
    }

    @Test
    void aTargetAboveTheServicePressureIsRefusedWithBoth() {
        Decision decision = given().when(new Command.StartFill(FILL, M_03, bar("201"), reads("40", 5)));
        assertThat(decision).isEqualTo(new Refused(Rule.TARGET_ABOVE_SERVICE_PRESSURE, "M-03", bar("201"), bar("200")));
    }

    @Test
    void aTargetAboveTheServicePressureCannotBeInsistedOn() {
        Decision decision = given().when(new Command.StartFill(FILL, M_03, bar("201"), reads("40", 5)), true);
        assertThat(decision).isInstanceOf(Refused.class);
    }

    @Test
    void aBottleAlreadyAtItsTargetNeedsNoFill() {
        Decision decision = given().when(new Command.StartFill(FILL, M_03, bar("150"), reads("150", 5)));
        assertThat(decision).isEqualTo(new Refused(Rule.TARGET_NOT_ABOVE_READING, "M-03", bar("150"), bar("150")));
    }

    @Test
    void onlyOneFillIsOpenAtATime() {
        Decision decision =
                given(STARTED).when(new Command.StartFill(new FillId("fill-2"), M_03, bar("150"), reads("40", 6)));
        assertThat(decision).isEqualTo(Refused.of(Rule.FILL_ALREADY_OPEN, "M-03"));
    }

    @Test
    void aRetiredBottleIsNotFilled() {
        Decision decision = given(new Fact.BottleRetired(M_03, "dented"))
                .when(new Command.StartFill(FILL, M_03, bar("150"), reads("40", 5)));
        assertThat(decision).isEqualTo(Refused.of(Rule.BOTTLE_RETIRED, "M-03"));
    }

    @Test
    void stagesOfAnOpenFillAreResumedWhereTheyStand() {
        Bench bench =
                given(STARTED, new Fact.StageRecorded(FILL, stage(A, "60", 7))).bench();
        assertThat(bench.openFill()).hasValueSatisfying(fill -> {
            assertThat(fill.stages()).hasSize(1);
            assertThat(fill.bottleNow()).isEqualTo(reads("60", 7));
        });
        assertThat(bench.getBottle(M_03).latest()).isEqualTo(reads("60", 7));
    }

    @Test
    void aStageThatEndedElsewhereThanPlannedIsTakenAsItHappened() {
        Decision decision = given(STARTED).when(new Command.RecordStage(FILL, stage(B, "97", 9)));
        assertThat(decision).isInstanceOf(Accepted.class);
    }

    @Test
    void aStageAboveTheServicePressureHappenedAndIsTaken() {
        Decision decision = given(STARTED).when(new Command.RecordStage(FILL, stage(B, "204", 9)));
        assertThat(decision).isInstanceOf(Accepted.class);
    }

    @Test
    void aStageOfNoOpenFillIsRefused() {
        Decision decision = given().when(new Command.RecordStage(FILL, stage(B, "97", 9)));
        assertThat(decision).isEqualTo(Refused.of(Rule.FILL_UNKNOWN, "fill-1"));
    }

    @Test
    void aStageFromASupplyNobodyKnowsIsRefused() {
        Decision decision =
                given(STARTED).when(new Command.RecordStage(FILL, stage(new SupplyId("supply-z"), "97", 9)));
        assertThat(decision).isEqualTo(Refused.of(Rule.SUPPLY_UNKNOWN, "supply-z"));
    }

    @Test
    void aBottleThatFellIsTakenOnceConfirmed() {
        Journal journal = given(STARTED);
        Command command = new Command.RecordStage(FILL, stage(B, "30", 9));
        assertThat(journal.when(command)).isEqualTo(new Refused(Rule.BOTTLE_FELL, "M-03", bar("30"), bar("40")));
        assertThat(journal.when(command, true)).isInstanceOf(Accepted.class);
    }

    @Test
    void aStageBeforeItsFillBeganIsRefused() {
        Decision decision = given(STARTED).when(new Command.RecordStage(FILL, stage(B, "97", -30)));
        assertThat(decision)
                .isInstanceOfSatisfying(
                        Refused.class, refused -> assertThat(refused.rule()).isEqualTo(Rule.TIME_BEFORE_START));
    }

    @Test
    void finishingLeavesNoFillOpenAndTheBottleAtItsLastReading() {
        Bench bench =
                given(STARTED, new Fact.FillFinished(FILL, reads("150", 15))).bench();
        assertThat(bench.openFill()).isEmpty();
        assertThat(bench.getBottle(M_03).latest()).isEqualTo(reads("150", 15));
    }

    @Test
    void abandoningKeepsTheStagesThatHappened() {
        Bench bench = given(
                        STARTED,
                        new Fact.StageRecorded(FILL, new Stage(A, reads("60", 7), null, reads("60", 7))),
                        new Fact.FillAbandoned(FILL, "called away"))
                .bench();
        assertThat(bench.openFill()).isEmpty();
        assertThat(bench.getSupply(A).latest()).isEqualTo(reads("60", 7));
    }

    @Test
    void aWholeFillIsOneFact() {
        Command command = new Command.RecordFill(
                FILL, M_03, bar("150"), reads("40", 5), reads("150", 20), List.of(stage(A, "60", 8)));
        assertThat(given().when(command))
                .isInstanceOfSatisfying(
                        Accepted.class, accepted -> assertThat(accepted.facts()).hasSize(1));
    }

    @Test
    void aWholeFillIsTakenWhileAnotherFillIsOpen() {
        Command command =
                new Command.RecordFill(new FillId("fill-9"), M_03, null, reads("40", 5), reads("150", 20), List.of());
        assertThat(given(STARTED).when(command)).isInstanceOf(Accepted.class);
    }

    @Test
    void twoSuppliesOpenTogetherMustBeTwo() {
        Decision decision = given().when(new Command.RecordTwoOpenTogether(A, A, reads("90", 9), reads("90", 9)));
        assertThat(decision).isEqualTo(Refused.of(Rule.SUPPLY_NAMED_TWICE, "A"));
    }

    @Test
    void twoSuppliesOpenTogetherLeaveBothAtTheirReadings() {
        Bench bench = given(new Fact.TwoOpenedTogether(A, C, reads("126", 9), reads("126", 9)))
                .bench();
        assertThat(bench.getSupply(A).latest()).isEqualTo(reads("126", 9));
        assertThat(bench.getSupply(C).latest()).isEqualTo(reads("126", 9));
    }
}
