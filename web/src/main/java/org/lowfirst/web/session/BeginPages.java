package org.lowfirst.web.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.PlanningASession.Asked;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.planning.PlanRefused;
import org.lowfirst.planning.session.Effort;
import org.lowfirst.planning.session.SessionOutcome;
import org.lowfirst.planning.session.SessionPlan;
import org.lowfirst.planning.session.SessionPlanner;
import org.lowfirst.planning.session.SessionRefused;
import org.lowfirst.planning.session.SessionWatch;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.FillId;
import org.lowfirst.station.SessionAim;
import org.lowfirst.station.SessionId;
import org.lowfirst.station.SessionWish;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.view.Redirects;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Sender;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Begins a session with the bottles that were planned. */
@Controller
public final class BeginPages {

    private final Workplace workplace;

    public BeginPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @PostMapping("/at/{bench}/session/begin")
    View begin(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        List<Bottle> chosen = SessionFields.chosen(now, typed);
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable StatedTemperature temperature = reader.temperatureIfTyped("temperature");
        SessionFields.read(reader, now, chosen);
        Sender sender = Sender.of(typed);
        if (sender.who().isEmpty()) {
            reader.fault(Sender.WHO, now.words().of("fault.who"));
        }
        if (!sender.hasKey() || chosen.isEmpty()) {
            reader.fault("form", now.words().of(chosen.isEmpty() ? "fault.session.none" : "fault.key"));
        }
        return reader.form().sound()
                ? begun(now, chosen, wishes(now, chosen, temperature, typed, sender.key()), reader)
                : refused(now, chosen, reader);
    }

    private View begun(BenchNow now, List<Bottle> chosen, List<SessionWish> wishes, Reader reader) {
        Sender sender = Sender.of(reader.form().typed());
        SessionAim aim = aim(reader.text("order"));
        String bank = now.bench().usualBank();
        Asked asked = workplace.benches().planningASession().asked(now.id(), bank, aim, wishes);
        SessionOutcome outcome =
                SessionPlanner.under(asked.conditions()).plan(asked.request(), Effort.USUAL, SessionWatch.PATIENT);
        if (!(outcome instanceof SessionPlan plan)) {
            PlanRefused why = ((SessionRefused) outcome).why();
            reader.fault(SessionFields.fieldOf(why, chosen), why.inWords(now.shownUnits()));
            return refused(now, chosen, reader);
        }
        Recording recording = workplace
                .benches()
                .guidingASession()
                .begin(
                        now.id(),
                        new SessionId(sender.key()),
                        bank.isEmpty() ? null : bank,
                        aim,
                        wishes,
                        plan,
                        sender.submission());
        String fault = workplace.fault(recording);
        if (!fault.isEmpty()) {
            reader.fault("form", fault);
            return refused(now, chosen, reader);
        }
        return Redirects.saved(now.place().path("/session/now"), 0, sender.who());
    }

    private View refused(BenchNow now, List<Bottle> chosen, Reader reader) {
        Form form = reader.form();
        return workplace
                .screens()
                .refused(SessionPages.page(now, chosen, form, workplace.ids().next(), null));
    }

    /** The bottles as they were typed; none can be wanted above what its marking allows. */
    private List<SessionWish> wishes(
            BenchNow now,
            List<Bottle> chosen,
            @Nullable StatedTemperature temperature,
            Map<String, String> typed,
            String key) {
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        List<SessionWish> wishes = new ArrayList<>();
        for (Bottle bottle : chosen) {
            BottleId id = bottle.id();
            @Nullable StatedPressure reads = reader.pressure("reading-" + id);
            @Nullable StatedPressure target = reader.pressure("target-" + id);
            if (reads != null && target != null) {
                wishes.add(new SessionWish(
                        new FillId(key + "." + (wishes.size() + 1)),
                        id,
                        now.reading(reads, temperature),
                        workplace.benches().judgingFitness().allowed(now.id(), id, target),
                        reader.pressureIfTyped("floor-" + id),
                        SessionFields.priority(reader, now, "priority-" + id)));
            }
        }
        return wishes;
    }

    private static SessionAim aim(String order) {
        return switch (order) {
            case "gas" -> SessionAim.GAS;
            case "changes" -> SessionAim.CHANGES;
            case "time" -> SessionAim.TIME;
            default -> SessionAim.USUAL;
        };
    }
}
