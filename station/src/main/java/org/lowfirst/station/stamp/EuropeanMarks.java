package org.lowfirst.station.stamp;

import java.time.YearMonth;
import java.util.List;
import java.util.regex.Matcher;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;

/** Marks of Europe. */
final class EuropeanMarks {

    private static final String NUMBER = "(\\d{1,4}(?:[.,]\\d{1,3})?)";
    private static final String UNIT = "(?:\\s*(BAR|MPA|PSIG?))?";

    static final List<Recogniser> ALL = List.of(
            Recogniser.of("(DIN)\\s*(477)(?:\\s*(?:-|NO\\.?|NR\\.?)\\s*\\d{1,2})?", EuropeanMarks::outlet),
            Recogniser.of(
                    "((?:DIN|BS|NF)?\\s*(?:EN)?\\s*ISO|(?:DIN|BS|NF)?\\s*EN)[\\s-]*(\\d{3,5}(?:-\\d)?)(?::\\d{4})?",
                    EuropeanMarks::standard),
            Recogniser.of("(PH|PT|TP)\\s*[:=]?\\s*" + NUMBER + UNIT, EuropeanMarks::testPressure),
            Recogniser.of("(PW|WP)\\s*[:=]?\\s*" + NUMBER + UNIT, EuropeanMarks::servicePressure),
            Recogniser.of("()" + NUMBER + "\\s*(BAR|MPA)", EuropeanMarks::unlabelledPressure),
            Recogniser.of("(\u03c0|\u03a0|PI|\u03c1|RHO)\\s*(\\d{4})?", EuropeanMarks::conformity),
            Recogniser.of("(\\d{4})\\s*[/.-]\\s*(\\d{1,2})", EuropeanMarks::yearFirst),
            Recogniser.of("(\\d{1,2})\\s*[/.-]\\s*(\\d{4})", EuropeanMarks::monthFirst),
            Recogniser.of("(\\d{2})\\s*[/-]\\s*(\\d{2})", EuropeanMarks::shortDate),
            Recogniser.of("\\d{2}[EP]|M\\d{2}(?:\\s*[x\u00d7]\\s*\\d(?:[.,]\\d)?)?", EuropeanMarks::thread),
            Recogniser.of("[A-Z]{1,4}", EuropeanMarks::letters));

    private EuropeanMarks() {}

    private static List<Part> outlet(Matcher m, Seen seen) {
        return Parts.whole(m, new Meaning.Connection(CommonMarks.squeezed(m.group())));
    }

    private static List<Part> standard(Matcher m, Seen seen) {
        String body = Parts.capitals(m, 1).strip();
        String family = body.endsWith("ISO") ? "ISO" : "EN";
        String authority = CommonMarks.squeezed(body.substring(0, body.length() - family.length()));
        String code = family + " " + m.group(2);
        SpecificationMark known = seen.table().find(Convention.EUROPEAN, code).orElse(null);
        return Parts.whole(m, new Meaning.Specification(authority, code, "", known));
    }

    private static List<Part> testPressure(Matcher m, Seen seen) {
        return labelled(m, new Meaning.TestPressure(pressure(m)));
    }

    private static List<Part> servicePressure(Matcher m, Seen seen) {
        return labelled(m, new Meaning.ServicePressure(pressure(m)));
    }

    private static List<Part> labelled(Matcher m, Meaning meaning) {
        return m.group(3) == null
                ? Parts.whole(m, meaning, new Ambiguity(Ambiguity.Kind.UNIT_NOT_STATED, null))
                : Parts.whole(m, meaning);
    }

    /**
     * A pressure without letters is taken as the test pressure, which is the cautious reading, unless a higher test pressure
     * has been read already.
     */
    private static List<Part> unlabelledPressure(Matcher m, Seen seen) {
        GaugePressure pressure = pressure(m);
        Meaning test = new Meaning.TestPressure(pressure);
        Meaning service = new Meaning.ServicePressure(pressure);
        boolean lowerThanTest = seen.parts().stream()
                .anyMatch(part -> part.meaning() instanceof Meaning.TestPressure known
                        && known.pressure().compareTo(pressure) > 0);
        return lowerThanTest
                ? Parts.whole(m, service, new Ambiguity(Ambiguity.Kind.TEST_OR_SERVICE_PRESSURE, test))
                : Parts.whole(m, test, new Ambiguity(Ambiguity.Kind.TEST_OR_SERVICE_PRESSURE, service));
    }

    private static GaugePressure pressure(Matcher m) {
        PressureUnit unit = switch (Parts.capitals(m, 3)) {
            case "MPA" -> PressureUnit.MEGAPASCAL;
            case "PSI", "PSIG" -> PressureUnit.PSI;
            default -> PressureUnit.BAR;
        };
        return GaugePressure.of(Parts.number(m, 2), unit);
    }

    private static List<Part> conformity(Matcher m, Seen seen) {
        String letter = Parts.capitals(m, 1);
        boolean pi = letter.equals("PI") || letter.equals("\u03a0");
        return Parts.whole(m, new Meaning.ConformityMark(pi ? "pi" : "rho", Parts.capitals(m, 2)));
    }

    private static List<Part> yearFirst(Matcher m, Seen seen) {
        return dated(m, Integer.parseInt(m.group(1)), Integer.parseInt(m.group(2)), seen);
    }

    private static List<Part> monthFirst(Matcher m, Seen seen) {
        return dated(m, Integer.parseInt(m.group(2)), Integer.parseInt(m.group(1)), seen);
    }

    private static List<Part> dated(Matcher m, int year, int month, Seen seen) {
        if (month < 1 || month > 12) {
            return List.of();
        }
        Meaning.TestDate date = TestDates.date(YearMonth.of(year, month), "", TestDates.Symbols.in(""));
        return TestDates.part(m, date, null, seen);
    }

    private static List<Part> shortDate(Matcher m, Seen seen) {
        return TestDates.pairs(m, 1, 2, false, TestDates.Symbols.in(""), seen);
    }

    /** Letters by their place: a country's sign, then who inspected or, after the thread, who made it. */
    private static List<Part> letters(Matcher m, Seen seen) {
        Meaning before = seen.last();
        String letters = Parts.capitals(m, 0);
        if (before instanceof Meaning.SerialNumber && letters.equals("H")) {
            return Parts.whole(m, new Meaning.SteelForHydrogen());
        }
        if (before instanceof Meaning.Country) {
            boolean afterThread = seen.lastBut(1) instanceof Meaning.NeckThread;
            return Parts.whole(m, afterThread ? new Meaning.Maker(m.group()) : new Meaning.InspectionMark(m.group()));
        }
        boolean countryFits = before instanceof Meaning.Specification
                || before instanceof Meaning.NeckThread
                || before instanceof Meaning.TestDate;
        return countryFits && CountrySigns.isOne(letters) ? Parts.whole(m, new Meaning.Country(letters)) : List.of();
    }

    private static List<Part> thread(Matcher m, Seen seen) {
        return Parts.whole(m, new Meaning.NeckThread(Parts.capitals(m, 0)));
    }
}
