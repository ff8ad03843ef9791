package org.lowfirst.planning.ahead;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.lowfirst.planning.Chance;
import org.lowfirst.planning.words.Phrases;

/**
 * When to order.
 *
 * @param alert whether somebody must be told
 * @param orderBy last day on which an order keeps the reserve, nine times in ten; empty when that is farther ahead than is looked
 * @param chanceTooLate chance that the reserve is touched before the delivery when the order is made today, from 0 to 1
 * @param chanceEmpty chance that a bottle cannot be finished before the delivery when the order is made today
 */
public record OrderAdvice(Alert alert, Optional<LocalDate> orderBy, double chanceTooLate, double chanceEmpty) {

    /** In English. */
    public String inWords() {
        return inWords(Locale.ENGLISH);
    }

    public String inWords(Locale language) {
        String key = alert == Alert.NONE && orderBy.isEmpty()
                ? "order.not-needed"
                : "order." + alert.name().toLowerCase(Locale.ROOT);
        return Phrases.in(language)
                .text(
                        key,
                        Map.of(
                                "date", orderBy.map(LocalDate::toString).orElse(""),
                                "chance", Chance.percent(chanceEmpty, language)));
    }
}
