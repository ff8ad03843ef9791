package org.lowfirst.web.hub;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.lowfirst.web.view.Section;

/** The pages that a place leads on to, in the order shown. Each has a name and a sentence in the words files. */
public enum Hub {
    SESSION(Section.AHEAD, "/session"),
    FORECAST(Section.AHEAD, "/forecast"),
    SEND_BACK(Section.AHEAD, "/send-back"),
    FLIGHT(Section.AHEAD, "/flight"),
    CAMP(Section.AHEAD, "/camp"),
    STUDY(Section.AHEAD, "/study"),
    KEPT(Section.AHEAD, "/kept"),
    SETTINGS(Section.BENCH, "/settings"),
    PEOPLE(Section.BENCH, "/people"),
    DUE(Section.BENCH, "/due"),
    RULES(Section.BENCH, "/rules"),
    GAUGES(Section.BENCH, "/gauges"),
    STATEMENTS(Section.BENCH, "/statements"),
    PRICES(Section.BENCH, "/prices"),
    COSTS(Section.BENCH, "/costs"),
    RENT(Section.BENCH, "/rent"),
    PAPERS(Section.BENCH, "/papers"),
    LEAK_CHECK(Section.BENCH, "/leak-check"),
    TEMPERATURES(Section.BENCH, "/temperatures"),
    SETTLE(Section.BENCH, "/settle"),
    WARM_STOPS(Section.BENCH, "/warm-stops"),
    DATA(Section.BENCH, "/data"),
    FIRST_DAY(Section.BENCH, "/first-day"),
    BENCHES(Section.BENCH, "");

    private final Section section;
    private final String path;

    /**
     * @param path address below the bench's own; empty for the list of benches, which is about none
     */
    Hub(Section section, String path) {
        this.section = section;
        this.path = path;
    }

    static List<Hub> of(Section section) {
        return Arrays.stream(values()).filter(hub -> hub.section == section).toList();
    }

    String path() {
        return path;
    }

    /** Key of its name in the words files; with {@code .what} behind it, of what it is for. */
    public String key() {
        return "hub." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
