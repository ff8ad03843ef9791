package org.lowfirst.web.firstday;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lowfirst.station.Bench;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.Settings;
import org.lowfirst.web.firstday.FirstDayPage.Act;
import org.lowfirst.web.firstday.FirstDayPage.Step;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** Shows what a bench still needs before its first fill. */
@Controller
public final class FirstDayPages {

    private final Workplace workplace;

    public FirstDayPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/first-day")
    View show(@PathVariable String bench) {
        return workplace.screens().show(page(workplace.open(bench)));
    }

    private static FirstDayPage page(BenchNow now) {
        Bench bench = now.bench();
        long bottles = bench.listBottles().stream().filter(Bottle::inUse).count();
        int supplies = bench.bank().size();
        int numbers = bench.areas().care().help().numbers().size();
        Steps steps = new Steps(now);
        steps.add("settings", settings(now), true, "/settings");
        steps.add("bank", now.words().count("first-day.bank.told", supplies), supplies > 0, "/supplies/new");
        steps.add(
                "bottles",
                now.words().count("first-day.bottles.told", bottles),
                bottles > 0,
                "/bottles/many",
                "/bottles/new");
        steps.add(
                "gauges",
                now.words().count("first-day.gauges.told", bench.gauges().size()),
                !bench.gauges().isEmpty(),
                "/gauges/one");
        steps.add("help", now.words().count("first-day.help.told", numbers), numbers > 0, "/papers#help");
        steps.add("fill", now.words().of("first-day.fill.told"), false, "/fill");
        List<Step> all = steps.steps;
        return new FirstDayPage(now.place(), all, (int)
                all.stream().filter(step -> !step.done()).count());
    }

    private static String settings(BenchNow now) {
        Settings settings = now.bench().settings();
        String rules =
                now.words().of("settings.rules." + settings.rules().name().toLowerCase(Locale.ROOT));
        return now.words()
                .of(
                        "first-day.settings.told",
                        settings.units().pressure().symbol(),
                        rules,
                        settings.people().size());
    }

    /** Collects steps; the first that is not done is the next. */
    private static final class Steps {

        private final BenchNow now;
        private final List<Step> steps = new ArrayList<>();

        Steps(BenchNow now) {
            this.now = now;
        }

        void add(String key, String told, boolean done, String... paths) {
            boolean next = !done && steps.stream().allMatch(Step::done);
            List<Act> acts = new ArrayList<>();
            for (int i = 0; i < paths.length; i++) {
                String name = now.words().of("first-day." + key + (i == 0 ? ".do" : ".also"));
                acts.add(new Act(name, now.place().path(paths[i])));
            }
            steps.add(new Step(now.words().of("first-day." + key), told, done, next, acts));
        }
    }
}
