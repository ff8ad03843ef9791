package org.lowfirst.web.gauges;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.KeepingGauges;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.honest.GaugeNow;
import org.lowfirst.app.honest.ReadingHistory;
import org.lowfirst.station.Command.DescribeGauge;
import org.lowfirst.station.Command.RetireGauge;
import org.lowfirst.station.GaugeDetails;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.gauges.GaugesPage.Line;
import org.lowfirst.web.gauges.GaugesPage.Standing;
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

/** Lists, describes and retires the gauges of a bench. */
@Controller
public final class GaugesPages {

    private final Workplace workplace;

    public GaugesPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/gauges")
    View list(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        ReadingHistory history = workplace.benches().judgingReadings().history(now.id());
        List<Line> lines =
                keeping().list(now.id()).stream().map(gauge -> line(now, gauge)).toList();
        List<String> refused = history.refused().stream()
                .map(reading -> reading.why().sentence() + " " + reading.why().advice())
                .toList();
        return workplace
                .screens()
                .show(new GaugesPage(
                        now.place(),
                        lines,
                        history.leftOut() == 0 ? "" : now.words().of("gauges.left-out", history.leftOut()),
                        refused));
    }

    private static Line line(BenchNow now, GaugeNow gauge) {
        Standing standing = Standing.GONE;
        if (gauge.assumed()) {
            standing = Standing.ASSUMED;
        } else if (gauge.inUse()) {
            standing = Standing.IN_USE;
        }
        @Nullable GaugeDetails details = gauge.details();
        @Nullable LocalDate day = details == null ? null : details.calibrated();
        String use = "gauge.use." + gauge.use().name().toLowerCase(Locale.ROOT);
        return new Line(
                gauge.name(),
                standing == Standing.IN_USE ? path(now, gauge.name()) : "",
                now.words().of(use),
                standing,
                day == null ? "" : now.words().of("gauge.calibrated.on", day),
                gauge.sentence(),
                gauge.learned() != null);
    }

    private static String path(BenchNow now, String name) {
        return now.place().path("/gauges/one?name=" + URLEncoder.encode(name, StandardCharsets.UTF_8));
    }

    @GetMapping("/at/{bench}/gauges/one")
    View show(@PathVariable String bench, @RequestParam(defaultValue = "") String name) {
        BenchNow now = workplace.open(bench);
        if (name.isEmpty()) {
            return workplace.screens().show(page(now, "", GaugeFields.blank(now)));
        }
        return workplace.screens().show(page(now, name, GaugeFields.filled(details(now, name), now.figures())));
    }

    @PostMapping("/at/{bench}/gauges/one")
    View describe(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = GaugeFields.reader(typed, now);
        @Nullable GaugeDetails details = GaugeFields.read(reader, now);
        String known = typed.getOrDefault("known", "");
        if (details == null) {
            return workplace.screens().refused(page(now, known, reader.form()));
        }
        Sender sender = Sender.of(typed);
        return answer(
                now,
                known,
                reader.form(),
                keeping().describe(now.id(), new DescribeGauge(details), sender.submission()),
                sender);
    }

    @PostMapping("/at/{bench}/gauges/retire")
    View retire(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        String name = typed.getOrDefault("known", "");
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        String reason = reader.required("reason", "fault.reason");
        reader.required(Sender.WHO, "fault.who");
        Form form = GaugeFields.filled(details(now, name), now.figures()).filled("reason", reason);
        if (!reader.form().sound()) {
            return workplace.screens().refused(page(now, name, form.withFaultsOf(reader.form())));
        }
        Sender sender = Sender.of(typed);
        return answer(
                now,
                name,
                form,
                keeping().retire(now.id(), new RetireGauge(name, reason), sender.submission()),
                sender);
    }

    private View answer(BenchNow now, String name, Form form, Recording recording, Sender sender) {
        String fault = workplace.fault(recording);
        if (fault.isEmpty()) {
            return Redirects.saved(
                    now.place().path("/gauges"), Answers.entry(recording).orElse(0L), sender.who());
        }
        return workplace
                .screens()
                .refused(page(now, name, form.faulting(GaugeFields.field(Answers.rule(recording)), fault)));
    }

    private GaugePage page(BenchNow now, String name, Form form) {
        String taught = keeping().list(now.id()).stream()
                .filter(gauge -> gauge.inUse() && gauge.name().equals(name) && gauge.learned() != null)
                .map(GaugeNow::sentence)
                .findFirst()
                .orElse("");
        return new GaugePage(
                now.place(),
                now.bench().gauges().containsKey(name) ? name : "",
                taught,
                GaugeFields.units(),
                form,
                workplace.ids().next());
    }

    private static GaugeDetails details(BenchNow now, String name) {
        @Nullable GaugeDetails details = now.bench().gauges().get(name);
        if (details == null) {
            throw new NoSuchThing("gauge " + name);
        }
        return details;
    }

    private KeepingGauges keeping() {
        return workplace.benches().keepingGauges();
    }
}
