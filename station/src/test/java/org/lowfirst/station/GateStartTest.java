package org.lowfirst.station;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lowfirst.station.rules.BuiltInBooks;
import org.lowfirst.station.rules.PlusEntry;
import org.lowfirst.station.rules.RuleBookText;
import org.lowfirst.station.rules.Service;
import org.lowfirst.station.rules.TestMark;
import org.lowfirst.station.rules.WallMaterial;

/** Which fills the gate lets begin. */
class GateStartTest {

    private static final Command.StartFill START =
            new Command.StartFill(Larkmoor.FILL, Larkmoor.M_03, Larkmoor.bar("150"), Larkmoor.reads("40", 5));

    @Test
    void noFillBeginsOnABottleNobodyHasEnteredTheMarkingOf() {
        assertThat(Journal.given().when(START)).isEqualTo(Refused.of(Rule.BOTTLE_UNFIT, "M-03"));
        assertThat(Journal.given().when(new Command.StartFillBeside(START, "Ida", "Tom")))
                .isEqualTo(Refused.of(Rule.BOTTLE_UNFIT, "M-03"));
    }

    @Test
    void noFillBeginsWithoutALookAtTheBottleThatDay() {
        Journal journal = Journal.given(new GateFact.BottleMarked(Larkmoor.M_03, Markings.steel()));
        assertThat(journal.when(START)).isEqualTo(Refused.of(Rule.BOTTLE_UNFIT, "M-03"));
        GateFact.ConditionAnswered today = Markings.soundToday();
        journal.add(new GateFact.ConditionAnswered(
                Larkmoor.M_03, Markings.DAY.minusDays(1), today.answers(), today.lookedBy()));
        assertThat(journal.when(START)).isEqualTo(Refused.of(Rule.BOTTLE_UNFIT, "M-03"));
        journal.add(today);
        assertThat(journal.when(START)).isInstanceOf(Accepted.class);
    }

    @Test
    void noFillBeginsPastTheTestButOneThatHappenedIsTaken() {
        Marking old = new Marking(
                null,
                Markings.steel().plate(),
                TestMark.of(2016, 5),
                Markings.steel().service(),
                null,
                null);
        Journal journal = Markings.given(new GateFact.BottleMarked(Larkmoor.M_03, old));
        assertThat(journal.when(START)).isEqualTo(Refused.of(Rule.BOTTLE_UNFIT, "M-03"));
        assertThat(journal.when(START, true)).isEqualTo(Refused.of(Rule.BOTTLE_UNFIT, "M-03"));
        assertThat(journal.when(new Command.Enter(Markings.setAside("Ida", "Tom"))))
                .isEqualTo(Refused.of(Rule.NEVER_SET_ASIDE, "M-03"));
        assertThat(journal.when(new Command.RecordFill(
                        Larkmoor.FILL,
                        Larkmoor.M_03,
                        null,
                        Larkmoor.reads("40", 5),
                        Larkmoor.reads("150", 20),
                        List.of())))
                .isInstanceOf(Accepted.class);
    }

    @Test
    void aDoubtTakenOnByASecondPersonLetsOneFillBegin() {
        Journal journal = Markings.given(new GateFact.BottleMarked(Larkmoor.M_03, Markings.unsure()));
        assertThat(journal.when(START)).isEqualTo(Refused.of(Rule.BOTTLE_UNFIT, "M-03"));
        journal.add(Markings.setAside("Ida", "Tom"));
        assertThat(journal.when(START)).isInstanceOf(Accepted.class);
        journal.add(start());
        journal.add(new Fact.FillAbandoned(Larkmoor.FILL, "rain"));
        assertThat(journal.when(START)).isEqualTo(Refused.of(Rule.BOTTLE_UNFIT, "M-03"));
    }

    @Test
    void theBookAdoptedIsInForce() {
        Journal journal = Markings.given();
        assertThat(Judging.book(journal.bench()).id()).isEqualTo("eu");
        journal.add(new GateFact.RuleBookAdopted(RuleBookText.write(BuiltInBooks.us())));
        assertThat(Judging.book(journal.bench()).id()).isEqualTo("us");
        assertThat(journal.when(START)).isEqualTo(Refused.of(Rule.BOTTLE_UNFIT, "M-03"));
        journal.add(new GateFact.RuleBookAdopted("no book"));
        assertThat(Judging.book(journal.bench()).id()).isEqualTo("us");
    }

    /** 10 % by 49 CFR 173.302a(b), only when marked and entered with its source. */
    @Test
    void aTargetAboveTheMarkedPressureNeedsAPlusRatingThatCounts() {
        MarkedPlate plate = new MarkedPlate("3AA", WallMaterial.STEEL, null, YearMonth.of(2012, 4));
        Marking marking = new Marking(
                null,
                plate,
                new TestMark(YearMonth.of(2022, 4), true, false, ""),
                Service.oxygen("CGA 540"),
                null,
                null);
        Journal journal = Journal.given(
                new GateFact.RuleBookAdopted(RuleBookText.write(BuiltInBooks.us())),
                new GateFact.BottleMarked(Larkmoor.M_03, marking),
                Markings.soundToday());
        Command above =
                new Command.StartFill(Larkmoor.FILL, Larkmoor.M_03, Larkmoor.bar("215"), Larkmoor.reads("40", 5));
        assertThat(journal.when(above))
                .isEqualTo(new Refused(
                        Rule.TARGET_ABOVE_SERVICE_PRESSURE, "M-03", Larkmoor.bar("215"), Larkmoor.bar("200")));
        journal.add(new GateFact.PlusRatingEntered(Larkmoor.M_03, new PlusEntry("report 7", "Ida")));
        assertThat(journal.when(above)).isInstanceOf(Accepted.class);
        assertThat(journal.when(new Command.StartFill(
                        Larkmoor.FILL, Larkmoor.M_03, Larkmoor.bar("221"), Larkmoor.reads("40", 5))))
                .isEqualTo(new Refused(
                        Rule.TARGET_ABOVE_SERVICE_PRESSURE, "M-03", Larkmoor.bar("221"), Larkmoor.bar("220.0")));
    }

    private static Fact start() {
        return new Fact.FillStarted(Larkmoor.FILL, Larkmoor.M_03, Larkmoor.bar("150"), Larkmoor.reads("40", 5));
    }
}
