package org.lowfirst.web.stamp;

import java.time.YearMonth;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.MarkedPlate;
import org.lowfirst.station.Marking;
import org.lowfirst.station.StampLine;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.rules.Answer;
import org.lowfirst.station.rules.PermitTerms;
import org.lowfirst.station.rules.Service;
import org.lowfirst.station.rules.TestMark;
import org.lowfirst.station.rules.WallMaterial;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.words.Words;

/** Reads the marking out of the form. Whatever cannot be read becomes a fault of its field. */
final class MarkingReader {

    private static final Pattern MONTH_FIRST = Pattern.compile("(\\d{1,2})\\s*[/.\\s-]\\s*(\\d{4})");
    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})\\s*[/.\\s-]\\s*(\\d{1,2})");
    private static final int MOST_FILLS = 100_000;
    private static final int MOST_YEARS = 60;

    private final Reader reader;
    private final Words words;
    private final YearMonth now;

    /** @param now this month; no test and no manufacture is later */
    MarkingReader(Reader reader, Words words, YearMonth now) {
        this.reader = reader;
        this.words = words;
        this.now = now;
    }

    /** The marking, or null with faults in the reader. */
    @Nullable
    Marking read() {
        String line = reader.text("line");
        StatedPressure test = reader.pressureIfTyped("test");
        YearMonth made = month("made");
        YearMonth tested = month("tested");
        Integer fills = count("fills", 0, MOST_FILLS);
        PermitTerms permit = permit();
        if (!reader.form().sound()) {
            return null;
        }
        return new Marking(
                line.isEmpty() ? null : new StampLine(line, StampFields.convention(reader.text("convention"))),
                new MarkedPlate(orNull(reader.text("specification").toUpperCase(Locale.ROOT)), material(), test, made),
                tested == null
                        ? null
                        : new TestMark(
                                tested,
                                ticked("plus"),
                                ticked("star"),
                                reader.text("suffix").toUpperCase(Locale.ROOT)),
                new Service(
                        orNull(reader.text("gas")),
                        orNull(reader.text("connection")),
                        answer("other-service"),
                        answer("oxygen-clean"),
                        answer("consent")),
                fills,
                permit);
    }

    private boolean ticked(String field) {
        return "yes".equals(reader.text(field));
    }

    private static @Nullable String orNull(String text) {
        return text.isEmpty() ? null : text;
    }

    private WallMaterial material() {
        for (WallMaterial material : WallMaterial.values()) {
            if (StampFields.word(material).equals(reader.text("material"))) {
                return material;
            }
        }
        return WallMaterial.UNKNOWN;
    }

    private Answer answer(String field) {
        for (Answer answer : Answer.values()) {
            if (StampFields.word(answer).equals(reader.text(field))) {
                return answer;
            }
        }
        return Answer.NOT_SURE;
    }

    private @Nullable YearMonth month(String field) {
        if (reader.empty(field)) {
            return null;
        }
        Matcher first = MONTH_FIRST.matcher(reader.text(field));
        Matcher last = YEAR_FIRST.matcher(reader.text(field));
        boolean monthFirst = first.matches();
        if (!monthFirst && !last.matches()) {
            reader.fault(field, words.of("fault.month"));
            return null;
        }
        int month = Integer.parseInt(monthFirst ? first.group(1) : last.group(2));
        int year = Integer.parseInt(monthFirst ? first.group(2) : last.group(1));
        if (month < 1 || month > 12) {
            reader.fault(field, words.of("fault.month"));
            return null;
        }
        YearMonth typed = YearMonth.of(year, month);
        if (typed.isAfter(now)) {
            reader.fault(field, words.of("fault.month.ahead"));
            return null;
        }
        return typed;
    }

    private @Nullable Integer count(String field, int least, int most) {
        if (reader.empty(field)) {
            return null;
        }
        String text = reader.text(field).replace(",", "");
        if (!text.matches("\\d{1,6}") || Integer.parseInt(text) < least || Integer.parseInt(text) > most) {
            reader.fault(field, words.of("fault.count", least, most));
            return null;
        }
        return Integer.valueOf(text);
    }

    private @Nullable PermitTerms permit() {
        Integer test = count("permit-test", 1, MOST_YEARS);
        Integer life = count("permit-life", 1, MOST_YEARS);
        String source = reader.text("permit");
        if (reader.empty("permit-test") && reader.empty("permit-life") && source.isEmpty()) {
            return null;
        }
        if (test == null || life == null || source.isEmpty()) {
            reader.fault("permit", words.of("fault.permit"));
            return null;
        }
        return new PermitTerms(test, life, source);
    }
}
