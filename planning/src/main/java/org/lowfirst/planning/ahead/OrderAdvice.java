package org.lowfirst.planning.ahead;

import java.time.LocalDate;
import java.util.Optional;

/**
 * When to order.
 *
 * @param alert whether somebody must be told
 * @param orderBy last day on which an order keeps the reserve, nine times in ten; empty when that is farther ahead than is looked
 * @param chanceTooLate chance that the reserve is touched before the delivery when the order is made today, from 0 to 1
 * @param chanceEmpty chance that a bottle cannot be finished before the delivery when the order is made today
 */
public record OrderAdvice(Alert alert, Optional<LocalDate> orderBy, double chanceTooLate, double chanceEmpty) {

    public String inWords() {
        String date = orderBy.map(LocalDate::toString).orElse("");
        return switch (alert) {
            case NONE ->
                orderBy.isEmpty() ? "No order is needed as far ahead as can be seen." : "Order by " + date + ".";
            case SOON -> "Order soon: by " + date + ".";
            case NOW -> "Order today.";
            case LATE ->
                ("Order today: it should have been by %s. The chance that a bottle cannot be finished before"
                                + " the delivery is %d %%.")
                        .formatted(date, Math.round(100 * chanceEmpty));
        };
    }
}
