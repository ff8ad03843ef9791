package org.lowfirst.web.fill;

import java.util.List;
import org.lowfirst.app.bench.JournalLine;
import org.lowfirst.app.honest.BalanceReport;
import org.lowfirst.app.honest.Outcome;
import org.lowfirst.app.honest.Problem;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.FillId;
import org.lowfirst.station.Supply;
import org.lowfirst.web.fill.DonePage.BalanceLine;
import org.lowfirst.web.money.Payers;
import org.lowfirst.web.verdict.VerdictBadge;
import org.lowfirst.web.view.NoSuchThing;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** Shows what became of a fill. */
@Controller
public final class DonePages {

    /** A fill is looked for among so many of the newest entries. */
    private static final int LOOK_BACK = 500;

    private final Workplace workplace;

    public DonePages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/fill/{fill}/done")
    View done(@PathVariable String bench, @PathVariable String fill) {
        BenchNow now = workplace.open(bench);
        List<JournalLine> lines = workplace.benches().readingTheJournal().listLines(now.id(), 0, LOOK_BACK);
        Told told = Told.find(lines, fill).orElseThrow(() -> new NoSuchThing("fill " + fill));
        String after = now.figures().pressure(told.after());
        List<String> stages = told.stages().stream()
                .map(stage -> now.words()
                        .of(
                                "done.stage",
                                now.bench()
                                        .findSupply(stage.supply())
                                        .map(Supply::details)
                                        .map(details -> details.name())
                                        .orElse(stage.supply().value()),
                                now.figures()
                                        .pressureWithUnit(
                                                stage.bottleAfter().pressure().gauge())))
                .toList();
        return workplace
                .screens()
                .show(new DonePage(
                        now.place(),
                        name(now, told.bottle()),
                        told.finished(),
                        now.figures().pressureUnit(),
                        now.figures().pressure(told.before()),
                        after,
                        stages,
                        balance(now, fill),
                        new Payers(workplace).findPart(now, new FillId(fill), Payers.DONE),
                        now.place().path("/bottles/" + told.bottle()),
                        now.place().path("/papers/record-of/" + fill)));
    }

    private BalanceLine balance(BenchNow now, String fill) {
        Outcome<BalanceReport> outcome = workplace.benches().judgingReadings().balance(now.id(), new FillId(fill));
        if (outcome instanceof Outcome.Given<BalanceReport> given) {
            BalanceReport report = given.value();
            return new BalanceLine(VerdictBadge.of(report), report.sentence(), report.possible());
        }
        Problem problem = ((Outcome.Declined<BalanceReport>) outcome).problem();
        return new BalanceLine(null, problem.sentence() + " " + problem.advice(), List.of());
    }

    private static String name(BenchNow now, BottleId id) {
        return now.bench()
                .findBottle(id)
                .map(Bottle::details)
                .map(details -> details.name())
                .orElse(id.value());
    }
}
