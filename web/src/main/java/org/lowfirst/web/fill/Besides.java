package org.lowfirst.web.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lowfirst.station.Roster;
import org.lowfirst.station.WhySecond;
import org.lowfirst.web.fill.PlanPage.Beside;
import org.lowfirst.web.workplace.BenchNow;

/** Works out for whom a second person must be named, and who may stand beside. */
public final class Besides {

    private Besides() {}

    public static Beside of(BenchNow now) {
        Roster roster = now.bench().roster();
        List<String> needed = new ArrayList<>();
        List<String> choices = new ArrayList<>();
        for (String name : roster.names()) {
            Optional<WhySecond> why = roster.findWhySecond(name, now.today());
            if (why.isEmpty()) {
                choices.add(name);
            } else {
                String key = "second.short." + why.get().name().toLowerCase(Locale.ROOT);
                needed.add(now.words().of("second.for", name, now.words().of(key)));
            }
        }
        return new Beside(String.join(", ", needed), choices);
    }
}
