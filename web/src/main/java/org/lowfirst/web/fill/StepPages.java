package org.lowfirst.web.fill;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Guide;
import org.lowfirst.app.bench.GuidingAFill;
import org.lowfirst.app.bench.Phase;
import org.lowfirst.app.bench.Position;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.honest.StepStop;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.AbandonFill;
import org.lowfirst.station.Command.FinishFill;
import org.lowfirst.station.Command.RecordStage;
import org.lowfirst.station.FillId;
import org.lowfirst.station.OpenFill;
import org.lowfirst.station.Stage;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.SupplyId;
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

/** Leads through a fill step by step. */
@Controller
public final class StepPages {

    private final Workplace workplace;

    public StepPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/fill/{fill}")
    View step(
            @PathVariable String bench,
            @PathVariable String fill,
            @RequestParam(required = false) @Nullable String at,
            @RequestParam(required = false) @Nullable String seen) {
        BenchNow now = workplace.open(bench);
        if (open(now, fill).isEmpty()) {
            return Redirects.to(now.place().path("/fill/" + fill + "/done"));
        }
        return show(now, fill, Steps.find(at, seen, now.now()).orElse(null), Form.blank());
    }

    @PostMapping("/at/{bench}/fill/{fill}/stage")
    View stage(@PathVariable String bench, @PathVariable String fill, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Position position = position(typed);
        Entered entered = Entered.read(typed, now, bottle(now, fill), position.supply());
        @Nullable StatedPressure bottle = entered.bottle();
        @Nullable SupplyId supply = position.supply();
        if (bottle == null || !entered.form().sound() || supply == null) {
            return refused(now, fill, position, entered.form());
        }
        Stage stage = new Stage(supply, now.reading(bottle, null), null, entered.supplyReading(now));
        Recording recording = guiding()
                .recordStage(
                        now.id(),
                        new RecordStage(new FillId(fill), stage),
                        position.stage(),
                        Sender.of(typed).submission());
        keepUp(now, fill, typed, recording);
        return answer(now, fill, position, "bottle", entered.form(), recording, next(position));
    }

    @PostMapping("/at/{bench}/fill/{fill}/finish")
    View finish(@PathVariable String bench, @PathVariable String fill, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Position position = position(typed);
        Entered entered = Entered.read(typed, now, bottle(now, fill), null);
        @Nullable StatedPressure bottle = entered.bottle();
        if (bottle == null || !entered.form().sound()) {
            return refused(now, fill, position, entered.form());
        }
        Recording recording = guiding()
                .finish(
                        now.id(),
                        new FinishFill(new FillId(fill), now.reading(bottle, null)),
                        Sender.of(typed).submission());
        keepUp(now, fill, typed, recording);
        return answer(now, fill, position, "bottle", entered.form(), recording, null);
    }

    @PostMapping("/at/{bench}/fill/{fill}/abandon")
    View abandon(@PathVariable String bench, @PathVariable String fill, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Position position = position(typed);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        String reason = reader.required("reason", "fault.reason");
        if (!reader.form().sound()) {
            return refused(now, fill, position, reader.form());
        }
        Recording recording = guiding()
                .abandon(
                        now.id(),
                        new AbandonFill(new FillId(fill), reason),
                        Sender.of(typed).submission());
        keepUp(now, fill, typed, recording);
        return answer(now, fill, position, "reason", reader.form(), recording, null);
    }

    /** Plans the rest of the session again when this does not fit its plan. */
    private void keepUp(BenchNow now, String fill, Map<String, String> typed, Recording recording) {
        if (recording instanceof Recording.Recorded && inSession(now, fill)) {
            workplace
                    .benches()
                    .guidingASession()
                    .keepUp(now.id(), Sender.of(typed).submission("session"));
        }
    }

    private static boolean inSession(BenchNow now, String fill) {
        return now.bench().sessions().findOpen(new FillId(fill)).isPresent();
    }

    private View answer(
            BenchNow now,
            String fill,
            Position position,
            String field,
            Form form,
            Recording recording,
            @Nullable Position next) {
        String fault = workplace.fault(recording);
        if (!fault.isEmpty()) {
            Form again = form.faulting(field, fault);
            return refused(
                    now,
                    fill,
                    position,
                    Answers.confirmable(recording) ? again.filled(Form.CONFIRMABLE, "yes") : again);
        }
        String path = now.place().path("/fill/" + fill);
        if (next == null && inSession(now, fill)) {
            return Redirects.to(now.place().path("/session/now"));
        }
        return Redirects.to(next == null ? path + "/done" : Steps.at(path, next, now.now()));
    }

    private View refused(BenchNow now, String fill, Position position, Form form) {
        return guide(now, fill, position) instanceof Guide.Step step
                ? workplace.screens().refused(page(now, step, form))
                : Redirects.to(now.place().path("/fill"));
    }

    private View show(BenchNow now, String fill, @Nullable Position position, Form form) {
        Guide guide = guide(now, fill, position);
        if (guide instanceof Guide.Step step) {
            return workplace.screens().show(page(now, step, form));
        }
        if (guide instanceof Guide.AskValves ask) {
            StepWriter writer = new StepWriter(now, ask.fill());
            return workplace
                    .screens()
                    .show(new ValvesPage(
                            now.place(),
                            writer.line(),
                            ask.choices().stream()
                                    .map(choice -> new ValvesPage.Choice(
                                            writer.open(choice.valves()),
                                            Steps.at(writer.path(), choice.goOn(), now.now())))
                                    .toList()));
        }
        return Redirects.to(now.place().path("/fill"));
    }

    private StepPage page(BenchNow now, Guide.Step step, Form form) {
        return new StepWriter(now, step.fill(), warm(now, step))
                .page(step, why(now, step), form, workplace.ids().next());
    }

    /** Why the rest of the session was planned again; empty when it was not. */
    private List<String> why(BenchNow now, Guide.Step step) {
        return inSession(now, step.fill().id().value())
                ? workplace
                        .benches()
                        .guidingASession()
                        .now(now.id())
                        .map(guided -> new SessionWhy(now, guided.session()).sentences(guided.why()))
                        .orElse(List.of())
                : List.of();
    }

    private Guide guide(BenchNow now, String fill, @Nullable Position position) {
        return guiding().guide(now.id(), new FillId(fill), position);
    }

    /** Where the gauge may go while the gas is warm; null where nothing flows or the mark holds. */
    private @Nullable StepStop warm(BenchNow now, Guide.Step step) {
        return step.supply() == null
                ? null
                : workplace
                        .benches()
                        .stoppingAndSettling()
                        .findForStep(now.id(), step.fill())
                        .orElse(null);
    }

    private static Position next(Position position) {
        return new Position(position.stage() + 1, Phase.OPEN_SUPPLY, null);
    }

    private static Position position(Map<String, String> typed) {
        try {
            return Position.parse(typed.getOrDefault("at", ""));
        } catch (IllegalArgumentException notMadeHere) {
            throw new NoSuchThing("step " + typed.get("at"));
        }
    }

    private static Optional<OpenFill> open(BenchNow now, String fill) {
        return now.bench().openFills().values().stream()
                .filter(open -> open.id().value().equals(fill))
                .findFirst();
    }

    private static @Nullable BottleId bottle(BenchNow now, String fill) {
        return open(now, fill).map(OpenFill::bottle).orElse(null);
    }

    private GuidingAFill guiding() {
        return workplace.benches().guidingAFill();
    }
}
