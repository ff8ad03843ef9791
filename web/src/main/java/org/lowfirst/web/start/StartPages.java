package org.lowfirst.web.start;

import java.util.List;
import org.lowfirst.app.bench.BenchSummary;
import org.lowfirst.station.BenchId;
import org.lowfirst.web.start.StartPage.Line;
import org.lowfirst.web.view.Redirects;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.View;

/** Shows what there is to begin with. */
@Controller
public final class StartPages {

    private final Workplace workplace;

    public StartPages(Workplace workplace) {
        this.workplace = workplace;
    }

    /** The only bench at once; otherwise a choice. */
    @GetMapping("/")
    View start() {
        List<BenchSummary> benches = workplace.benches().openingABench().listBenches();
        return benches.size() == 1 ? Redirects.to(bank(benches.get(0).id())) : choice(benches);
    }

    /** The choice, also when there is only one bench. */
    @GetMapping("/benches")
    View choose() {
        return choice(workplace.benches().openingABench().listBenches());
    }

    @PostMapping("/demo")
    View loadDemo() {
        return Redirects.to(bank(workplace.benches().loadingTheDemoBench().load()));
    }

    @PostMapping("/demo/remove")
    View removeDemo() {
        workplace.benches().removingTheDemo().remove();
        return Redirects.to("/");
    }

    private View choice(List<BenchSummary> benches) {
        List<Line> lines = benches.stream()
                .map(bench -> new Line(
                        bank(bench.id()), bench.name(), workplace.words().count("start.entries", bench.entries())))
                .toList();
        return workplace.screens().show(new StartPage(lines, benches.stream().anyMatch(BenchSummary::demo)));
    }

    private static String bank(BenchId bench) {
        return "/at/" + bench + "/bank";
    }
}
