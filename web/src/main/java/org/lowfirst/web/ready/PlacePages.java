package org.lowfirst.web.ready;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.words.Wording;
import org.lowfirst.station.Assignment;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.readiness.Place;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.ready.PlacePage.Choice;
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

/** Says which group a bottle belongs to and where it is meant to be. */
@Controller
public final class PlacePages {

    private final Workplace workplace;

    public PlacePages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/groups/bottle")
    View show(@PathVariable String bench, @RequestParam(defaultValue = "") String bottle) {
        BenchNow now = workplace.open(bench);
        Bottle known = ReadyBottles.bottle(now, bottle);
        @Nullable
        Assignment assignment = now.bench().areas().care().squad().assigned().get(known.id());
        Form form = assignment == null
                ? Form.with(Map.of("place", word(Place.IN_SERVICE)))
                : Form.with(Map.of("group", assignment.group(), "place", word(assignment.place())));
        return workplace.screens().show(page(now, known, form));
    }

    @PostMapping("/at/{bench}/groups/bottle")
    View assign(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Bottle bottle = ReadyBottles.bottle(now, typed.getOrDefault("bottle", ""));
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        reader.required(Sender.WHO, "fault.who");
        Sender sender = Sender.of(typed);
        if (!sender.hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
        if (!reader.form().sound()) {
            return workplace.screens().refused(page(now, bottle, reader.form()));
        }
        Place place = Arrays.stream(Place.values())
                .filter(known -> word(known).equals(reader.text("place")))
                .findFirst()
                .orElse(Place.AWAY);
        @Nullable String group = reader.empty("group") ? null : reader.text("group");
        Recording recording =
                workplace.benches().keepingReady().assign(now.id(), bottle.id(), group, place, sender.submission());
        String fault = workplace.fault(recording);
        if (fault.isEmpty()) {
            return Redirects.saved(
                    now.place().path("/groups"), Answers.entry(recording).orElse(0L), sender.who());
        }
        Form form = reader.form().faulting("group", fault);
        return workplace
                .screens()
                .refused(page(
                        now, bottle, Answers.confirmable(recording) ? form.filled(Form.CONFIRMABLE, "yes") : form));
    }

    private PlacePage page(BenchNow now, Bottle bottle, Form form) {
        List<Choice> choices = Arrays.stream(Place.values())
                .map(place -> new Choice(word(place), word(now, place)))
                .toList();
        return new PlacePage(
                now.place(),
                bottle.id().value(),
                bottle.details().name(),
                List.copyOf(now.bench().areas().care().squad().groups().keySet()),
                choices,
                form,
                workplace.ids().next());
    }

    private static String word(Place place) {
        return place.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Its name in the bench's language. */
    static String word(BenchNow now, Place place) {
        return Wording.of(Place.class, now.words().locale()).text("place." + word(place), Map.of());
    }
}
