package org.lowfirst.web.exchange;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.Caution;
import org.lowfirst.app.bench.ExchangingASupply;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.station.Command.RemoveSupply;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.Supply;
import org.lowfirst.station.SupplyId;
import org.lowfirst.web.exchange.ExchangeStepPage.Act;
import org.lowfirst.web.exchange.ExchangeStepPage.Step;
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

/** Leads step by step: the supply off, the newcomer in its place. Where it goes on follows from what was entered. */
@Controller
public final class ExchangeStepPages {

    /** A reading this old is no residual of this exchange (common practice, no source). */
    private static final Duration RESIDUAL_STANDS = Duration.ofHours(12);

    private final Workplace workplace;
    private final NewcomerForm newcomers;

    public ExchangeStepPages(Workplace workplace) {
        this.workplace = workplace;
        this.newcomers = new NewcomerForm(workplace);
    }

    @GetMapping("/at/{bench}/exchange/{supply}")
    View show(@PathVariable String bench, @PathVariable String supply, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Supply leaving = ExchangePages.known(now, supply);
        Optional<SupplyId> newcomer = now.bench().stand().findNewcomer(leaving.id());
        if (newcomer.isPresent()) {
            return workplace
                    .screens()
                    .show(writer(now)
                            .done(
                                    leaving,
                                    now.bench().getSupply(newcomer.get()),
                                    workplace.benches().keepingTheBank().bank(now.id())));
        }
        if (!ExchangePages.leaving(now, leaving.id())) {
            return Redirects.to(now.place().path("/exchange"));
        }
        if (!leaving.connected()) {
            return workplace.screens().show(newcomers.page(now, leaving, newcomers.blank(now, leaving)));
        }
        Optional<ExchangePhase> at = ExchangePhase.find(typed.get("at"), typed.get("seen"), now.now());
        return workplace.screens().show(page(now, leaving, at.orElse(ExchangePhase.SHUT), at.isEmpty(), Form.blank()));
    }

    @PostMapping("/at/{bench}/exchange/{supply}/residual")
    View residual(@PathVariable String bench, @PathVariable String supply, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Supply leaving = ExchangePages.known(now, supply);
        if (!leaving.connected() || !ExchangePages.leaving(now, leaving.id())) {
            return Redirects.to(path(now, leaving));
        }
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        @Nullable StatedPressure reading = reader.pressure("reading");
        if (reading != null) {
            now.offScale(leaving.id(), reading).ifPresent(fault -> reader.fault("reading", fault));
        }
        Sender sender = Sender.of(typed);
        if (reading == null || !reader.form().sound()) {
            return workplace.screens().refused(page(now, leaving, ExchangePhase.READ, false, reader.form()));
        }
        Recording recording =
                exchanging().readResidual(now.id(), leaving.id(), now.reading(reading, null), sender.submission());
        String fault = workplace.fault(recording);
        if (!fault.isEmpty()) {
            Form form = reader.form().faulting("reading", fault);
            Form again = Answers.confirmable(recording) ? form.filled(Form.CONFIRMABLE, "yes") : form;
            return workplace.screens().refused(page(now, leaving, ExchangePhase.READ, false, again));
        }
        return Redirects.saved(ExchangePhase.VENT.at(path(now, leaving), now.now()), entry(recording), sender.who());
    }

    @PostMapping("/at/{bench}/exchange/{supply}/off")
    View off(@PathVariable String bench, @PathVariable String supply, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Supply leaving = ExchangePages.known(now, supply);
        if (!leaving.connected() || !ExchangePages.leaving(now, leaving.id())) {
            return Redirects.to(path(now, leaving));
        }
        Sender sender = Sender.of(typed);
        Reading latest = leaving.latest();
        boolean stands = Duration.between(latest.at(), now.now()).compareTo(RESIDUAL_STANDS) <= 0;
        Recording recording = exchanging()
                .takeOff(
                        now.id(),
                        new RemoveSupply(
                                leaving.id(),
                                stands ? latest : null,
                                now.words().of("exchange.reason")),
                        sender.submission());
        String fault = workplace.fault(recording);
        if (!fault.isEmpty()) {
            Form form = Form.with(typed).faulting("form", fault);
            return workplace.screens().refused(page(now, leaving, ExchangePhase.OFF, false, form));
        }
        return Redirects.saved(path(now, leaving), entry(recording), sender.who());
    }

    @PostMapping("/at/{bench}/exchange/{supply}/newcomer")
    View newcomer(@PathVariable String bench, @PathVariable String supply, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Supply leaving = ExchangePages.known(now, supply);
        boolean done = now.bench().stand().findNewcomer(leaving.id()).isPresent();
        return done || !ExchangePages.leaving(now, leaving.id()) || leaving.connected()
                ? Redirects.to(path(now, leaving))
                : newcomers.take(now, leaving, typed);
    }

    @PostMapping("/at/{bench}/exchange/{supply}/drop")
    View drop(@PathVariable String bench, @PathVariable String supply, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Supply leaving = ExchangePages.known(now, supply);
        if (!ExchangePages.leaving(now, leaving.id())) {
            return Redirects.to(path(now, leaving));
        }
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        String reason = reader.required("reason", "fault.reason");
        Sender sender = Sender.of(typed);
        String fault = "";
        if (reader.form().sound()) {
            Recording recording = exchanging().breakOff(now.id(), leaving.id(), reason, sender.submission());
            fault = workplace.fault(recording);
            if (fault.isEmpty()) {
                return Redirects.saved(now.place().path("/bank"), entry(recording), sender.who());
            }
        }
        Form form = fault.isEmpty() ? reader.form() : reader.form().faulting("form", fault);
        return workplace
                .screens()
                .refused(
                        leaving.connected()
                                ? page(now, leaving, ExchangePhase.SHUT, false, form)
                                : newcomers.page(
                                        now,
                                        leaving,
                                        newcomers.blank(now, leaving).withFaultsOf(form)));
    }

    private ExchangeStepPage page(BenchNow now, Supply leaving, ExchangePhase phase, boolean away, Form form) {
        String name = leaving.details().name();
        String latest = now.words()
                .of(
                        "bottle.latest",
                        now.figures()
                                .pressureWithUnit(leaving.latest().pressure().gauge()),
                        now.age(leaving.latest().at()));
        boolean read = phase == ExchangePhase.VENT || phase == ExchangePhase.OFF;
        return new ExchangeStepPage(
                now.place(),
                path(now, leaving),
                name,
                new Step(phase.number(), ExchangePhase.values().length + 1),
                away,
                now.words().of(phase.key() + ".todo", name),
                now.words().of(phase.key() + ".then", name),
                read ? writer(now).returned(leaving) : "",
                cautions(now, phase),
                act(now, leaving, phase),
                form.filled("latest", latest),
                workplace.ids().next());
    }

    private static Act act(BenchNow now, Supply leaving, ExchangePhase phase) {
        String name = leaving.details().name();
        String label = now.words().of(phase.key() + ".done", name);
        String path = path(now, leaving);
        return switch (phase) {
            case SHUT -> new Act(label, ExchangePhase.READ.at(path, now.now()), "", "", phase.text());
            case READ ->
                new Act(
                        label,
                        "",
                        path + "/residual",
                        now.words().of("exchange.residual", name, now.figures().pressureUnit()),
                        phase.text());
            case VENT -> new Act(label, ExchangePhase.OFF.at(path, now.now()), "", "", phase.text());
            case OFF -> new Act(label, "", path + "/off", "", phase.text());
        };
    }

    private static List<String> cautions(BenchNow now, ExchangePhase phase) {
        List<Caution> cautions = switch (phase) {
            case SHUT -> List.of(Caution.NO_IGNITION, Caution.VENTILATE);
            case READ -> List.of(Caution.OPEN_SLOWLY, Caution.ONE_SUPPLY_AT_A_TIME);
            case VENT -> List.of(Caution.VENTILATE, Caution.NO_IGNITION);
            case OFF -> List.of(Caution.VENT_BEFORE_DISCONNECTING, Caution.NO_OIL_OR_GREASE);
        };
        List<String> said = new ArrayList<>();
        for (Caution caution : cautions) {
            said.add(now.words().of("caution." + caution.name().toLowerCase(Locale.ROOT)));
        }
        return said;
    }

    private static long entry(Recording recording) {
        return Answers.entry(recording).orElse(0L);
    }

    private static String path(BenchNow now, Supply leaving) {
        return now.place().path("/exchange/" + leaving.id());
    }

    private ExchangeWriter writer(BenchNow now) {
        return new ExchangeWriter(now, exchanging());
    }

    private ExchangingASupply exchanging() {
        return workplace.benches().exchangingASupply();
    }
}
