package org.lowfirst.web.ready;

import java.math.BigDecimal;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.KeepingReady;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.station.Assignment;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.GroupDetails;
import org.lowfirst.station.Rule;
import org.lowfirst.station.Squad;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.ready.GroupsPage.Line;
import org.lowfirst.web.view.NoSuchThing;
import org.lowfirst.web.view.Redirects;
import org.lowfirst.web.workplace.Answers;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Sender;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Lists and describes groups of bottles. */
@Controller
public final class GroupsPages {

    /** Groups beyond the ninth are not told apart by a planner. */
    private static final BigDecimal LAST_PRIORITY = BigDecimal.valueOf(9);

    private static final Map<Rule, String> FIELDS = Map.of(
            Rule.NAME_EMPTY, "name",
            Rule.PRIORITY_BELOW_ONE, "priority",
            Rule.FLOOR_BELOW_ZERO, "floor",
            Rule.FLOOR_ABOVE_WISH, "floor");

    private final Workplace workplace;

    public GroupsPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/groups")
    View list(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        Squad squad = now.bench().areas().care().squad();
        List<Line> groups =
                squad.groups().values().stream().map(group -> line(now, group)).toList();
        List<Line> bottles = workplace.benches().registeringBottles().listBottles(now.id()).stream()
                .filter(Bottle::inUse)
                .map(bottle -> line(now, squad, bottle))
                .toList();
        return workplace.screens().show(new GroupsPage(now.place(), groups, bottles));
    }

    private static Line line(BenchNow now, GroupDetails group) {
        return new Line(
                group.name(),
                now.place().path("/groups/one?name=" + URLEncoder.encode(group.name(), StandardCharsets.UTF_8)),
                now.words()
                        .of(
                                "group.line",
                                group.priority(),
                                now.figures().asTyped(group.floor()),
                                now.figures().asTyped(group.wish())));
    }

    private static Line line(BenchNow now, Squad squad, Bottle bottle) {
        @Nullable Assignment assignment = squad.assigned().get(bottle.id());
        String what = assignment == null
                ? now.words().of("place.none")
                : now.words().of("place.line", assignment.group(), PlacePages.word(now, assignment.place()));
        return new Line(bottle.details().name(), now.place().path("/groups/bottle?bottle=" + bottle.id()), what);
    }

    @GetMapping("/at/{bench}/groups/one")
    View show(@PathVariable String bench, @RequestParam(defaultValue = "") String name) {
        BenchNow now = workplace.open(bench);
        Form form = name.isEmpty() ? Form.with(Map.of("priority", "1")) : filled(now, group(now, name));
        return workplace.screens().show(page(now, name, form));
    }

    @PostMapping("/at/{bench}/groups/one")
    View describe(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        String known = typed.getOrDefault("known", "");
        Reader reader = reader(typed, now);
        @Nullable GroupDetails group = read(reader, now, known);
        if (group == null) {
            return workplace.screens().refused(page(now, known, reader.form()));
        }
        Sender sender = Sender.of(typed);
        return answer(now, known, reader.form(), keeping().describe(now.id(), group, sender.submission()), sender);
    }

    @PostMapping("/at/{bench}/groups/ended")
    View end(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        String name = typed.getOrDefault("known", "");
        Reader reader = reader(typed, now);
        reader.required(Sender.WHO, "fault.who");
        Form form = filled(now, group(now, name)).filled(Sender.WHO, reader.text(Sender.WHO));
        if (!reader.form().sound()) {
            return workplace.screens().refused(page(now, name, form.withFaultsOf(reader.form())));
        }
        Sender sender = Sender.of(typed);
        return answer(now, name, form, keeping().end(now.id(), name, sender.submission()), sender);
    }

    private static @Nullable GroupDetails read(Reader reader, BenchNow now, String known) {
        String name = reader.required("name", "fault.name");
        if (known.isEmpty() && now.bench().areas().care().squad().groups().containsKey(name)) {
            reader.fault("name", now.words().of("rule.name_taken", name));
        }
        reader.required("priority", "fault.number.empty");
        @Nullable BigDecimal priority = reader.numberIfTyped("priority");
        if (priority != null
                && (priority.stripTrailingZeros().scale() > 0
                        || priority.signum() <= 0
                        || priority.compareTo(LAST_PRIORITY) > 0)) {
            reader.fault("priority", now.words().of("fault.priority", priority.toPlainString(), LAST_PRIORITY));
        }
        @Nullable StatedPressure floor = reader.pressure("floor");
        @Nullable StatedPressure wish = reader.pressure("wish");
        reader.required(Sender.WHO, "fault.who");
        if (!Sender.of(reader.form().typed()).hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
        return priority == null
                        || floor == null
                        || wish == null
                        || !reader.form().sound()
                ? null
                : new GroupDetails(name, priority.intValueExact(), floor, wish);
    }

    private View answer(BenchNow now, String name, Form form, Recording recording, Sender sender) {
        String fault = workplace.fault(recording);
        if (fault.isEmpty()) {
            return Redirects.saved(
                    now.place().path("/groups"), Answers.entry(recording).orElse(0L), sender.who());
        }
        String field = Answers.rule(recording)
                .map(rule -> FIELDS.getOrDefault(rule, "form"))
                .orElse("form");
        return workplace.screens().refused(page(now, name, form.faulting(field, fault)));
    }

    private GroupPage page(BenchNow now, String name, Form form) {
        return new GroupPage(
                now.place(),
                name,
                now.figures().pressureUnit(),
                form,
                workplace.ids().next());
    }

    private static Form filled(BenchNow now, GroupDetails group) {
        Map<String, String> fields = new HashMap<>();
        fields.put("name", group.name());
        fields.put("priority", Integer.toString(group.priority()));
        fields.put("floor", now.figures().toType(group.floor()));
        fields.put("wish", now.figures().toType(group.wish()));
        return Form.with(fields);
    }

    private static GroupDetails group(BenchNow now, String name) {
        @Nullable
        GroupDetails group = now.bench().areas().care().squad().groups().get(name);
        if (group == null) {
            throw new NoSuchThing("group " + name);
        }
        return group;
    }

    private static Reader reader(Map<String, String> typed, BenchNow now) {
        return new Reader(typed, now.bench().settings().units(), now.words());
    }

    private KeepingReady keeping() {
        return workplace.benches().keepingReady();
    }
}
