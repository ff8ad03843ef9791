package org.lowfirst.app.honest;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.Digits;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.contents.Evidence;
import org.lowfirst.planning.contents.Verdict;
import org.lowfirst.planning.contents.VerdictCode;

/**
 * Verdicts in words.
 *
 * @param names people's name for a cylinder by its key
 */
record VerdictSentences(
        Wording wording, ShownUnits units, EquationOfState gas, ReferenceCondition free, UnaryOperator<String> names) {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ISO_LOCAL_DATE.withZone(ZoneOffset.UTC);

    StandingVerdict of(Verdict verdict) {
        String key = "verdict." + key(verdict.code().name());
        String cause = key("cause." + verdict.cause().name());
        return new StandingVerdict(
                verdict,
                wording.text(key, Map.of()),
                wording.text(cause, values(verdict)) + also(verdict),
                chance(verdict.chanceOfNoise(), wording),
                wording.text("advice." + key(verdict.advice().name()), values(verdict)));
    }

    private String also(Verdict verdict) {
        if (verdict.code() == VerdictCode.INSIDE_GAUGE_UNCERTAINTY
                || verdict.alsoPossible().isEmpty()) {
            return "";
        }
        StringBuilder list = new StringBuilder();
        verdict.alsoPossible()
                .forEach(cause -> list.append(list.length() == 0 ? "" : ", ")
                        .append(wording.text("name." + key(cause.name()), Map.of())));
        return " " + wording.text("also-possible", Map.of("list", list.toString()));
    }

    private Map<String, String> values(Verdict verdict) {
        Evidence e = verdict.evidence();
        String other = verdict.other();
        Map<String, String> values = new LinkedHashMap<>();
        values.put("cylinder", names.apply(verdict.cylinder()));
        values.put("other", other == null ? "" : names.apply(other));
        values.put("since", DAY.format(e.since()));
        values.put("expected", units.show(e.expected()));
        values.put("shown", units.show(e.shown()));
        values.put("missing", volume(Math.abs(e.missing_mol())));
        values.put("within", volume(2.0 * e.standardDeviation_mol()));
        values.put("percent", units.number(100.0 * Math.abs(e.share()), 1));
        values.put("near", units.show(e.near()));
        values.put("chance", chance(verdict.chanceOfNoise(), wording));
        return values;
    }

    private String volume(double amount_mol) {
        return FreeVolumes.words(amount_mol, gas, free, units);
    }

    /** "1 in 400", to two digits at most. */
    static String chance(double chance, Wording wording) {
        if (chance >= 0.5) {
            return wording.text("chance.most", Map.of());
        }
        if (chance < 1e-6) {
            return wording.text("chance.least", Map.of());
        }
        double in = 1.0 / chance;
        double scale = Math.pow(10.0, Math.max(0.0, Math.floor(Math.log10(in)) - 1.0));
        return wording.text("chance", Map.of("in", Digits.in(wording.locale()).of(Math.round(in / scale) * scale, 0)));
    }

    static String key(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
