package org.lowfirst.app.fitness;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lowfirst.app.words.Wording;

/**
 * Says in a language what is wrong in a rule file. The reader says it in English; each of its sentences is known here by its words
 * and said again with the same names and values. One that is not known stays as it is.
 */
public final class RuleFileWords {

    private static final String PREFIX = "rule-file.";

    /** The sentences of the reader, the narrower before the wider. */
    private static final List<String> SENTENCES = List.of(
            "opens",
            "id-twice",
            "no-pair",
            "no-value",
            "set-twice",
            "no-kind",
            "pressure-unit",
            "temperature-unit",
            "volume-unit",
            "not-of-a-book",
            "not-of-this-kind",
            "one-of",
            "missing",
            "whole-number",
            "above-zero",
            "fraction",
            "month",
            "day",
            "pressure",
            "temperature",
            "volume",
            "empty-name",
            "named-twice",
            "rule-id",
            "country",
            "source",
            "in-force",
            "fraction-above-zero",
            "id-once",
            "kind-needed",
            "override-never",
            "either");

    private static final Pattern NAME = Pattern.compile("\\{([a-z]+)}");

    private final Wording wording;
    private final List<Known> known = new ArrayList<>();

    private record Known(String key, Pattern sentence, List<String> names) {}

    public RuleFileWords(Locale locale) {
        this.wording = Wording.of(RuleFileWords.class, locale);
        Wording english = Wording.of(RuleFileWords.class, Locale.ENGLISH);
        SENTENCES.forEach(key -> known.add(known(PREFIX + key, english)));
    }

    private static Known known(String key, Wording english) {
        List<String> names = List.of("word", "known", "from", "until");
        Map<String, String> itself = new HashMap<>();
        names.forEach(name -> itself.put(name, "{" + name + "}"));
        String template = english.text(key, itself);
        List<String> found = new ArrayList<>();
        StringBuilder pattern = new StringBuilder();
        Matcher matcher = NAME.matcher(template);
        int from = 0;
        while (matcher.find()) {
            pattern.append(Pattern.quote(template.substring(from, matcher.start())))
                    .append("(.*)");
            found.add(matcher.group(1));
            from = matcher.end();
        }
        pattern.append(Pattern.quote(template.substring(from)));
        return new Known(key, Pattern.compile(pattern.toString()), found);
    }

    /** @param problem the first line of what the reader said counts */
    public String of(String problem) {
        String sentence = problem.lines().findFirst().orElse("");
        for (Known one : known) {
            Matcher matcher = one.sentence().matcher(sentence);
            if (matcher.matches()) {
                Map<String, String> values = new HashMap<>();
                for (int i = 0; i < one.names().size(); i++) {
                    values.put(one.names().get(i), matcher.group(i + 1));
                }
                return wording.text(one.key(), values);
            }
        }
        return problem;
    }
}
