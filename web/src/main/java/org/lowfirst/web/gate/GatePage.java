package org.lowfirst.web.gate;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.lowfirst.app.fitness.FitnessReport;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * A bottle before its fill: the verdict, and what is to be answered or done first. No step of a fill is on it.
 *
 * @param place the bench
 * @param bottle the bottle
 * @param verdict the verdict so far
 * @param questions to be answered now; empty when the bottle is refused whatever they bring
 * @param acts what can be entered here to go on
 * @param form what was typed; the wish for the fill among it
 * @param key key of the forms
 */
public record GatePage(
        Place place,
        BottleLine bottle,
        VerdictSheet verdict,
        List<FitnessReport.Question> questions,
        Acts acts,
        Form form,
        String key)
        implements Page {

    private static final List<String> WISH = List.of("bottle", "before", "target", "temperature", "bank");

    public GatePage {
        questions = List.copyOf(questions);
    }

    /**
     * @param id its id
     * @param name its name
     * @param holds what it reads; empty when nobody read it
     */
    public record BottleLine(String id, String name, String holds) {}

    /**
     * @param setAside whether a second person may take all of it on
     * @param inspected whether an inspection can be entered
     * @param hammered whether a hammer test can be entered
     * @param foundOpen whether it can be entered that it came with its valve open
     * @param marking whether its marking is what is missing
     */
    public record Acts(boolean setAside, boolean inspected, boolean hammered, boolean foundOpen, boolean marking) {}

    /** The fields of the wish, to be sent along with every form. */
    public Map<String, String> wish() {
        return WISH.stream().collect(Collectors.toMap(field -> field, form::value));
    }

    /** The question this page answers, for asking it again. */
    public String query() {
        return query(form.typed());
    }

    static String query(Map<String, String> typed) {
        return WISH.stream()
                .filter(field -> !typed.getOrDefault(field, "").isEmpty())
                .map(field -> field + "=" + URLEncoder.encode(typed.getOrDefault(field, ""), StandardCharsets.UTF_8))
                .collect(Collectors.collectingAndThen(Collectors.joining("&"), query -> "?" + query));
    }

    /** Codes of the questions on the page: who says "none of these" says it of these. */
    public String asked() {
        return questions.stream().map(FitnessReport.Question::code).collect(Collectors.joining(" "));
    }

    /** Whether answers one by one were begun. */
    public boolean oneByOne() {
        return questions.stream()
                .anyMatch(question ->
                        !form.value("q-" + question.code()).isEmpty() || form.faulty("q-" + question.code()));
    }

    /** The answers a question can have, in the order shown. */
    public static List<String> answers() {
        return Stream.of("no", "not-sure", "yes").toList();
    }

    @Override
    public String template() {
        return "gate";
    }

    @Override
    public String title(Words words) {
        return words.of("gate.title", bottle.name());
    }

    @Override
    public Section section() {
        return Section.FILL;
    }

    @Override
    public Place at() {
        return place;
    }
}
