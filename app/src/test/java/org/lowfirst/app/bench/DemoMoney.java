package org.lowfirst.app.bench;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.Map;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Command.RecordFill;
import org.lowfirst.station.CostKind;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.FillId;
import org.lowfirst.station.MoneyFact;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;

/** The accounts in the story of the demo bench. All of it is entered by one person at the time the story has come to. */
final class DemoMoney {

    private static final String DEPOSIT = "80.00";

    private static final BigDecimal PER_DAY = new BigDecimal("0.25");

    private final Benches benches;
    private final BenchId bench;
    private final SetClock clock;
    private int keys;
    private int bills;

    DemoMoney(Benches benches, BenchId bench, SetClock clock) {
        this.benches = benches;
        this.bench = bench;
        this.clock = clock;
    }

    /** Prices and rent, and the deposits of the supplies there are. */
    void agree(LocalDate day, Collection<String> serials) {
        serials.forEach(serial -> enter(MoneyExamples.cost(CostKind.DEPOSIT_PAID, day, serial, DEPOSIT)));
        enter(MoneyExamples.tariff(day, "0.016", "1.50", "20"));
        enter(MoneyExamples.rent(day, PER_DAY.toPlainString()));
    }

    /** Gas, delivery and deposit of one supply; the deposit of the one that left comes back. */
    void pay(LocalDate day, String serial, String left) {
        enter(MoneyExamples.cost(CostKind.CONTENT, day, serial, "46.00"));
        enter(MoneyExamples.cost(CostKind.DELIVERY, day, null, "18.50"));
        enter(MoneyExamples.cost(CostKind.DEPOSIT_PAID, day, serial, DEPOSIT));
        enter(MoneyExamples.cost(CostKind.DEPOSIT_RETURNED, day, left, DEPOSIT));
    }

    /** When a supply was here, both days included; {@link LocalDate#MAX} while it is. */
    record Stay(LocalDate from, LocalDate to) {

        Stay until(LocalDate day) {
            return new Stay(from, day);
        }
    }

    /**
     * A bill for the days up to one, a line for each supply that was here.
     *
     * @param wrong whether it charges those that left as if they had stayed
     */
    void bill(LocalDate day, int days, Map<String, Stay> stays, boolean wrong) {
        bills++;
        LocalDate first = day.minusDays(days - 1L);
        stays.forEach((serial, stay) -> {
            LocalDate from = stay.from().isAfter(first) ? stay.from() : first;
            LocalDate here = stay.to().isAfter(day) ? day : stay.to();
            if (!from.isAfter(here)) {
                line(day, serial, from, wrong ? day : here);
            }
        });
    }

    private void line(LocalDate day, String serial, LocalDate from, LocalDate to) {
        int days = (int) ChronoUnit.DAYS.between(from, to) + 1;
        String amount = PER_DAY.multiply(BigDecimal.valueOf(days)).toPlainString();
        enter(MoneyExamples.billed("R-" + (103 + bills), day, serial, from, to, days, PER_DAY.toPlainString(), amount));
    }

    void guest(FillId fill) {
        enter(new MoneyFact.FillBilled(fill, "R. Vane", true));
    }

    /** A fill entered with a start that is 30 too high, and put right at once. */
    void slip(RecordFill right, Submission submission) {
        Reading before = right.before();
        StatedPressure high = new StatedPressure(
                before.pressure().value().add(BigDecimal.valueOf(30)),
                before.pressure().unit());
        Reading typed = new Reading(high, before.at(), before.temperature(), false, null);
        RecordFill slip =
                new RecordFill(right.fill(), right.bottle(), right.target(), typed, right.after(), right.stages());
        long seq = recorded(benches.guidingAFill().recordFill(bench, slip, submission));
        recorded(benches.correctingAnEntry()
                .replace(
                        bench,
                        seq,
                        "typed the start 30 too high",
                        right.fact(),
                        new Submission(key(), "Ingrid", null, false)));
    }

    private void enter(MoneyFact fact) {
        recorded(benches.keepingAccounts().enter(bench, fact, new Submission(key(), "Ingrid", clock.instant(), false)));
    }

    private EntryKey key() {
        keys++;
        return new EntryKey("money-" + keys);
    }

    private static long recorded(Recording recording) {
        if (recording instanceof Recording.Recorded recorded) {
            return recorded.entries().get(0).seq();
        }
        throw new AssertionError(recording);
    }
}
