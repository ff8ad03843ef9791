package org.lowfirst.web.ready;

import java.util.Map;
import org.lowfirst.app.bench.KeepingReady;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.station.BottleId;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
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

/** The check of a shift: begins it, shows it, swaps bottles. */
@Controller
public final class ReadyPages {

    private final Workplace workplace;

    public ReadyPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/ready")
    View check(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        return workplace.screens().show(page(now, Form.blank()));
    }

    @PostMapping("/at/{bench}/ready/shift")
    View start(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Form form = signed(typed, now);
        if (!form.sound()) {
            return workplace.screens().refused(page(now, form));
        }
        Sender sender = Sender.of(typed);
        return answer(now, form, keeping().startShift(now.id(), sender.submission()), sender);
    }

    @PostMapping("/at/{bench}/ready/swap")
    View swap(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Form form = signed(typed, now);
        BottleId out = ReadyBottles.bottle(now, typed.getOrDefault("out", "")).id();
        BottleId in = ReadyBottles.bottle(now, typed.getOrDefault("in", "")).id();
        if (!form.sound()) {
            return workplace.screens().refused(page(now, form));
        }
        Sender sender = Sender.of(typed);
        return answer(now, form, keeping().swap(now.id(), out, in, sender.submission()), sender);
    }

    private static Form signed(Map<String, String> typed, BenchNow now) {
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        reader.required(Sender.WHO, "fault.who");
        if (!Sender.of(typed).hasKey()) {
            reader.fault("form", now.words().of("fault.key"));
        }
        return reader.form();
    }

    private View answer(BenchNow now, Form form, Recording recording, Sender sender) {
        String fault = workplace.fault(recording);
        return fault.isEmpty()
                ? Redirects.saved(
                        now.place().path("/ready"), Answers.entry(recording).orElse(0L), sender.who())
                : workplace.screens().refused(page(now, form.faulting("form", fault)));
    }

    private ReadyPage page(BenchNow now, Form form) {
        return new ReadyWriter(now, keeping().now(now.id()))
                .page(form, workplace.ids().next());
    }

    private KeepingReady keeping() {
        return workplace.benches().keepingReady();
    }
}
