package org.lowfirst.web.session;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.GuidingASession;
import org.lowfirst.app.bench.JudgingFitness;
import org.lowfirst.app.bench.Phase;
import org.lowfirst.app.bench.Position;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.bench.SessionNow;
import org.lowfirst.app.fitness.FitnessReport;
import org.lowfirst.station.FillId;
import org.lowfirst.station.OpenSession;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Rule;
import org.lowfirst.station.SessionFact.StageSkipped;
import org.lowfirst.station.SessionId;
import org.lowfirst.station.SessionWish;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.SupplyId;
import org.lowfirst.web.fill.Steps;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.gate.Gates;
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

/** Leads through a session: the one thing to do next, and what can be left out of it. */
@Controller
public final class GuidedPages {

    private final Workplace workplace;

    public GuidedPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/session/now")
    View next(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        Optional<SessionNow> guided = guiding().now(now.id());
        if (guided.isPresent()) {
            return workplace
                    .screens()
                    .show(new GuidedWriter(now, guided.get())
                            .page(Form.blank(), workplace.ids().next()));
        }
        @Nullable OpenSession latest = now.bench().sessions().latest();
        return latest == null
                ? Redirects.to(now.place().path("/session"))
                : workplace
                        .screens()
                        .show(new GuidedWriter(now, new SessionNow(latest, new SessionNow.Act.End(), List.of()))
                                .ended(workplace.ids().next()));
    }

    @PostMapping("/at/{bench}/session/now/bottle")
    View bottle(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        FillId fill = new FillId(id(typed, "fill"));
        @Nullable
        SessionWish wish = now.bench()
                .sessions()
                .findOpen(fill)
                .flatMap(session -> session.findWish(fill))
                .orElse(null);
        if (wish == null) {
            return Redirects.to(now.place().path("/session/now"));
        }
        if (now.bench().findOpenFill(fill).isPresent()) {
            return Redirects.to(now.place().path("/fill/" + fill));
        }
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable StatedPressure reads = reader.pressure("before");
        if (reads != null) {
            now.offScale(wish.bottle(), reads).ifPresent(sentence -> reader.fault("before", sentence));
        }
        Sender sender = Sender.of(typed);
        if (sender.who().isEmpty()) {
            reader.fault(Sender.WHO, now.words().of("fault.who"));
        }
        if (reads == null || !reader.form().sound()) {
            return refused(now, reader.form());
        }
        boolean assumed = wish.before().temperatureAssumed();
        return started(
                now, wish, now.reading(reads, assumed ? null : wish.before().temperature()), reader.form());
    }

    /** The same gate as for a fill: what is refused drops out with its reason, open questions are asked. */
    private View started(BenchNow now, SessionWish wish, Reading before, Form form) {
        Sender sender = Sender.of(form.typed());
        JudgingFitness judging = workplace.benches().judgingFitness();
        FitnessReport report = judging.forFill(now.id(), wish.bottle(), wish.target(), before);
        if (report.word().refused()) {
            String reason = report.lines().refusals().stream()
                    .map(line -> line.sentence())
                    .findFirst()
                    .orElse(report.headline());
            Recording recording = guiding().leaveOut(now.id(), wish.fill(), reason, sender.submission());
            return after(now, form, "form", recording);
        }
        if (!report.mayBeFilled()) {
            Form asked = form.filled("bottle", wish.bottle().value())
                    .filled("target", now.figures().toType(wish.target()));
            return workplace
                    .screens()
                    .refused(Gates.page(workplace, now, now.bench().getBottle(wish.bottle()), report, before, asked));
        }
        String second = form.value("second").strip();
        Recording recording = guiding()
                .startBottle(now.id(), wish.fill(), before, second.isEmpty() ? null : second, sender.submission());
        String fault = workplace.fault(recording);
        if (!fault.isEmpty()) {
            boolean beside = Answers.rule(recording)
                    .filter(rule -> rule == Rule.FILLS_NOT_ALONE || rule == Rule.CANNOT_STAND_BESIDE)
                    .isPresent();
            Form again = form.faulting(beside ? "second" : "before", fault);
            return refused(now, Answers.confirmable(recording) ? again.filled(Form.CONFIRMABLE, "yes") : again);
        }
        guiding().keepUp(now.id(), sender.submission("session"));
        String path = now.place().path("/fill/" + wish.fill());
        return Redirects.saved(Steps.at(path, new Position(1, Phase.CONNECT, null), now.now()), 0, sender.who());
    }

    @PostMapping("/at/{bench}/session/now/skip")
    View skip(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        String reason = reader.required("skip-reason", "fault.reason");
        if (!reader.form().sound()) {
            return refused(now, reader.form());
        }
        StageSkipped skipped = new StageSkipped(
                session(typed), new FillId(id(typed, "fill")), new SupplyId(id(typed, "supply")), reason);
        return after(
                now,
                reader.form(),
                "skip-reason",
                guiding().skip(now.id(), skipped, Sender.of(typed).submission()));
    }

    @PostMapping("/at/{bench}/session/now/out")
    View out(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        String reason = reader.required("out-reason", "fault.reason");
        if (!reader.form().sound()) {
            return refused(now, reader.form());
        }
        FillId fill = new FillId(id(typed, "fill"));
        return after(
                now,
                reader.form(),
                "out-reason",
                guiding().leaveOut(now.id(), fill, reason, Sender.of(typed).submission()));
    }

    @PostMapping("/at/{bench}/session/now/end")
    View end(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        String reason = reader.required("end-reason", "fault.reason");
        if (!reader.form().sound()) {
            return refused(now, reader.form());
        }
        return after(
                now,
                reader.form(),
                "end-reason",
                guiding().end(now.id(), session(typed), reason, Sender.of(typed).submission()));
    }

    @PostMapping("/at/{bench}/session/now/again")
    View again(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        guiding().keepUp(now.id(), Sender.of(typed).submission());
        return Redirects.to(now.place().path("/session/now"));
    }

    private View after(BenchNow now, Form form, String field, Recording recording) {
        String fault = workplace.fault(recording);
        if (!fault.isEmpty()) {
            return refused(now, form.faulting(field, fault));
        }
        guiding().keepUp(now.id(), Sender.of(form.typed()).submission("session"));
        return Redirects.to(now.place().path("/session/now"));
    }

    private View refused(BenchNow now, Form form) {
        return guiding()
                .now(now.id())
                .map(guided -> workplace
                        .screens()
                        .refused(new GuidedWriter(now, guided)
                                .page(form, workplace.ids().next())))
                .orElseGet(() -> Redirects.to(now.place().path("/session/now")));
    }

    private static SessionId session(Map<String, String> typed) {
        return new SessionId(id(typed, "session"));
    }

    /** What no page of ours sent is taken for something unknown. */
    private static String id(Map<String, String> typed, String field) {
        String id = typed.getOrDefault(field, "");
        return id.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,63}") ? id : "none";
    }

    private GuidingASession guiding() {
        return workplace.benches().guidingASession();
    }
}
