package org.lowfirst.app.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lowfirst.app.journal.FactLines;
import org.lowfirst.app.journal.StoredEntry;
import org.lowfirst.station.Command.RetireBottle;
import org.lowfirst.station.Command.TakeReading;
import org.lowfirst.station.Fact;

/**
 * Tells the invented story of the demo bench, half a year of it, through the use cases and writes it as the lines of demo.jsonl.
 * Seeded: the same story every time.
 */
final class DemoStory {

    private static final int DAYS = 182;
    private static final LocalDate FIRST_DAY = LoadingTheDemoBench.DAY_AFTER.minusDays(DAYS);

    /** Days between two bills of the supplier. */
    private static final int BILLING = 30;

    /** What bottles read as they stand there on the last evening. */
    private static final Map<String, Integer> BACK = back();

    private final DemoPen pen;
    private final DemoMoney money;
    private final DemoBank bank;
    private final DemoFills fills;

    DemoStory(Benches benches, SetClock clock) {
        this.pen = new DemoPen(benches, clock);
        this.money = new DemoMoney(benches, DemoPen.BENCH, clock);
        this.bank = new DemoBank(pen, money);
        this.fills = new DemoFills(pen, money, bank);
    }

    List<String> tell() {
        pen.set(FIRST_DAY, 8, 30);
        DemoShelf shelf = new DemoShelf(pen);
        shelf.open();
        bank.setUp();
        shelf.fill();
        money.agree(FIRST_DAY, bank.stays().keySet());
        for (int number = 0; number < DAYS; number++) {
            day(FIRST_DAY.plusDays(number), number);
        }
        lastEvening();
        return lines();
    }

    private void day(LocalDate day, int number) {
        pen.temper();
        boolean weekend = day.getDayOfWeek().getValue() >= 6;
        int today = weekend ? 1 + pen.draw(3) : pen.draw(4) == 0 ? 1 : 0;
        pen.set(day, 9, pen.draw(40));
        if (number % 7 == 6) {
            bank.read();
        }
        if (number == 4) {
            bank.slip();
        }
        if (number == 40) {
            DemoPen.recorded(pen.benches
                    .registeringBottles()
                    .retire(
                            DemoPen.BENCH,
                            new RetireBottle(DemoPen.bottle("Old blue"), "dented at the shoulder"),
                            pen.submission()));
        }
        if (number % BILLING == BILLING - 1) {
            money.bill(day, BILLING, bank.stays(), number + BILLING >= DAYS);
        }
        for (int i = 0; i < today; i++) {
            pen.minutes(20 + pen.draw(90));
            fills.one();
        }
    }

    /** Bottles are back from the flights, one of them with its valve open; a supply came that leaks. */
    private void lastEvening() {
        pen.set(LoadingTheDemoBench.DAY_AFTER.minusDays(1), 18, 5);
        BACK.forEach((name, bar) -> DemoPen.recorded(pen.benches
                .takingReadings()
                .take(DemoPen.BENCH, new TakeReading(DemoPen.bottle(name), pen.reads(bar)), pen.by("Ruben"))));
        DemoPen.recorded(
                pen.benches.keepingMarkings().foundOpen(DemoPen.BENCH, DemoPen.bottle("Dotterel"), pen.by("Tobias")));
        bank.tagOut();
        new DemoCare(pen.benches, DemoPen.BENCH)
                .tell(
                        DemoPen.bottle("K2 rear"),
                        DemoPen.bottle("K1 front"),
                        DemoPen.bottle("K1 rear"),
                        DemoPen.bottle("Mountain 1"));
    }

    private static Map<String, Integer> back() {
        Map<String, Integer> back = new LinkedHashMap<>();
        back.put("K1 front", 62);
        back.put("K1 rear", 118);
        back.put("Swift", 38);
        back.put("Lapwing", 55);
        back.put("Pipit", 70);
        back.put("Dotterel", 12);
        return back;
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (StoredEntry stored : pen.benches.journal().listFrom(DemoPen.BENCH, 1)) {
            long place = stored.entry().fact() instanceof Fact.EntryCorrected correction ? correction.corrected() : 0;
            lines.add(FactLines.write(stored.entry(), place));
        }
        return lines;
    }
}
