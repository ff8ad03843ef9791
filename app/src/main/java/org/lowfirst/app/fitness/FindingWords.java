package org.lowfirst.app.fitness;

import java.util.Locale;
import java.util.Map;
import org.lowfirst.app.words.Wording;
import org.lowfirst.station.Units;
import org.lowfirst.station.rules.Finding;
import org.lowfirst.station.rules.Measure;
import org.lowfirst.station.rules.RuleBook;
import org.lowfirst.station.rules.RuleHeading;

/** Says a finding in a sentence, with where its rule comes from. */
final class FindingWords {

    private final Wording words;
    private final Wording codes;
    private final MeasureWords measures;

    FindingWords(Locale locale, Units units) {
        this.words = Wording.of(FindingWords.class, locale);
        this.codes = Wording.of(RuleBook.class, locale);
        this.measures = new MeasureWords(locale, units);
    }

    FindingLine line(Finding finding) {
        String measured = measures.of(finding.measured());
        String limit = measures.of(finding.limit());
        String left = beyond(finding.left()) ? "" : measures.of(finding.left());
        String sentence = codes.text(
                "advice." + code(finding.advice()),
                Map.of(
                        "0", named(inSentence(finding.measured()), "something"),
                        "1", named(inSentence(finding.limit()), "something.marked"),
                        "2", left));
        RuleHeading source = finding.basis() == null ? finding.rule() : finding.basis();
        return new FindingLine(
                finding.rule().id(),
                finding.verdict(),
                finding.advice(),
                sentence,
                measured,
                limit,
                left,
                source.source(),
                status(source),
                finding.override());
    }

    String status(RuleHeading rule) {
        return codes.text("status." + code(rule.status()), Map.of());
    }

    String question(String code) {
        return measures.word(code);
    }

    /** A sentence says itself what is counted. */
    private String inSentence(Measure measure) {
        return measure instanceof Measure.OfFills fills ? Integer.toString(fills.fills()) : measures.of(measure);
    }

    private String named(String value, String instead) {
        return value.isEmpty() ? words.text(instead, Map.of()) : value;
    }

    private static boolean beyond(Measure left) {
        return (left instanceof Measure.OfDays days && days.days() < 0)
                || (left instanceof Measure.OfFills fills && fills.fills() < 0);
    }

    static String code(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
