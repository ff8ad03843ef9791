package org.lowfirst.app.honest;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lowfirst.planning.warm.StopPlan;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.WarmStop;

/**
 * Where to stop a fill and what the bottle settles to.
 *
 * @param bottle the bottle
 * @param plan the numbers
 * @param permission what lets the stop rise above the marked pressure; null when nothing does
 * @param sentences the plan in words: stop, settled reading, wait, top-up
 * @param assumed what was taken for granted, in words
 */
public record StopAdvice(
        Bottle bottle, StopPlan plan, @Nullable WarmStop permission, List<String> sentences, List<String> assumed) {

    public StopAdvice {
        sentences = List.copyOf(sentences);
        assumed = List.copyOf(assumed);
    }

    /** Cautions in words, to be shown with it. */
    public List<String> cautions(Locale language) {
        return plan.cautions().stream()
                .map(caution -> caution.sentence(language))
                .toList();
    }
}
