package org.lowfirst.web.ready;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.lowfirst.app.bench.ReadyNow;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.GroupDetails;
import org.lowfirst.station.readiness.RefillLine;
import org.lowfirst.web.picture.GaugeBar;
import org.lowfirst.web.picture.StateMark;
import org.lowfirst.web.ready.RefillPage.Line;
import org.lowfirst.web.ready.RefillPage.Other;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;

/** Lists what to fill after a call and leads on into fills. */
@Controller
public final class RefillPages {

    private final Workplace workplace;

    public RefillPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/ready/refill")
    View refill(@PathVariable String bench) {
        BenchNow now = workplace.open(bench);
        ReadyNow ready = workplace.benches().keepingReady().now(now.id());
        List<RefillLine> lines = ready.refill().refill();
        return workplace
                .screens()
                .show(new RefillPage(
                        now.place(),
                        lines.stream().map(line -> line(now, ready, line)).toList(),
                        ready.refill().unfit().stream()
                                .map(bottle -> other(now, ready, bottle.name(), "/bottles/"))
                                .toList(),
                        ready.refill().unread().stream()
                                .map(bottle -> other(now, ready, bottle.name(), "/ready/read?bottle="))
                                .toList(),
                        lines.size() < 2 ? "" : session(now, ready, lines)));
    }

    private static Other other(BenchNow now, ReadyNow ready, String name, String path) {
        return new Other(name, now.place().path(path + ready.getId(name)));
    }

    private static Line line(BenchNow now, ReadyNow ready, RefillLine line) {
        BottleId id = ready.getId(line.bottle().name());
        GaugePressure holds = line.bottle().reading();
        double reading = holds == null ? -1 : holds.pascals();
        String what = now.words()
                .of(
                        line.belowFloor() ? "refill.below" : "refill.lacks",
                        holds == null ? "" : now.figures().pressureWithUnit(holds),
                        now.figures().pressureWithUnit(line.missing()),
                        now.figures().pressureWithUnit(line.group().floor()));
        return new Line(
                line.bottle().name(),
                line.group().name(),
                what,
                line.belowFloor(),
                (line.belowFloor() ? StateMark.CROSS : StateMark.SOON).picture(),
                GaugeBar.of(
                        reading,
                        line.group().floor().pascals(),
                        line.group().wish().pascals()),
                now.place()
                        .path("/fill/plan?change=1&bottle=" + id + "&target="
                                + encoded(
                                        now.figures().toType(details(now, line).wish()))));
    }

    /** All of them planned in one go, each to the wish of its group and with its floor and priority. */
    private static String session(BenchNow now, ReadyNow ready, List<RefillLine> lines) {
        return now.place()
                .path("/session?"
                        + lines.stream()
                                .map(line -> {
                                    BottleId id = ready.getId(line.bottle().name());
                                    GroupDetails group = details(now, line);
                                    return "in-" + id + "=yes&target-" + id + "="
                                            + encoded(now.figures().toType(group.wish())) + "&floor-" + id + "="
                                            + encoded(now.figures().toType(group.floor())) + "&priority-" + id + "="
                                            + group.priority();
                                })
                                .collect(Collectors.joining("&")));
    }

    private static GroupDetails details(BenchNow now, RefillLine line) {
        GroupDetails details =
                now.bench().areas().care().squad().groups().get(line.group().name());
        if (details == null) {
            throw new AssertionError("no group " + line.group().name());
        }
        return details;
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
