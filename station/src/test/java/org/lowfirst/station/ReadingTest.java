package org.lowfirst.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lowfirst.station.Journal.given;
import static org.lowfirst.station.Larkmoor.A;
import static org.lowfirst.station.Larkmoor.M_03;
import static org.lowfirst.station.Larkmoor.bar;
import static org.lowfirst.station.Larkmoor.celsius;
import static org.lowfirst.station.Larkmoor.reads;

import org.junit.jupiter.api.Test;
import org.lowfirst.gas.PressureUnit;

class ReadingTest {

    @Test
    void aReadingIsTakenAndBecomesTheLatest() {
        Journal journal = given();
        Command command = new Command.TakeReading(A, reads("61.5", 30));
        assertThat(journal.when(command)).isInstanceOf(Accepted.class);
        assertThat(journal.add(command.fact()).bench().getSupply(A).latest()).isEqualTo(reads("61.5", 30));
    }

    @Test
    void psiTypedIntoABarBenchIsAboveTheTestPressure() {
        Decision decision = given().when(new Command.TakeReading(A, reads("1450", 30)));
        assertThat(decision).isEqualTo(new Refused(Rule.READING_ABOVE_TEST_PRESSURE, "A", bar("1450"), bar("300.0")));
    }

    @Test
    void barTypedIntoAPsiFieldIsAskedAboutAndTakenOnceConfirmed() {
        Reading reading =
                new Reading(StatedPressure.of("118", PressureUnit.PSI), Larkmoor.TEN, celsius("20"), false, null);
        Journal journal = given();
        Command command = new Command.TakeReading(Larkmoor.B, reading);
        assertThat(journal.when(command))
                .isEqualTo(new Refused(
                        Rule.READING_LOOKS_LIKE_OTHER_UNIT,
                        "B",
                        StatedPressure.of("118", PressureUnit.PSI),
                        bar("118")));
        assertThat(journal.when(command, true)).isInstanceOf(Accepted.class);
    }

    @Test
    void aSupplyUsedUpIsNotTakenForAWrongUnit() {
        assertThat(given().when(new Command.TakeReading(Larkmoor.B, reads("3", 30))))
                .isInstanceOf(Accepted.class);
    }

    @Test
    void aReadingBelowZeroIsRefused() {
        assertThat(given().when(new Command.TakeReading(M_03, reads("-1", 30))))
                .isEqualTo(new Refused(Rule.READING_BELOW_ZERO, "M-03", bar("-1"), bar("0")));
    }

    @Test
    void anImpossibleTemperatureIsRefusedWithTheLimit() {
        Reading reading = new Reading(bar("60"), Larkmoor.TEN, celsius("70"), false, null);
        assertThat(given().when(new Command.TakeReading(A, reading)))
                .isEqualTo(new Refused(Rule.TEMPERATURE_OUT_OF_RANGE, "A", celsius("70"), celsius("65")));
    }

    @Test
    void aReadingFromTomorrowIsRefused() {
        assertThat(given().when(new Command.TakeReading(A, reads("60", 60 * 24))))
                .isInstanceOfSatisfying(
                        Refused.class, refused -> assertThat(refused.rule()).isEqualTo(Rule.TIME_IN_FUTURE));
    }

    @Test
    void aCylinderNobodyKnowsHasNoReading() {
        assertThat(given().when(new Command.TakeReading(new BottleId("m-99"), reads("60", 3))))
                .isEqualTo(Refused.of(Rule.BOTTLE_UNKNOWN, "m-99"));
    }

    @Test
    void theDigitsStayAsTyped() {
        Journal journal = given(new Fact.ReadingTaken(A, reads("61.50", 30)));
        assertThat(journal.bench().getSupply(A).latest().pressure().value()).hasToString("61.50");
    }
}
