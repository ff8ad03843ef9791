package org.lowfirst.planning.flight;

import java.util.ArrayList;
import java.util.List;

/** Applies rule texts to a profile: from when to when who needs oxygen. */
public final class ReadingTheRules {

    private ReadingTheRules() {}

    /**
     * The duties of a flight, in the order of the rules; rules that ask nothing are left out.
     *
     * <p>Where a rule leaves a time free, that time is counted over the whole flight above the rule's lower altitude, also
     * where the profile is above its upper one: the careful reading.
     */
    public static List<Need> of(List<OxygenRule> rules, Profile profile) {
        List<Need> needs = new ArrayList<>();
        for (OxygenRule rule : rules) {
            double free_s = rule.after().toSeconds();
            List<Span> above =
                    afterFreeTime(AltitudeBand.spans(profile, rule.above().metres(), Double.POSITIVE_INFINITY), free_s);
            List<Span> inBand = AltitudeBand.spans(
                    profile, rule.above().metres(), rule.upTo().metres());
            List<Span> asked = overlap(above, inBand);
            if (!asked.isEmpty()) {
                needs.add(new Need(rule, asked));
            }
        }
        return List.copyOf(needs);
    }

    private static List<Span> afterFreeTime(List<Span> spans, double free_s) {
        List<Span> rest = new ArrayList<>();
        double left_s = free_s;
        for (Span span : spans) {
            double skipped_s = Math.min(left_s, span.seconds());
            left_s -= skipped_s;
            if (span.seconds() > skipped_s) {
                rest.add(new Span(span.fromSeconds() + skipped_s, span.toSeconds()));
            }
        }
        return rest;
    }

    private static List<Span> overlap(List<Span> some, List<Span> others) {
        List<Span> both = new ArrayList<>();
        for (Span a : some) {
            for (Span b : others) {
                double from_s = Math.max(a.fromSeconds(), b.fromSeconds());
                double to_s = Math.min(a.toSeconds(), b.toSeconds());
                if (to_s > from_s) {
                    both.add(new Span(from_s, to_s));
                }
            }
        }
        return both;
    }
}
