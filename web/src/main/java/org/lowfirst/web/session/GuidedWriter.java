package org.lowfirst.web.session;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Phase;
import org.lowfirst.app.bench.Position;
import org.lowfirst.app.bench.SessionNow;
import org.lowfirst.station.FillId;
import org.lowfirst.station.OpenFill;
import org.lowfirst.station.OpenSession;
import org.lowfirst.station.PlannedStage;
import org.lowfirst.station.SessionWish;
import org.lowfirst.web.fill.Besides;
import org.lowfirst.web.fill.SessionWhy;
import org.lowfirst.web.fill.Steps;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.session.GuidedPage.BottleLine;
import org.lowfirst.web.session.GuidedPage.Next;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;

/** Writes a session under way for people. */
final class GuidedWriter {

    private final BenchNow now;
    private final Words words;
    private final SessionNow guided;
    private final OpenSession session;
    private final SessionWhy said;

    GuidedWriter(BenchNow now, SessionNow guided) {
        this.now = now;
        this.words = now.words();
        this.guided = guided;
        this.session = guided.session();
        this.said = new SessionWhy(now, session);
    }

    /** What became of it, when it has ended. */
    GuidedPage ended(String key) {
        Next next = new Next(
                words.of("session.now.ended"),
                "",
                words.of("session.now.ended.do"),
                now.place().path("/bank"),
                "",
                "",
                "",
                "");
        return page(next, true, Form.blank(), key);
    }

    GuidedPage page(Form form, String key) {
        return page(next(), false, form, key);
    }

    private GuidedPage page(Next next, boolean ended, Form form, String key) {
        return new GuidedPage(
                now.place(),
                session.id().value(),
                ended,
                next,
                said.sentences(guided.why()),
                session.remaining().stream().map(this::stage).toList(),
                session.wishes().stream().map(this::bottle).toList(),
                Besides.of(now),
                form,
                key);
    }

    private Next next() {
        SessionNow.Act act = guided.act();
        if (act instanceof SessionNow.Act.Begin begin) {
            return new Next(
                    words.of("session.now.begin", said.bottle(begin.wish().fill())),
                    words.of(vented(begin.wish().fill()), stage(begin.stage())),
                    words.of("session.now.begin.do"),
                    "",
                    begin.wish().fill().value(),
                    begin.stage().supply().value(),
                    stage(begin.stage()),
                    now.figures().pressureUnit());
        } else if (act instanceof SessionNow.Act.GoOn on) {
            boolean there = on.fill().id().equals(session.latest());
            Position at = new Position(on.fill().stages().size() + 1, there ? Phase.OPEN_SUPPLY : Phase.CONNECT, null);
            return new Next(
                    words.of(
                            there ? "session.now.on" : "session.now.back",
                            said.bottle(on.fill().id())),
                    words.of(vented(on.fill().id()), stage(on.stage())),
                    words.of("session.now.on.do"),
                    there ? path(on.fill()) : at(on.fill(), at),
                    on.fill().id().value(),
                    on.stage().supply().value(),
                    stage(on.stage()),
                    "");
        } else if (act instanceof SessionNow.Act.Finish finish) {
            return finish(finish.fill());
        }
        boolean end = act instanceof SessionNow.Act.End;
        return new Next(
                words.of(end ? "session.now.over" : "session.now.plan"),
                "",
                words.of(end ? "session.now.over.do" : "session.now.plan.do"),
                "",
                "",
                "",
                "",
                "");
    }

    /** Whether another bottle was on the hose before, and must be off it now. */
    private String vented(FillId fill) {
        @Nullable FillId latest = session.latest();
        return latest == null || latest.equals(fill) ? "session.now.next" : "session.now.begin.then";
    }

    private Next finish(OpenFill fill) {
        boolean there = fill.id().equals(session.latest());
        Position at = new Position(fill.stages().size() + 1, there ? Phase.SHUT_BOTTLE : Phase.FINISH, null);
        return new Next(
                words.of("session.now.finish", said.bottle(fill.id())),
                words.of("session.now.finish.then"),
                words.of("session.now.finish.do"),
                at(fill, at),
                "",
                "",
                "",
                "");
    }

    private String path(OpenFill fill) {
        return now.place().path("/fill/" + fill.id());
    }

    private String at(OpenFill fill, Position position) {
        return Steps.at(path(fill), position, now.now());
    }

    private String stage(PlannedStage stage) {
        return words.of(
                stage.atStop() ? "session.now.stage.stop" : "session.now.stage.equal",
                said.bottle(stage.fill()),
                said.supply(stage.supply()),
                said.shown(stage.until()));
    }

    private BottleLine bottle(SessionWish wish) {
        FillId fill = wish.fill();
        Optional<OpenFill> open = now.bench().findOpenFill(fill);
        String target = said.shown(wish.target());
        @Nullable String out = session.out().get(fill);
        if (out != null) {
            return new BottleLine(fill.value(), said.bottle(fill), words.of("session.now.is-out", out), false);
        } else if (session.finished().contains(fill)) {
            return new BottleLine(fill.value(), said.bottle(fill), words.of("session.now.is-done"), false);
        }
        String stands = open.map(filling -> words.of(
                        "session.now.is-open", said.shown(filling.bottleNow().pressure()), target))
                .orElseGet(() -> words.of(
                        session.remaining(fill).isEmpty() ? "session.now.is-not-taken" : "session.now.is-waiting",
                        said.shown(wish.before().pressure()),
                        target));
        return new BottleLine(fill.value(), said.bottle(fill), stands, true);
    }
}
