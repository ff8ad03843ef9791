package org.lowfirst.app.flight;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.lowfirst.planning.flight.Flow;
import org.lowfirst.planning.flight.Need;
import org.lowfirst.planning.flight.Occupant;
import org.lowfirst.planning.flight.OxygenRule;
import org.lowfirst.planning.flight.Profile;
import org.lowfirst.planning.flight.ReadingTheRules;

/**
 * Leaves out fixes that change nothing that counts: straight lines through the others stay within a few metres of every fix, and
 * what each person uses, how long each device is on and how long each rule text asks for oxygen change by less than half a per
 * cent (times: or by a few seconds). The metres are halved until that is so.
 */
final class Thinning {

    /** Half of what may change, as the two errors of a number could add up. */
    private static final double SHARE = 0.0025;

    /** Sheets show minutes. */
    private static final double SECONDS = 5.0;

    private static final double WIDEST_M = 8.0;
    private static final double NARROWEST_M = 0.25;

    private final List<Occupant> people;
    private final List<OxygenRule> rules;

    Thinning(List<Occupant> people, List<OxygenRule> rules) {
        this.people = people;
        this.rules = rules;
    }

    /** The fixes that are kept, the first and the last among them. */
    List<Fix> thin(List<Fix> fixes) {
        double[] uses = uses(fixes);
        double[] times = times(fixes);
        for (double within_m = WIDEST_M; within_m >= NARROWEST_M; within_m /= 2.0) {
            List<Fix> kept = StraightLines.through(fixes, within_m);
            if (close(uses, uses(kept), 0.0) && close(times, times(kept), SECONDS)) {
                return kept;
            }
        }
        return fixes;
    }

    private static boolean close(double[] all, double[] kept, double least) {
        if (all.length != kept.length) {
            return false;
        }
        for (int i = 0; i < all.length; i++) {
            if (Math.abs(kept[i] - all[i]) > Math.max(least, SHARE * all[i])) {
                return false;
            }
        }
        return true;
    }

    private double[] uses(List<Fix> fixes) {
        return people.stream()
                .mapToDouble(who -> between(fixes, who.from().metres(), who.flow()))
                .toArray();
    }

    /** Seconds each device is on, and seconds of each rule text's duty. */
    private double[] times(List<Fix> fixes) {
        Flow everyMinuteOne = new Flow.Constant(60.0);
        DoubleStream on =
                people.stream().mapToDouble(who -> between(fixes, who.from().metres(), everyMinuteOne));
        if (!(Profile.of(TrackLegs.of(fixes)) instanceof Profile.Checked checked)) {
            return on.toArray();
        }
        Map<OxygenRule, Double> duties = ReadingTheRules.of(rules, checked.profile()).stream()
                .collect(Collectors.toMap(Need::rule, Need::seconds));
        DoubleStream due = rules.stream().mapToDouble(rule -> duties.getOrDefault(rule, 0.0));
        return DoubleStream.concat(on, due).toArray();
    }

    /** Litres of a flow while at or above an altitude [m]; of 60 L/min, seconds there. */
    private static double between(List<Fix> fixes, double above_m, Flow flow) {
        double sum = 0.0;
        for (int i = 1; i < fixes.size(); i++) {
            Fix from = fixes.get(i - 1);
            Fix to = fixes.get(i);
            double low_m = Math.min(from.metres(), to.metres());
            double high_m = Math.max(from.metres(), to.metres());
            if (high_m < above_m) {
                continue;
            }
            double begin_m = Math.max(low_m, above_m);
            double share = high_m > low_m ? (high_m - begin_m) / (high_m - low_m) : 1.0;
            double mean = 0.5 * (flow.litresPerMinuteAt(begin_m) + flow.litresPerMinuteAt(high_m));
            sum += mean / 60.0 * share * (to.seconds() - from.seconds());
        }
        return sum;
    }
}
