package org.lowfirst.app.journal;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.MarkedPlate;
import org.lowfirst.station.Marking;
import org.lowfirst.station.Refusal;
import org.lowfirst.station.StampLine;
import org.lowfirst.station.rules.Advice;
import org.lowfirst.station.rules.Answer;
import org.lowfirst.station.rules.PermitTerms;
import org.lowfirst.station.rules.Service;
import org.lowfirst.station.rules.TestMark;
import org.lowfirst.station.rules.WallMaterial;
import org.lowfirst.station.stamp.Convention;

/** How a marking is written: quantities as typed, months and days in ISO 8601, choices in small letters. */
final class MarkingParts {

    private MarkingParts() {}

    static Payload write(Marking marking) {
        StampLine stamp = marking.stamp();
        MarkedPlate plate = marking.plate();
        Service service = marking.service();
        PermitTerms permit = marking.permit();
        Integer fills = marking.fillsBefore();
        return new Payload()
                .with("stamp", stamp == null ? null : stamp.line())
                .with("convention", stamp == null ? null : lower(stamp.convention()))
                .with("specification", plate.specification())
                .with("material", lower(plate.material()))
                .with("testPressure", plate.testPressure() == null ? null : Parts.write(plate.testPressure()))
                .with("made", plate.made() == null ? null : plate.made().toString())
                .with("lastTest", marking.lastTest() == null ? null : write(marking.lastTest()))
                .with("gas", service.gas())
                .with("connection", service.connection())
                .with("otherService", lower(service.otherService()))
                .with("oxygenClean", lower(service.oxygenClean()))
                .with("ownerConsents", lower(service.ownerConsents()))
                .with("fillsBefore", fills == null ? null : (Long) fills.longValue())
                .with("permit", permit == null ? null : write(permit));
    }

    static Marking marking(Payload p) {
        String line = p.textOrNull("stamp");
        String made = p.textOrNull("made");
        return new Marking(
                line == null ? null : new StampLine(line, choice(Convention.class, p.text("convention"))),
                new MarkedPlate(
                        p.textOrNull("specification"),
                        choice(WallMaterial.class, p.text("material")),
                        p.partOrNull("testPressure", Parts::pressure),
                        made == null ? null : month(made)),
                p.partOrNull("lastTest", MarkingParts::test),
                new Service(
                        p.textOrNull("gas"),
                        p.textOrNull("connection"),
                        choice(Answer.class, p.text("otherService")),
                        choice(Answer.class, p.text("oxygenClean")),
                        choice(Answer.class, p.text("ownerConsents"))),
                p.members().get("fillsBefore") == null ? null : Math.toIntExact(p.number("fillsBefore")),
                p.partOrNull("permit", MarkingParts::permit));
    }

    private static Payload write(TestMark test) {
        return new Payload()
                .with("month", test.month().toString())
                .with("plus", test.plus())
                .with("star", test.star())
                .with("suffix", test.suffix());
    }

    private static TestMark test(Payload p) {
        return new TestMark(month(p.text("month")), p.truth("plus"), p.truth("star"), p.text("suffix"));
    }

    private static Payload write(PermitTerms permit) {
        return new Payload()
                .with("testYears", (long) permit.testYears())
                .with("lifeYears", (long) permit.lifeYears())
                .with("source", permit.source());
    }

    private static PermitTerms permit(Payload p) {
        return new PermitTerms(
                Math.toIntExact(p.number("testYears")), Math.toIntExact(p.number("lifeYears")), p.text("source"));
    }

    static Payload write(Map<String, Answer> answers) {
        Payload payload = new Payload();
        answers.forEach((question, answer) -> payload.with(question, lower(answer)));
        return payload;
    }

    static Map<String, Answer> answers(Payload p) {
        Map<String, Answer> answers = new TreeMap<>();
        for (String question : p.members().keySet()) {
            answers.put(question, choice(Answer.class, p.text(question)));
        }
        return answers;
    }

    static Payload write(Refusal refusal) {
        return new Payload()
                .with("rule", refusal.rule())
                .with("advice", lower(refusal.advice()))
                .with("about", refusal.about());
    }

    static Refusal refusal(Payload p) {
        return new Refusal(p.text("rule"), choice(Advice.class, p.text("advice")), p.textOrNull("about"));
    }

    static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("The day (" + text + ") must look like 2026-06-14.", e);
        }
    }

    private static YearMonth month(String text) {
        try {
            return YearMonth.parse(text);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("The month (" + text + ") must look like 2026-06.", e);
        }
    }

    private static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static <E extends Enum<E>> E choice(Class<E> type, @Nullable String text) {
        for (E constant : type.getEnumConstants()) {
            if (lower(constant).equals(text)) {
                return constant;
            }
        }
        throw new IllegalArgumentException("The " + type.getSimpleName() + " (" + text + ") must be one known.");
    }
}
