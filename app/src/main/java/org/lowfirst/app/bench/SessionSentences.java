package org.lowfirst.app.bench;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lowfirst.station.FillId;
import org.lowfirst.station.PlannedStage;
import org.lowfirst.station.SessionFact;

/** A session, said in sentences. */
final class SessionSentences {

    private SessionSentences() {}

    static String of(SessionFact fact, FactSentences names) {
        if (fact instanceof SessionFact.SessionBegun f) {
            List<String> bottles = new ArrayList<>();
            f.wishes()
                    .forEach(wish -> bottles.add(names.say(
                            "session.wish",
                            Map.of(
                                    "bottle", names.name(wish.bottle()),
                                    "before", names.said(wish.before()),
                                    "target", names.said(wish.target())))));
            return names.say("session.begun", Map.of("bottles", String.join("; ", bottles)));
        } else if (fact instanceof SessionFact.SessionPlanned f) {
            Set<FillId> bottles = new LinkedHashSet<>();
            f.stages().forEach(stage -> bottles.add(stage.fill()));
            return names.say(
                    f.stages().isEmpty() ? "session.planned.nothing" : "session.planned",
                    Map.of(
                            "stages", Integer.toString(f.stages().size()),
                            "bottles", Integer.toString(bottles.size()),
                            "first", first(f, names)));
        } else if (fact instanceof SessionFact.StageSkipped f) {
            return names.say(
                    "session.stage-skipped",
                    Map.of("bottle", names.name(f.fill()), "supply", names.name(f.supply()), "reason", f.reason()));
        } else if (fact instanceof SessionFact.BottleLeftOut f) {
            return names.say("session.bottle-left-out", Map.of("bottle", names.name(f.fill()), "reason", f.reason()));
        } else if (fact instanceof SessionFact.SessionEnded f) {
            return f.reason().isEmpty()
                    ? names.say("session.ended", Map.of())
                    : names.say("session.ended.early", Map.of("reason", f.reason()));
        }
        throw new AssertionError("unhandled " + fact);
    }

    private static String first(SessionFact.SessionPlanned f, FactSentences names) {
        if (f.stages().isEmpty()) {
            return "";
        }
        PlannedStage first = f.stages().get(0);
        return names.name(first.supply()) + " " + names.said(first.until());
    }
}
