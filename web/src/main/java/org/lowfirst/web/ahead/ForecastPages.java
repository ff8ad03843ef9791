package org.lowfirst.web.ahead;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.outlook.AskingAhead.Look;
import org.lowfirst.planning.ahead.Alert;
import org.lowfirst.station.Outlook;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.due.CalendarFeed;
import org.lowfirst.station.due.CalendarText;
import org.lowfirst.station.due.DueItem;
import org.lowfirst.station.due.DueKind;
import org.lowfirst.station.due.DueWords;
import org.lowfirst.web.ahead.ForecastPage.ForecastSheet;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.kept.Defaults;
import org.lowfirst.web.kept.KeepPart;
import org.lowfirst.web.kept.PlannedText;
import org.lowfirst.web.objection.ObjectionFields;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;

/** Looks ahead: how long the bank lasts, when to order, and the same day for a calendar. Enters nothing. */
@Controller
public final class ForecastPages {

    private static final Map<String, String> FIELDS = Map.of(
            "days from order to delivery", "lead",
            "reserve of fills", "reserve",
            "guess of fills a year", "guess",
            "fills of event 1", "fills-1",
            "fills of event 2", "fills-2");

    private final Workplace workplace;

    public ForecastPages(Workplace workplace) {
        this.workplace = workplace;
    }

    @GetMapping("/at/{bench}/forecast")
    View forecast(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Defaults defaults = Defaults.of(now, workplace);
        Reader reader = new Reader(
                ForecastFields.filled(typed, defaults), now.bench().settings().units(), now.words());
        @Nullable ForecastSheet sheet = null;
        ForecastFields.Wish wish = ForecastFields.read(reader, now);
        if (reader.form().sound()) {
            Look look = look(now, wish);
            if (look instanceof Look.Seen seen) {
                sheet = new ForecastWriter(now).sheet(seen.looked().forecast());
            } else {
                Look.Unseen unseen = (Look.Unseen) look;
                reader.fault(
                        ObjectionFields.of(unseen.why(), FIELDS), unseen.why().inWords(now.shownUnits()));
            }
        }
        ForecastPage page = new ForecastPage(
                now.place(),
                reader.form(),
                sheet,
                standing(now, wish.ordering().leadDays()),
                sheet == null
                        ? null
                        : KeepPart.of(
                                now,
                                defaults,
                                reader.form().typed(),
                                ForecastFields.FIGURES,
                                "/forecast",
                                workplace.ids().next()));
        return reader.form().sound()
                ? workplace.screens().show(page)
                : workplace.screens().refused(page);
    }

    private ForecastPage.Standing standing(BenchNow now, int leadDays) {
        Outlook outlook = now.bench().areas().outlook();
        return new ForecastPage.Standing(
                outlook.listFrom(now.today()).stream()
                        .map(planned -> now.words()
                                .of("kept.event", PlannedText.of(now, planned), PlannedText.fills(now, planned)))
                        .toList(),
                outlook.findOrdered(now.today())
                        .map(day ->
                                now.words().of("forecast.ordered", now.times().day(day)))
                        .orElse(""),
                now.today().plusDays(Math.max(0, Math.min(365, leadDays))).toString(),
                workplace.ids().next());
    }

    /** The one day to order by, for a calendar that reads it again; none while an order is on its way. */
    @GetMapping("/at/{bench}/forecast.ics")
    ResponseEntity<String> calendar(@PathVariable String bench, @RequestParam Map<String, String> typed) {
        BenchNow now = workplace.open(bench);
        Reader reader = new Reader(
                ForecastFields.filled(typed, Defaults.of(now, workplace)),
                now.bench().settings().units(),
                now.words());
        ForecastFields.Wish wish = ForecastFields.read(reader, now);
        boolean ordered = now.bench().areas().outlook().findOrdered(now.today()).isPresent();
        List<DueItem> items = !ordered && reader.form().sound() && look(now, wish) instanceof Look.Seen seen
                ? seen.looked().forecast().order().orderBy().stream()
                        .map(day -> new DueItem(
                                DueKind.SUPPLY_ORDER,
                                now.place().name(),
                                day,
                                seen.looked()
                                        .forecast()
                                        .knowledge()
                                        .inWords(now.words().locale())))
                        .toList()
                : List.of();
        CalendarFeed feed =
                new CalendarFeed(now.words().of("forecast.calendar", now.place().name()), "lowfirst." + now.id(), 1);
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(CalendarText.MEDIA_TYPE))
                .header("Content-Disposition", "inline; filename=\"lowfirst-order.ics\"")
                .body(CalendarText.write(feed, items, new CalendarWords(now.words()), now.now()));
    }

    private Look look(BenchNow now, ForecastFields.Wish wish) {
        ZoneId zone = workplace.clock().getZone();
        @Nullable StatedTemperature temperature = wish.temperature();
        return workplace
                .benches()
                .askingAhead()
                .look(
                        now.id(),
                        temperature == null ? null : temperature.temperature(),
                        zone,
                        now.now().atZone(zone).toLocalDate(),
                        wish.ordering(),
                        wish.events(),
                        wish.guess());
    }

    /** Whether somebody must be told. */
    static boolean pressing(Alert alert) {
        return alert != Alert.NONE;
    }

    private record CalendarWords(Words words) implements DueWords {
        @Override
        public String summary(DueItem item) {
            return words.of("forecast.calendar.order", item.subject());
        }

        @Override
        public String description(DueItem item) {
            return item.source();
        }
    }
}
