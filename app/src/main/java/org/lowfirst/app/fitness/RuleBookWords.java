package org.lowfirst.app.fitness;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.lowfirst.app.words.Wording;
import org.lowfirst.station.Units;
import org.lowfirst.station.rules.FillRule;
import org.lowfirst.station.rules.RuleBook;
import org.lowfirst.station.rules.RuleBookText;
import org.lowfirst.station.rules.RuleHeading;
import org.lowfirst.station.rules.RuleKind;

/** A rule book in words, rule by rule. */
public final class RuleBookWords {

    private static final String SPECIFICATIONS = "specifications";
    private static final String MATERIALS = "materials";

    private final Wording words;
    private final FindingWords findings;
    private final MeasureWords measures;
    private final Wording codes;

    public RuleBookWords(Locale locale, Units units) {
        this.words = Wording.of(RuleBookWords.class, locale);
        this.findings = new FindingWords(locale, units);
        this.measures = new MeasureWords(locale, units);
        this.codes = Wording.of(RuleBook.class, locale);
    }

    /** The rules in the order they are judged. */
    public List<RuleInWords> list(RuleBook book) {
        return book.rules().stream().map(rule -> inWords(rule, book)).toList();
    }

    private RuleInWords inWords(FillRule rule, RuleBook book) {
        RuleHeading heading = rule.heading();
        LocalDate until = heading.inForce().until();
        String from = measures.day(heading.inForce().from());
        return new RuleInWords(
                heading.id(),
                sentence(rule),
                heading.source(),
                findings.status(heading),
                heading.country(),
                until == null
                        ? words.text("in-force", Map.of("from", from))
                        : words.text("in-force.until", Map.of("from", from, "until", measures.day(until))),
                words.text("override." + FindingWords.code(heading.override()), Map.of()),
                block(rule, book));
    }

    private String sentence(FillRule rule) {
        Map<String, String> values = new HashMap<>();
        rule.settings().forEach((key, value) -> values.put(key, value(rule.kind(), key, value)));
        values.put("cylinders", cylinders(rule.settings()));
        boolean fraction = rule.kind() == RuleKind.ASSUMED_SERVICE_PRESSURE && values.containsKey("of-test-pressure");
        return words.text("rule." + rule.kind().word() + (fraction ? ".fraction" : ""), values);
    }

    private String value(RuleKind kind, String key, String value) {
        String choice = "choice." + value;
        if (kind == RuleKind.REMARK && key.equals("advice")) {
            return codes.text("advice." + value, Map.of("0", "", "1", "", "2", ""));
        }
        if (key.equals("needs") || key.equals("questions")) {
            return Stream.of(value.split(",\\s*"))
                    .map(measures::word)
                    .map(word -> word.substring(0, 1).toLowerCase(Locale.ROOT) + word.substring(1))
                    .collect(Collectors.joining(", "));
        }
        return words.has(choice) ? words.text(choice, Map.of()) : value;
    }

    private String cylinders(Map<String, String> settings) {
        String codesOf = settings.getOrDefault(SPECIFICATIONS, "");
        String materials = Stream.of(settings.getOrDefault(MATERIALS, "").split(",\\s*"))
                .filter(material -> !material.isEmpty())
                .map(material -> words.text("material." + material, Map.of()))
                .collect(Collectors.joining(", "));
        if (codesOf.isEmpty() && materials.isEmpty()) {
            return words.text("cylinders.all", Map.of());
        }
        return Stream.of(codesOf, materials).filter(part -> !part.isEmpty()).collect(Collectors.joining(", "));
    }

    /** The rule as its lines stand in the book. */
    private static String block(FillRule rule, RuleBook book) {
        String text = RuleBookText.write(book);
        int from = text.indexOf("[" + rule.heading().id() + "]\n");
        int end = text.indexOf("\n[", from);
        return (end < 0 ? text.substring(from) : text.substring(from, end)).strip() + "\n";
    }
}
