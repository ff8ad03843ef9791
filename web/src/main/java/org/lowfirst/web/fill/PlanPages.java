package org.lowfirst.web.fill;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.JudgingFitness;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.fitness.FitnessReport;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.PlanOutcome;
import org.lowfirst.planning.PlanRefused;
import org.lowfirst.planning.contents.FillSpread;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.Command.StartFill;
import org.lowfirst.station.FillId;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Rule;
import org.lowfirst.station.StandFact.BankChosen;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.fill.PlanPage.BottleLine;
import org.lowfirst.web.fill.PlanPage.PlanSheet;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.gate.Gates;
import org.lowfirst.web.gate.VerdictSheet;
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

/** Asks what a bottle reads and should read, shows the plan, and starts the fill. */
@Controller
public final class PlanPages {

    private final Workplace workplace;

    public PlanPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/fill/plan")
    View plan(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Bottle bottle = bottle(now, typed);
        if (!typed.containsKey("before") || typed.containsKey("change")) {
            if (judging().beforeReading(now.id(), bottle.id()).word().refused()) {
                FitnessReport report = judging().ofBottle(now.id(), bottle.id());
                return workplace
                        .screens()
                        .show(Gates.page(workplace, now, bottle, report, bottle.latest(), Form.with(typed)));
            }
            return workplace.screens().show(page(now, bottle, prefilled(now, bottle, typed), null));
        }
        Wish wish = Wish.read(typed, bottle, now);
        return wish.ready()
                ? planned(now, bottle, wish)
                : workplace.screens().refused(page(now, bottle, wish.form(), null));
    }

    @PostMapping("/at/{bench}/fill/start")
    View start(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Bottle bottle = bottle(now, typed);
        Wish wish = Wish.read(typed, bottle, now);
        if (!wish.ready()) {
            return workplace.screens().refused(page(now, bottle, wish.form(), null));
        }
        FitnessReport report = report(now, bottle, wish);
        if (!report.mayBeFilled()) {
            return workplace.screens().refused(Gates.page(workplace, now, bottle, report, wish.before(), wish.form()));
        }
        Sender sender = Sender.of(typed);
        if (sender.who().isEmpty()) {
            return again(now, bottle, wish, Sender.WHO, now.words().of("fault.who"), false);
        }
        if (!sender.hasKey()) {
            return again(now, bottle, wish, "form", now.words().of("fault.key"), false);
        }
        FillId fill = new FillId(sender.key());
        @Nullable String unchosen = chooseBank(now, wish, fill, sender);
        if (unchosen != null) {
            return again(now, bottle, wish, "form", unchosen, false);
        }
        Recording recording = workplace
                .benches()
                .guidingAFill()
                .start(
                        now.id(),
                        new StartFill(fill, bottle.id(), allowed(now, bottle, wish), wish.before()),
                        second(typed),
                        sender.submission());
        String fault = workplace.fault(recording);
        if (!fault.isEmpty()) {
            String field = Answers.rule(recording)
                    .filter(rule -> rule == Rule.FILLS_NOT_ALONE || rule == Rule.CANNOT_STAND_BESIDE)
                    .map(rule -> "second")
                    .orElse("form");
            return again(now, bottle, wish, field, fault, Answers.confirmable(recording));
        }
        String steps = now.place().path("/fill/" + fill);
        return Redirects.saved(Steps.at(steps, Steps.FIRST, now.now()), 0, sender.who());
    }

    /** Says from which of several banks; what stands against it, or null. */
    private @Nullable String chooseBank(BenchNow now, Wish wish, FillId fill, Sender sender) {
        if (now.bench().bankNames().size() < 2) {
            return null;
        }
        String bank = bank(now, wish.form());
        String fault = workplace.fault(workplace
                .benches()
                .guidingAFill()
                .choose(now.id(), new BankChosen(fill, bank.isEmpty() ? null : bank), sender.submission("bank")));
        return fault.isEmpty() ? null : fault;
    }

    /** Name of the bank to fill from: the one chosen, or else the usual one. */
    private static String bank(BenchNow now, Form form) {
        String chosen = form.value("bank");
        return now.bench().bankNames().contains(chosen) ? chosen : now.bench().usualBank();
    }

    /** Who stands beside the filler; null when nobody was named. */
    private static @Nullable String second(Map<String, String> typed) {
        String second = typed.getOrDefault("second", "").strip();
        return second.isEmpty() ? null : second;
    }

    private FitnessReport report(BenchNow now, Bottle bottle, Wish wish) {
        return judging().forFill(now.id(), bottle.id(), wish.target(), wish.before());
    }

    private StatedPressure allowed(BenchNow now, Bottle bottle, Wish wish) {
        return judging().allowed(now.id(), bottle.id(), wish.target());
    }

    private JudgingFitness judging() {
        return workplace.benches().judgingFitness();
    }

    private View planned(BenchNow now, Bottle bottle, Wish wish) {
        FitnessReport report = report(now, bottle, wish);
        if (!report.mayBeFilled()) {
            return workplace.screens().show(Gates.page(workplace, now, bottle, report, wish.before(), wish.form()));
        }
        if (now.bench().sessions().findOpen().isPresent()) {
            return Redirects.to(now.place().path("/session/now"));
        }
        PlanOutcome outcome = workplace
                .benches()
                .planningAFill()
                .plan(now.id(), bank(now, wish.form()), bottle.id(), wish.target(), wish.before());
        if (outcome instanceof FillPlan plan) {
            return workplace
                    .screens()
                    .show(page(now, bottle, wish.form(), VerdictSheet.of(report), sheet(now, plan, wish)));
        }
        return workplace.screens().refused(page(now, bottle, faulty((PlanRefused) outcome, wish, now), null));
    }

    /** The plan once more, with what stands against starting it, and whether the person may insist. */
    private View again(BenchNow now, Bottle bottle, Wish wish, String field, String fault, boolean confirmable) {
        PlanOutcome outcome = workplace
                .benches()
                .planningAFill()
                .plan(now.id(), bank(now, wish.form()), bottle.id(), wish.target(), wish.before());
        @Nullable PlanSheet sheet = outcome instanceof FillPlan plan ? sheet(now, plan, wish) : null;
        Form form = wish.form().faulting(field, fault);
        return workplace
                .screens()
                .refused(page(
                        now,
                        bottle,
                        confirmable ? form.filled(Form.CONFIRMABLE, "yes") : form,
                        VerdictSheet.of(report(now, bottle, wish)),
                        sheet));
    }

    private PlanSheet sheet(BenchNow now, FillPlan plan, Wish wish) {
        FillSpread spread = workplace
                .benches()
                .spreadingAPlan()
                .spread(now.id(), plan, wish.before().temperatureAssumed())
                .spread();
        return new PlanWriter(now).sheet(plan, spread);
    }

    private static Form faulty(PlanRefused refused, Wish wish, BenchNow now) {
        String sentence = refused.inWords(now.shownUnits());
        boolean ofBottle = refused instanceof PlanRefused.BottleAboveLimit;
        return wish.form().faulting(ofBottle ? "before" : "form", sentence);
    }

    private PlanPage page(BenchNow now, Bottle bottle, Form form, @Nullable PlanSheet sheet) {
        return page(now, bottle, form, null, sheet);
    }

    private PlanPage page(
            BenchNow now, Bottle bottle, Form form, @Nullable VerdictSheet verdict, @Nullable PlanSheet sheet) {
        Figures figures = now.figures();
        BottleLine line = new BottleLine(
                bottle.id().value(),
                bottle.details().name(),
                figures.asTyped(bottle.details().waterVolume().stated()),
                figures.asTyped(bottle.details().servicePressure()),
                bottle.details().owner());
        return new PlanPage(
                now.place(),
                line,
                figures.pressureUnit(),
                figures.temperatureUnit(),
                figures.temperature(
                        now.bench().settings().surroundings().usualTemperature().temperature()),
                form,
                workplace.ids().next(),
                Besides.of(now),
                now.bench().bankNames(),
                verdict,
                sheet);
    }

    private static Form prefilled(BenchNow now, Bottle bottle, Map<String, String> typed) {
        Map<String, String> fields = new HashMap<>(typed);
        @Nullable StatedPressure usual = bottle.details().usualTarget();
        StatedPressure target = usual == null ? bottle.details().servicePressure() : usual;
        fields.putIfAbsent("target", now.figures().toType(target));
        @Nullable Reading latest = bottle.latest();
        if (latest != null) {
            fields.put(
                    "latest",
                    now.words()
                            .of(
                                    "bottle.latest",
                                    now.figures()
                                            .pressureWithUnit(latest.pressure().gauge()),
                                    now.age(latest.at())));
        }
        return Form.with(fields);
    }

    private static Bottle bottle(BenchNow now, Map<String, String> typed) {
        String id = typed.getOrDefault("bottle", "");
        return now.bench().listBottles().stream()
                .filter(bottle -> bottle.id().value().equals(id))
                .findFirst()
                .orElseThrow(() -> new NoSuchThing("bottle " + id));
    }
}
