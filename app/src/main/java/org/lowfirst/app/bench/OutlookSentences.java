package org.lowfirst.app.bench;

import java.util.Map;
import java.util.stream.Collectors;
import org.lowfirst.station.Happening;
import org.lowfirst.station.OutlookFact;

/** What the bench looks ahead with, said in sentences. */
final class OutlookSentences {

    private OutlookSentences() {}

    static String of(OutlookFact fact, FactSentences names) {
        if (fact instanceof OutlookFact.FiguresKept f) {
            return names.say(
                    "figures.kept",
                    Map.of(
                            "figures",
                            f.figures().entrySet().stream()
                                    .map(kept ->
                                            names.say("figure." + kept.getKey().key(), Map.of()) + " "
                                                    + kept.getValue().toPlainString())
                                    .collect(Collectors.joining("; "))));
        } else if (fact instanceof OutlookFact.HappeningPlanned f) {
            Happening planned = f.happening();
            return names.say(
                    planned.days() == 1 ? "happening.planned.day" : "happening.planned",
                    Map.of(
                            "name", planned.name(),
                            "from", planned.from().toString(),
                            "until", planned.until().toString(),
                            "fills", planned.fills().toPlainString()));
        } else if (fact instanceof OutlookFact.HappeningDropped f) {
            return names.say(
                    "happening.dropped",
                    Map.of("name", f.name(), "from", f.from().toString()));
        } else if (fact instanceof OutlookFact.SuppliesOrdered f) {
            return names.say("supplies.ordered", Map.of("expected", f.expected().toString()));
        }
        throw new AssertionError("unhandled " + fact);
    }
}
