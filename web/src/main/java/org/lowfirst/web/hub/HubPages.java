package org.lowfirst.web.hub;

import org.lowfirst.web.ahead.OrderAlert;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** Leads on from a place to its pages. */
@Controller
public final class HubPages {

    private final Workplace workplace;

    public HubPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/bench")
    View bench(@PathVariable String bench) {
        return show(workplace.open(bench), Section.BENCH, "hub.bench.lead", "");
    }

    @GetMapping("/at/{bench}/ahead")
    View ahead(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        return show(now, Section.AHEAD, "hub.ahead.lead", OrderAlert.of(now, workplace));
    }

    private View show(BenchNow now, Section section, String lead, String alert) {
        Words words = now.words();
        return workplace
                .screens()
                .show(new HubPage(
                        now.place(),
                        section,
                        words.of(lead),
                        alert,
                        Hub.of(section).stream()
                                .map(hub -> new HubPage.Line(
                                        words.of(hub.key()), words.of(hub.key() + ".what"), address(hub, now)))
                                .toList()));
    }

    private static String address(Hub hub, BenchNow now) {
        return hub.path().isEmpty() ? "/benches" : now.place().path(hub.path());
    }
}
