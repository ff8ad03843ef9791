package org.lowfirst.planning.camp;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import org.lowfirst.planning.Chance;
import org.lowfirst.planning.ahead.Band;
import org.lowfirst.planning.words.Phrases;

/**
 * What a camp needs.
 *
 * @param fillsWanted bottles brought during the camp
 * @param options from one supply up to the number that is enough
 * @param supplies least number that finishes every bottle with the chance wanted; empty when the largest bank does not
 * @param days length of the camp
 * @param chanceWanted the chance wanted
 */
public record CampPlan(Band fillsWanted, List<CampOption> options, OptionalInt supplies, int days, double chanceWanted)
        implements CampOutcome {

    public CampPlan {
        options = List.copyOf(options);
    }

    /** One or two sentences for people, in English. */
    public String inWords() {
        return inWords(Locale.ENGLISH);
    }

    public String inWords(Locale language) {
        Phrases phrases = Phrases.in(language);
        CampOption last = options.get(options.size() - 1);
        String wanted = phrases.text("camp.wanted", Map.of("fills", fillsWanted.inWords(language)));
        Map<String, String> values = Map.of(
                "supplies", Integer.toString(last.supplies()),
                "chance", Chance.percentDown(last.chanceAll(), language),
                "covered", last.daysCovered().inWords(language),
                "days", Integer.toString(days));
        String key = supplies.isEmpty() ? "camp.not-enough" : last.supplies() == 1 ? "camp.take.one" : "camp.take.many";
        return wanted + " " + phrases.text(key, values);
    }
}
