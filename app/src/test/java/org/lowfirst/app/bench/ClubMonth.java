package org.lowfirst.app.bench;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import org.lowfirst.app.money.Books;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.RecordFill;
import org.lowfirst.station.Command.RegisterBottle;
import org.lowfirst.station.Command.TakeReading;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.MoneyFact;
import org.lowfirst.station.Rule;
import org.lowfirst.station.SupplyId;

/** A club in June at 17 C: supplies A, B, C at 70, 128 and 194 bar, 0.011 a standard litre, at least 1.50, guests 20 % more. */
final class ClubMonth {

    static final YearMonth JUNE = YearMonth.of(2026, 6);

    final Station station;

    private ClubMonth(Station station) {
        this.station = station;
    }

    static ClubMonth at(Path directory) {
        ClubMonth club = new ClubMonth(Station.at(directory, "17"));
        club.station.supply("A", "70");
        club.station.supply("B", "128");
        club.station.supply("C", "194");
        club.enter(MoneyExamples.tariff(LocalDate.of(2026, 6, 1), "0.011", "1.50", "20"));
        return club;
    }

    void fourFills() {
        fill("f-1", bottle("M-03", "5"), "62", "150");
        fill("f-2", bottle("M-11", "2"), "30", "180");
        fill("f-3", bottle("M-19", "3"), "95", "150");
        fill("f-4", bottle("V-02", "5"), "20", "150");
        enter(new MoneyFact.FillBilled(new FillId("f-4"), "V-02", true));
    }

    BottleId bottle(String name, String litres) {
        BottleId id = new BottleId("bottle-" + name);
        BottleDetails details =
                new BottleDetails(name, name, Station.litres(litres), Station.bar("200"), null, Station.bar("150"));
        Instant may = Instant.parse("2026-05-02T10:00:00Z");
        station.recorded(station.benches
                .registeringBottles()
                .register(Station.BENCH, new RegisterBottle(id, details, null), station.submission(may)));
        return id;
    }

    long fill(String id, BottleId bottle, String before, String after) {
        station.clock.forward(Duration.ofMinutes(20));
        return fill(id, bottle, before, after, station.clock.instant());
    }

    long fill(String id, BottleId bottle, String before, String after, Instant at) {
        return station.recorded(station.benches
                        .guidingAFill()
                        .recordFill(Station.BENCH, recordFill(id, bottle, before, after, at), station.submission(at)))
                .get(0)
                .seq();
    }

    RecordFill recordFill(String id, BottleId bottle, String before, String after, Instant at) {
        return new RecordFill(
                new FillId(id),
                bottle,
                null,
                station.reads(before, at.minusSeconds(600)),
                station.reads(after, at),
                List.of());
    }

    void correct(long seq, String id, BottleId bottle, String before, String after, String reason) {
        Instant at = station.benches
                .journal()
                .findEntry(Station.BENCH, seq)
                .orElseThrow()
                .entry()
                .origin()
                .effectiveAt();
        Fact right = recordFill(id, bottle, before, after, at).fact();
        Submission now = station.submission();
        station.recorded(station.benches
                .correctingAnEntry()
                .replace(Station.BENCH, seq, reason, right, new Submission(now.key(), now.author(), null, false)));
    }

    void read(String supply, String bar) {
        station.recorded(station.benches
                .takingReadings()
                .take(
                        Station.BENCH,
                        new TakeReading(new SupplyId("supply-" + supply), station.reads(bar)),
                        station.submission()));
    }

    void enter(MoneyFact fact) {
        station.recorded(station.benches.keepingAccounts().enter(Station.BENCH, fact, station.submission()));
    }

    Rule refused(MoneyFact fact) {
        return ((Recording.NotRecorded)
                        station.benches.keepingAccounts().enter(Station.BENCH, fact, station.submission()))
                .refused()
                .rule();
    }

    Books books() {
        return station.benches.keepingAccounts().books(Station.BENCH);
    }

    static double litres(double moles) {
        return Oxygen.schmidtWagner()
                .freeVolume(new Amount(moles), ReferenceCondition.ISO_15C_1ATM)
                .toLitres();
    }
}
