package org.lowfirst.app.outlook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.ahead.UseHistory;
import org.lowfirst.planning.ahead.UsualFill;
import org.lowfirst.planning.study.BottleUse;

/**
 * The use of a bench so far.
 *
 * @param history the fills of the journal
 * @param usual the bottles in use as they usually come, in the order of the bench
 */
public record PastUse(UseHistory history, List<UsualFill> usual) {

    private static final double DAYS_A_YEAR = 365.0;
    /** Shorter than this a history says nothing of a year; common practice, no source. */
    private static final int SHORTEST_D = 60;

    public PastUse {
        usual = List.copyOf(usual);
    }

    /** Whether the history is long enough to go by. */
    public boolean tells() {
        return history.days() >= SHORTEST_D && !history.fills().isEmpty();
    }

    /** Fills a year at the pace of the history; 0 without one. */
    public double fillsPerYear() {
        return history.days() == 0 ? 0.0 : history.fills().size() * DAYS_A_YEAR / history.days();
    }

    /**
     * Each kind of bottle with the readings it came with and how often; a bottle that never came counts once, with its usual
     * reading.
     */
    public List<BottleUse> uses() {
        Map<String, List<UsualFill>> fills = new HashMap<>();
        history.fills()
                .forEach(filled -> fills.computeIfAbsent(filled.fill().bottle(), name -> new ArrayList<>())
                        .add(filled.fill()));
        return usual.stream()
                .map(bottle -> use(bottle, fills.getOrDefault(bottle.bottle(), List.of())))
                .toList();
    }

    private static BottleUse use(UsualFill usual, List<UsualFill> came) {
        Comparator<GaugePressure> order = Comparator.naturalOrder();
        GaugePressure low = came.stream().map(UsualFill::start).min(order).orElse(usual.start());
        GaugePressure high = came.stream().map(UsualFill::start).max(order).orElse(usual.start());
        return new BottleUse(
                usual.bottle(),
                usual.waterVolume(),
                usual.servicePressure(),
                usual.target(),
                atMost(low, usual.target()),
                atMost(high, usual.target()),
                Math.max(1, came.size()));
    }

    private static GaugePressure atMost(GaugePressure reading, GaugePressure target) {
        return reading.compareTo(target) <= 0 ? reading : target;
    }
}
