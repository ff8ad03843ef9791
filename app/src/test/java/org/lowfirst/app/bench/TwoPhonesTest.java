package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.RecordFill;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.FillId;

/**
 * A late entry from a phone that was offline. Pressures and litres: an invented scenario computed with CoolProp 8.0.0 (Schmidt
 * and Wagner), settled, 20 C, to 1 bar and 1.5 %.
 */
class TwoPhonesTest {

    private static final Instant FIVE_PAST = Station.TEN.plusSeconds(300);
    private static final Instant TWELVE_PAST = Station.TEN.plusSeconds(720);

    @TempDir
    private Path directory;

    private Station station;
    private BottleId three;
    private BottleId two;
    private double before_mol;

    @BeforeEach
    void lateEntryArrives() {
        station = Station.at(directory, "20");
        station.supply("A", "58");
        station.supply("B", "134");
        station.supply("C", "181");
        three = station.bottle("three", "3", "35");
        two = station.bottle("two", "2", "60");
        before_mol = inTheBank();
        station.clock.set(TWELVE_PAST);
        station.recorded(station.benches
                .guidingAFill()
                .recordFill(Station.BENCH, fill(two, "60", TWELVE_PAST), at(TWELVE_PAST, "phone-2")));
        station.clock.set(Station.TEN.plusSeconds(2400));
    }

    @AfterEach
    void close() {
        station.close();
    }

    @Test
    void threeSendsWithOneKeyAreOneEntryAndTheFirstResult() {
        long entries = station.benches.readingTheJournal().count(Station.BENCH);
        Recording first = sendLate();
        Recording second = sendLate();
        Recording third = sendLate();
        assertThat(station.benches.readingTheJournal().count(Station.BENCH)).isEqualTo(entries + 1);
        assertThat(((Recording.Recorded) first).repeat()).isFalse();
        assertThat(second).isEqualTo(new Recording.Recorded(station.recorded(first), true));
        assertThat(third).isEqualTo(second);
    }

    @Test
    void theBankIsAsIfBothHadBeenEnteredInOrder() {
        sendLate();
        assertThat(station.bank()).hasSize(3);
        assertThat(station.bank().get(0)).isCloseTo(56.7, within(1.0));
        assertThat(station.bank().get(1)).isCloseTo(127.0, within(1.0));
        assertThat(station.bank().get(2)).isCloseTo(178.8, within(1.0));
    }

    /** Tighter than the scenario's tolerance: the printed digits, because nothing here is read off a gauge. */
    @Test
    void theLateEntryIsSplitOverTheBankAsItStoodThen() {
        sendLate();
        assertThat(station.bank().get(0)).isCloseTo(56.7, within(0.06));
        assertThat(station.bank().get(1)).isCloseTo(127.0, within(0.06));
        assertThat(station.bank().get(2)).isCloseTo(178.8, within(0.06));
    }

    @Test
    void theLitresAddUp() {
        sendLate();
        double litres = Oxygen.schmidtWagner()
                .freeVolume(new Amount(before_mol - inTheBank()), ReferenceCondition.ISO_15C_1ATM)
                .toLitres();
        assertThat(litres).isCloseTo(552, within(0.015 * 552));
    }

    @Test
    void theJournalListsThemInTheOrderTheyHappenedAndSaysWhatWasAdvisedWithoutKnowing() {
        sendLate();
        List<JournalLine> lines = station.benches.readingTheJournal().listLines(Station.BENCH, 0, 2);
        assertThat(lines)
                .extracting(line -> line.entry().origin().effectiveAt())
                .containsExactly(TWELVE_PAST, FIVE_PAST);
        assertThat(lines.get(0).note()).contains("Entry 12 was entered later but happened before");
        assertThat(lines.get(1).note()).isNull();
    }

    @Test
    void openingTheDatabaseAgainGivesTheSameBank() {
        sendLate();
        List<Double> before = station.bank();
        station.close();
        station = Station.at(directory, "20");
        assertThat(station.bank()).isEqualTo(before);
    }

    private Recording sendLate() {
        return station.benches
                .guidingAFill()
                .recordFill(Station.BENCH, fill(three, "35", FIVE_PAST), at(FIVE_PAST, "phone-1"));
    }

    private RecordFill fill(BottleId bottle, String before, Instant at) {
        return new RecordFill(
                new FillId("fill-" + bottle),
                bottle,
                Station.bar("150"),
                station.reads(before, at),
                station.reads("150", at),
                List.of());
    }

    private static Submission at(Instant effectiveAt, String key) {
        return new Submission(new EntryKey(key), "Ida", effectiveAt, false);
    }

    private double inTheBank() {
        return station.benches.keepingTheBank().bank(Station.BENCH).supplies().stream()
                .mapToDouble(view -> view.contents().moles())
                .sum();
    }
}
