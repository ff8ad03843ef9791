package org.lowfirst.app.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.lowfirst.app.file.Problems;

/**
 * Finds a pressure altitude for each fix. A recorder writes 0 where it has none: then the GNSS altitude stands in, shifted by the
 * difference of the two at the nearest fix that has both; alone, when no fix has a pressure altitude.
 */
final class PressureAltitudes {

    /** A zero next to an altitude as low as this is an altitude of zero: an airfield near sea level. */
    private static final double NEAR_SEA_LEVEL_M = 120.0;

    private final List<IgcFix> raw;
    private final List<String> notes;
    private final Problems words;
    private final Neighbours withPressure;
    private final Neighbours withBoth;

    /**
     * @param notes takes what a person should know
     * @param words say it
     */
    PressureAltitudes(List<IgcFix> raw, List<String> notes, Problems words) {
        this.raw = List.copyOf(raw);
        this.notes = notes;
        this.words = words;
        this.withPressure = Neighbours.of(raw, fix -> fix.pressure_m() != 0);
        this.withBoth = Neighbours.of(raw, fix -> fix.pressure_m() != 0 && fix.hasGnss());
    }

    /** The fixes that have an altitude. */
    List<Fix> fixes() {
        boolean none = raw.stream().allMatch(fix -> fix.pressure_m() == 0);
        if (none && raw.stream().noneMatch(IgcFix::hasGnss)) {
            return List.of();
        }
        List<Fix> fixes = new ArrayList<>();
        int standIns = 0;
        int left = 0;
        for (int i = 0; i < raw.size(); i++) {
            IgcFix fix = raw.get(i);
            OptionalDouble metres = none ? gnss(fix) : altitude(fix, i);
            if (metres.isPresent()) {
                fixes.add(new Fix(fix.seconds(), metres.getAsDouble(), fix.place()));
                standIns += metres.getAsDouble() != fix.pressure_m() ? 1 : 0;
            } else {
                left++;
            }
        }
        if (none) {
            notes.add(words.say("track.igc.all-gnss", Map.of()));
        } else if (standIns > 0) {
            notes.add(counted("track.igc.stand-in", standIns));
        }
        if (left > 0) {
            notes.add(counted("track.igc.left-out", left));
        }
        return fixes;
    }

    private OptionalDouble altitude(IgcFix fix, int i) {
        if (fix.pressure_m() != 0 || isAtSeaLevel(i)) {
            return OptionalDouble.of(fix.pressure_m());
        }
        return fix.hasGnss() ? OptionalDouble.of(fix.gnss_m() + shift(i)) : OptionalDouble.empty();
    }

    private static OptionalDouble gnss(IgcFix fix) {
        return fix.hasGnss() ? OptionalDouble.of(fix.gnss_m()) : OptionalDouble.empty();
    }

    /** Whether the nearest pressure altitude on either side is that low. */
    private boolean isAtSeaLevel(int i) {
        return isLow(withPressure.before(i)) || isLow(withPressure.after(i));
    }

    private boolean isLow(int i) {
        return i >= 0 && Math.abs(raw.get(i).pressure_m()) <= NEAR_SEA_LEVEL_M;
    }

    /** Pressure altitude less GNSS altitude [m] at the nearest fix with both, 0 when there is none. */
    private double shift(int i) {
        int last = withBoth.before(i);
        int next = withBoth.after(i);
        boolean useNext = last < 0 || (next >= 0 && next - i < i - last);
        int near = useNext ? next : last;
        return near < 0
                ? 0.0
                : (double) raw.get(near).pressure_m() - raw.get(near).gnss_m();
    }

    private String counted(String key, int fixes) {
        return fixes == 1
                ? words.say(key + ".one", Map.of())
                : words.say(key, Map.of("count", String.format(words.language(), "%,d", fixes)));
    }

    /** For each fix the nearest ones, before and after it, of a kind; -1 where there is none. */
    private record Neighbours(List<Integer> last, List<Integer> next) {

        static Neighbours of(List<IgcFix> fixes, Predicate<IgcFix> kind) {
            Integer[] last = new Integer[fixes.size()];
            Integer[] next = new Integer[fixes.size()];
            int found = -1;
            for (int i = 0; i < fixes.size(); i++) {
                last[i] = found;
                found = kind.test(fixes.get(i)) ? i : found;
            }
            found = -1;
            for (int i = fixes.size() - 1; i >= 0; i--) {
                next[i] = found;
                found = kind.test(fixes.get(i)) ? i : found;
            }
            return new Neighbours(List.of(last), List.of(next));
        }

        int before(int i) {
            return last.get(i);
        }

        int after(int i) {
            return next.get(i);
        }
    }
}
