package org.lowfirst.web.people;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.KeepingPeople;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.station.PersonDetails;
import org.lowfirst.station.Roster;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
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

/** Lists and describes the people of a bench. */
@Controller
public final class PeoplePages {

    private final Workplace workplace;

    public PeoplePages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/people")
    View list(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        Roster roster = now.bench().roster();
        PersonWriter writer = new PersonWriter(now, roster);
        return workplace
                .screens()
                .show(new PeoplePage(
                        now.place(),
                        roster.everybodyResponsible(),
                        roster.names().stream()
                                .map(name -> writer.line(name, path(now, name)))
                                .toList()));
    }

    private static String path(BenchNow now, String name) {
        return now.place().path("/people/one?name=" + URLEncoder.encode(name, StandardCharsets.UTF_8));
    }

    @GetMapping("/at/{bench}/people/one")
    View show(@PathVariable String bench, @RequestParam(defaultValue = "") String name) {
        BenchNow now = workplace.open(bench);
        return workplace.screens().show(page(now, name, name.isEmpty() ? Form.blank() : filled(now, name)));
    }

    @PostMapping("/at/{bench}/people/one")
    View describe(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        String known = typed.getOrDefault("known", "");
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable PersonDetails person = PersonFields.read(reader, now.words());
        if (person != null && known.isEmpty() && now.place().people().contains(person.name())) {
            reader.fault("name", now.words().of("rule.name_taken", person.name()));
            person = null;
        }
        if (person == null) {
            return workplace.screens().refused(page(now, known, reader.form()));
        }
        Sender sender = Sender.of(typed);
        Recording recording = keeping().describe(now.id(), person, sender.submission());
        return answer(now, known, reader.form(), recording, sender);
    }

    @PostMapping("/at/{bench}/people/left")
    View left(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        String name = typed.getOrDefault("known", "");
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        String reason = reader.required("reason", "fault.reason");
        reader.required(Sender.WHO, "fault.who");
        Form form = filled(now, name).filled("reason", reason).filled(Sender.WHO, reader.text(Sender.WHO));
        if (!reader.form().sound()) {
            return workplace.screens().refused(page(now, name, form.withFaultsOf(reader.form())));
        }
        Sender sender = Sender.of(typed);
        return answer(now, name, form, keeping().left(now.id(), name, reason, sender.submission()), sender);
    }

    private View answer(BenchNow now, String name, Form form, Recording recording, Sender sender) {
        String fault = workplace.fault(recording);
        if (fault.isEmpty()) {
            return Redirects.saved(
                    now.place().path("/people"), Answers.entry(recording).orElse(0L), sender.who());
        }
        return workplace
                .screens()
                .refused(page(now, name, form.faulting(PersonFields.field(Answers.rule(recording)), fault)));
    }

    private PersonPage page(BenchNow now, String name, Form form) {
        return new PersonPage(
                now.place(),
                name,
                PersonFields.roles(now.words()),
                form,
                workplace.ids().next());
    }

    private static Form filled(BenchNow now, String name) {
        if (!now.place().people().contains(name)) {
            throw new NoSuchThing("person " + name);
        }
        return PersonFields.filled(name, now.bench().roster().find(name).orElse(null));
    }

    private KeepingPeople keeping() {
        return workplace.benches().keepingPeople();
    }
}
