package org.lowfirst.web.due;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.lowfirst.app.bench.AskingWhatIsDue;
import org.lowfirst.app.bench.DueSheet;
import org.lowfirst.station.due.DueItem;
import org.lowfirst.web.due.DuePage.Line;
import org.lowfirst.web.picture.StateMark;
import org.lowfirst.web.workplace.BenchNow;

/** Writes what falls due. */
final class DueWriter {

    /** What has so many days left or fewer is shown at once. */
    static final int SOON_DAYS = 90;

    private final BenchNow now;
    private final AskingWhatIsDue asking;
    private final DueSheet sheet;

    DueWriter(BenchNow now, AskingWhatIsDue asking, DueSheet sheet) {
        this.now = now;
        this.asking = asking;
        this.sheet = sheet;
    }

    DuePage page(String calendar) {
        List<DueItem> items = sheet.list().items();
        return new DuePage(
                now.place(),
                items.stream()
                        .filter(item -> item.past(sheet.today()))
                        .map(this::line)
                        .toList(),
                items.stream().filter(this::soon).map(this::line).toList(),
                items.stream()
                        .filter(item -> item.daysLeft(sheet.today()) > SOON_DAYS)
                        .map(this::line)
                        .toList(),
                sheet.unmarked().stream().map(this::bottle).toList(),
                sheet.undated().stream().map(this::bottle).toList(),
                calendar);
    }

    private boolean soon(DueItem item) {
        return !item.past(sheet.today()) && item.daysLeft(sheet.today()) <= SOON_DAYS;
    }

    private Line line(DueItem item) {
        long left = item.daysLeft(sheet.today());
        String day = now.times().day(item.lastDay());
        String when;
        StateMark mark;
        if (left < 0) {
            when = now.words().count("due.past", -left, day);
            mark = StateMark.CROSS;
        } else if (left == 0) {
            when = now.words().of("due.today");
            mark = StateMark.SOON;
        } else {
            when = now.words().count("due.left", left, day);
            mark = left <= SOON_DAYS ? StateMark.SOON : StateMark.FINE;
        }
        return new Line(mark.picture(), asking.summary(item), link(item), when, item.source());
    }

    private String link(DueItem item) {
        return switch (item.kind()) {
            case CYLINDER_TEST, CYLINDER_LIFE -> bottle(item.subject()).link();
            case HOSE, GAUGE, RELIEF_VALVE, SUPPLY_TEST ->
                now.place().path("/due/equipment?name=" + encoded(item.subject()));
            case SUPPLY_ORDER -> now.place().path("/ahead");
            case CHECK_OUT, TRAINING -> now.place().path("/people/one?name=" + encoded(item.subject()));
        };
    }

    private DuePage.Bottle bottle(String name) {
        String id = now.bench().listBottles().stream()
                .filter(bottle -> bottle.inUse() && bottle.details().name().equals(name))
                .map(bottle -> "/" + bottle.id())
                .findFirst()
                .orElse("");
        return new DuePage.Bottle(name, now.place().path("/bottles" + id));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
