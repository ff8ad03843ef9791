package org.lowfirst.web.due;

import jakarta.servlet.http.HttpServletRequest;
import org.lowfirst.app.bench.AskingWhatIsDue;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/** Shows what falls due, as a page and as a calendar to subscribe to. */
@Controller
public final class DuePages {

    private final Workplace workplace;

    public DuePages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/due")
    View due(@PathVariable String bench, HttpServletRequest request) {
        BenchNow now = workplace.open(bench);
        AskingWhatIsDue asking = workplace.benches().askingWhatIsDue();
        String calendar = ServletUriComponentsBuilder.fromRequestUri(request)
                .replacePath(now.place().path("/due.ics"))
                .toUriString();
        return workplace.screens().show(new DueWriter(now, asking, asking.sheet(now.id())).page(calendar));
    }

    @GetMapping("/at/{bench}/due.ics")
    View calendar(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        return new CalendarFile(workplace.benches().askingWhatIsDue().calendar(now.id()));
    }
}
