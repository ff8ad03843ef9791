package org.lowfirst.app.bench;

import java.util.Map;
import org.lowfirst.station.GateFact;
import org.lowfirst.station.StampLine;
import org.lowfirst.station.rules.Answer;

/** What decides whether a bottle may be filled, said in sentences. */
final class GateSentences {

    private GateSentences() {}

    static String of(GateFact fact, FactSentences names) {
        if (fact instanceof GateFact.RuleBookAdopted) {
            return names.say("rule-book.adopted", Map.of());
        } else if (fact instanceof GateFact.BottleMarked f) {
            StampLine stamp = f.marking().stamp();
            return names.say(
                    stamp == null ? "bottle.marked.by-hand" : "bottle.marked",
                    Map.of("bottle", names.name(f.bottle()), "stamp", stamp == null ? "" : stamp.line()));
        } else if (fact instanceof GateFact.PlusRatingEntered f) {
            return names.say(
                    "plus-rating.entered",
                    Map.of(
                            "bottle", names.name(f.bottle()),
                            "source", f.entry().source(),
                            "person", f.entry().enteredBy()));
        } else if (fact instanceof GateFact.PlusRatingWithdrawn f) {
            return names.say("plus-rating.withdrawn", Map.of("bottle", names.name(f.bottle()), "reason", f.reason()));
        } else if (fact instanceof GateFact.RefusalsSetAside f) {
            return names.say(
                    "refusals.set-aside",
                    Map.of(
                            "bottle", names.name(f.bottle()),
                            "count", Integer.toString(f.refusals().size()),
                            "second", f.second(),
                            "filler", f.filler(),
                            "reason", f.reason()));
        }
        return ofCheck(fact, names);
    }

    private static String ofCheck(GateFact fact, FactSentences names) {
        if (fact instanceof GateFact.ConditionAnswered f) {
            long other = f.answers().values().stream()
                    .filter(answer -> answer != Answer.NO)
                    .count();
            return names.say(
                    other == 0 ? "condition.answered" : "condition.answered.other",
                    Map.of(
                            "bottle", names.name(f.bottle()),
                            "person", f.lookedBy(),
                            "asked", Integer.toString(f.answers().size()),
                            "other", Long.toString(other)));
        } else if (fact instanceof GateFact.BottleFoundOpen f) {
            return names.say("bottle.found-open", Map.of("bottle", names.name(f.bottle())));
        } else if (fact instanceof GateFact.EmptyBottleInspected f) {
            return names.say(
                    "bottle.inspected-empty", Map.of("bottle", names.name(f.bottle()), "person", f.inspectedBy()));
        } else if (fact instanceof GateFact.HammerTested f) {
            return names.say("bottle.hammer-tested", Map.of("bottle", names.name(f.bottle()), "person", f.testedBy()));
        }
        throw new AssertionError("unhandled " + fact);
    }
}
