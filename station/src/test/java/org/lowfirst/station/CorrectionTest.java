package org.lowfirst.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lowfirst.station.Journal.given;
import static org.lowfirst.station.Larkmoor.A;
import static org.lowfirst.station.Larkmoor.FILL;
import static org.lowfirst.station.Larkmoor.M_03;
import static org.lowfirst.station.Larkmoor.bar;
import static org.lowfirst.station.Larkmoor.reads;
import static org.lowfirst.station.Larkmoor.stage;

import org.junit.jupiter.api.Test;

class CorrectionTest {

    private static final Fact TYPED = new Fact.ReadingTaken(A, reads("26", 6));

    @Test
    void aReplacementCountsInThePlaceOfWhatItCorrects() {
        Journal journal = given(TYPED);
        Reading later = reads("58", 20);
        journal.add(new Fact.ReadingTaken(A, later));
        journal.add(
                new Fact.EntryCorrected(6, "typing slip", new Fact.ReadingTaken(A, reads("62", 6))),
                journal.entry(6).origin().effectiveAt());
        assertThat(journal.bench().getSupply(A).latest()).isEqualTo(later);
    }

    @Test
    void aReversalTakesTheEntryOut() {
        Journal journal = given(TYPED);
        journal.add(
                new Fact.EntryCorrected(6, "wrong supply", null),
                journal.entry(6).origin().effectiveAt());
        assertThat(journal.bench().getSupply(A).latest()).isEqualTo(reads("62", 0));
    }

    @Test
    void aCorrectionCanBeCorrected() {
        Journal journal = given(TYPED);
        journal.add(
                new Fact.EntryCorrected(6, "slip", new Fact.ReadingTaken(A, reads("63", 6))),
                journal.entry(6).origin().effectiveAt());
        journal.add(
                new Fact.EntryCorrected(7, "slip again", new Fact.ReadingTaken(A, reads("61", 6))),
                journal.entry(6).origin().effectiveAt());
        assertThat(journal.bench().getSupply(A).latest()).isEqualTo(reads("61", 6));
    }

    @Test
    void aCorrectedStartKeepsItsPlaceBeforeStagesOfTheSameMinute() {
        Journal journal = given();
        journal.add(new Fact.FillStarted(FILL, M_03, bar("150"), reads("20", 5)), Larkmoor.TEN);
        journal.add(new Fact.StageRecorded(FILL, stage(A, "60", 5)), Larkmoor.TEN);
        journal.add(
                new Fact.EntryCorrected(6, "it read 40", new Fact.FillStarted(FILL, M_03, bar("150"), reads("40", 5))),
                Larkmoor.TEN);
        assertThat(journal.bench().openFill()).hasValueSatisfying(fill -> {
            assertThat(fill.before()).isEqualTo(reads("40", 5));
            assertThat(fill.stages()).hasSize(1);
        });
    }

    @Test
    void takingOutWhatALaterEntryNeedsBreaksTheFold() {
        Journal journal = given();
        journal.add(new Fact.FillStarted(FILL, M_03, bar("150"), reads("40", 5)));
        journal.add(new Fact.StageRecorded(FILL, stage(A, "60", 7)));
        journal.add(
                new Fact.EntryCorrected(6, "never began", null),
                journal.entry(6).origin().effectiveAt());
        assertThat(journal.fold())
                .isEqualTo(new Folding.Broken(journal.entry(7), Refused.of(Rule.FILL_UNKNOWN, "fill-1")));
    }

    @Test
    void theOpeningOfABenchCannotBeCorrected() {
        Journal journal = given();
        assertThat(journal.when(new Command.CorrectEntry(journal.entry(1), "no", null)))
                .isEqualTo(Refused.of(Rule.ENTRY_NOT_CORRECTABLE, "1"));
    }

    @Test
    void aReplacementIsOfTheSameKind() {
        Journal journal = given(TYPED);
        Fact other = new Fact.BottleRetired(M_03, "dented");
        assertThat(journal.when(new Command.CorrectEntry(journal.entry(6), "slip", other)))
                .isEqualTo(Refused.of(Rule.REPLACEMENT_OF_OTHER_KIND, "6"));
    }

    @Test
    void aCorrectionNeedsAReason() {
        Journal journal = given(TYPED);
        assertThat(journal.when(new Command.CorrectEntry(journal.entry(6), " ", null)))
                .isEqualTo(Refused.of(Rule.REASON_EMPTY, "6"));
    }

    @Test
    void aReplacementKeepsTheRulesOfWhatCanHaveHappened() {
        Journal journal = given(TYPED);
        Fact impossible = new Fact.ReadingTaken(A, reads("620", 6));
        assertThat(journal.when(new Command.CorrectEntry(journal.entry(6), "slip", impossible)))
                .isEqualTo(new Refused(Rule.READING_ABOVE_TEST_PRESSURE, "A", bar("620"), bar("300.0")));
    }

    @Test
    void aLateEntryIsFoldedWhereItHappened() {
        Journal journal = given();
        journal.add(new Fact.ReadingTaken(A, reads("57", 12)), Larkmoor.TEN.plusSeconds(720));
        journal.add(new Fact.ReadingTaken(A, reads("58", 5)), Larkmoor.TEN.plusSeconds(300));
        assertThat(journal.bench().getSupply(A).latest()).isEqualTo(reads("57", 12));
    }

    @Test
    void theOpeningComesFirstWhateverItsTime() {
        Journal journal = given();
        journal.add(new Fact.ReadingTaken(A, reads("61", 1)), Larkmoor.TEN);
        assertThat(journal.bench().settings()).isEqualTo(Larkmoor.settings());
    }
}
