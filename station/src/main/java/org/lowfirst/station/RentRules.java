package org.lowfirst.station;

import java.time.temporal.ChronoUnit;
import java.util.Currency;
import org.jspecify.annotations.Nullable;

/** What rent can be agreed, and what a line of a bill can say. A line may be wrong, but not unreadable. */
final class RentRules {

    /** No bill covers more, and no stay is free for longer (common practice, no source). */
    private static final int MOST_DAYS = 3700;

    private RentRules() {}

    static @Nullable Refused check(StatedRent rent) {
        Currency currency = Currencies.find(rent.perDay().currency()).orElse(null);
        if (currency == null) {
            return Refused.of(Rule.CURRENCY_UNKNOWN, rent.perDay().currency());
        }
        if (rent.perDay().value().signum() < 0) {
            return new Refused(Rule.PRICE_BELOW_ZERO, "", rent.perDay(), null);
        }
        if (rent.freeDays() < 0 || rent.freeDays() > MOST_DAYS) {
            return Refused.of(Rule.DAY_COUNT_OUT_OF_RANGE, Integer.toString(rent.freeDays()));
        }
        return TariffRules.step(rent.rounding(), currency);
    }

    static @Nullable Refused check(BilledStay line) {
        if (line.serial().isBlank()) {
            return Refused.of(Rule.SERIAL_EMPTY, "");
        }
        Refused days = days(line);
        if (days != null) {
            return days;
        }
        if (line.perDay().value().signum() < 0) {
            return new Refused(Rule.PRICE_BELOW_ZERO, "", line.perDay(), null);
        }
        if (!line.perDay().currency().equals(line.amount().currency())) {
            return Refused.of(
                    Rule.CURRENCY_OTHER,
                    line.perDay().currency() + " (" + line.amount().currency() + ")");
        }
        return MoneyRules.payable(line.amount());
    }

    static @Nullable Refused days(BilledStay line) {
        if (line.to().isBefore(line.from())) {
            return Refused.of(Rule.DAYS_BACKWARDS, line.to().toString());
        }
        boolean countable = line.days() > 0
                && line.days() <= MOST_DAYS
                && ChronoUnit.DAYS.between(line.from(), line.to()) < MOST_DAYS;
        return countable ? null : Refused.of(Rule.DAY_COUNT_OUT_OF_RANGE, Integer.toString(line.days()));
    }
}
