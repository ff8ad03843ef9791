package org.lowfirst.station.stamp;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;

/** Marks of the United States and Canada. */
final class UsMarks {

    private static final String AUTHORITY = "(DOT|ICC|CTC|BTC|CRC|TC)";
    private static final String CODE = "(3AAX|3AAM|3AX|3AA|3ALM|3AL|3AM|3A|3HTM|3HT|3T|3B|3E)";
    private static final String PRESSURE = "(?:[-\\s]*(\\d{3,4})(?:\\s*(PSIG?|BAR))?)?";
    private static final String TESTER = "([A-Z]\\d{3}|V\\d{6})";
    private static final String INSPECTOR = "([A-Z]{1,3}|IA\\d{2})";

    static final List<Recogniser> ALL = List.of(
            Recogniser.of(AUTHORITY + "-" + CODE + "(\\d{3,4})()-([A-Z0-9]{1,12})-([A-Z]{1,4})", UsMarks::joined),
            Recogniser.of(AUTHORITY + "[-\\s]*" + CODE + PRESSURE, UsMarks::specification),
            Recogniser.of(AUTHORITY + "[-\\s]*(39|3)" + PRESSURE, UsMarks::specification),
            Recogniser.of("()" + CODE + PRESSURE, UsMarks::specification),
            Recogniser.of(
                    AUTHORITY + "[-\\s]*(SP|E|SU)[-\\s]*(\\d{3,6})(?:[-\\s]+(\\d{3,4})(?:\\s*(PSIG?|BAR))?)?",
                    UsMarks::permit),
            Recogniser.of(
                    TestDates.MONTH + "[\\s/-]*" + TESTER + "[\\s/-]*(\\d{4}|\\d{2})" + TestDates.SYMBOLS,
                    (m, seen) -> tested(m, 1, 2, 3, seen)),
            Recogniser.of(
                    TESTER + "\\s+" + TestDates.MONTH + "[\\s/-]+(\\d{4}|\\d{2})" + TestDates.SYMBOLS,
                    UsMarks::testerFirst),
            Recogniser.of(
                    TestDates.MONTH + "[\\s-]+" + INSPECTOR + "[\\s-]+(\\d{4}|\\d{2})" + TestDates.SYMBOLS,
                    (m, seen) -> tested(m, 1, 2, 3, seen)),
            Recogniser.of("(\\d{4})[/-]" + TestDates.MONTH + TestDates.SYMBOLS, UsMarks::yearFirst),
            Recogniser.of("(\\d{1,2})\\s*[/-]\\s*(\\d{4}|\\d{2})" + TestDates.SYMBOLS, UsMarks::untested),
            Recogniser.of("(\\d{1,2})\\s+(\\d{4}|\\d{2})" + TestDates.SYMBOLS, UsMarks::spaced),
            Recogniser.of("IA\\d{2}|[A-Z]{1,3}(?=\\s+\\d{1,2}\\s*[-/]\\s*\\d{2})", UsMarks::inspector));

    private UsMarks() {}

    private static List<Part> specification(Matcher m, Seen seen) {
        String code = Parts.capitals(m, 2);
        SpecificationMark known = seen.table().find(Convention.US, code).orElse(null);
        Meaning meaning = new Meaning.Specification(Parts.capitals(m, 1), code, "", known);
        return withPressure(m, meaning, m.end(2), 3, bareUnit(known));
    }

    /** Specification, pressure, serial number and maker joined by hyphens. */
    private static List<Part> joined(Matcher m, Seen seen) {
        List<Part> parts = new ArrayList<>(specification(m, seen));
        parts.add(Parts.group(m, 5, new Meaning.SerialNumber(m.group(5))));
        parts.add(Parts.group(m, 6, new Meaning.Maker(m.group(6))));
        return parts;
    }

    /** Letters before a date, once the maker is known, are the inspector's. */
    private static List<Part> inspector(Matcher m, Seen seen) {
        return seen.has(Meaning.Maker.class) ? Parts.whole(m, new Meaning.InspectionMark(m.group())) : List.of();
    }

    private static List<Part> permit(Matcher m, Seen seen) {
        String code = Parts.capitals(m, 2);
        SpecificationMark known = seen.table().find(Convention.US, code).orElse(null);
        Meaning meaning = new Meaning.Specification(Parts.capitals(m, 1), code, m.group(3), known);
        return withPressure(m, meaning, m.end(3), 4, bareUnit(known));
    }

    private static PressureUnit bareUnit(@Nullable SpecificationMark known) {
        return known == null ? PressureUnit.PSI : known.bareUnit();
    }

    /** The specification, and the pressure after it when one is there. */
    private static List<Part> withPressure(Matcher m, Meaning specification, int end, int number, PressureUnit bare) {
        List<Part> parts = new ArrayList<>();
        String text = m.group().substring(0, end - m.start());
        parts.add(new Part(m.start(), end, text, specification, List.of()));
        if (m.group(number) != null) {
            String unit = Parts.capitals(m, number + 1);
            PressureUnit stated = switch (unit) {
                case "BAR" -> PressureUnit.BAR;
                case "" -> bare;
                default -> PressureUnit.PSI;
            };
            int last = unit.isEmpty() ? m.end(number) : m.end(number + 1);
            String typed = m.group().substring(m.start(number) - m.start(), last - m.start());
            GaugePressure pressure = GaugePressure.of(Parts.number(m, number), stated);
            parts.add(new Part(m.start(number), last, typed, new Meaning.ServicePressure(pressure), List.of()));
        }
        return parts;
    }

    private static List<Part> tested(Matcher m, int month, int tester, int year, Seen seen) {
        YearMonth when = YearMonth.of(TestDates.year(m.group(year), seen.today()), Integer.parseInt(m.group(month)));
        TestDates.Symbols symbols = TestDates.Symbols.in(Parts.capitals(m, 4));
        return TestDates.part(m, TestDates.date(when, Parts.capitals(m, tester), symbols), null, seen);
    }

    /** A tester's mark before the month; it is the serial number's place too, when none has been read. */
    private static List<Part> testerFirst(Matcher m, Seen seen) {
        Part part = tested(m, 2, 1, 3, seen).get(0);
        if (seen.has(Meaning.SerialNumber.class) || !seen.has(Meaning.Specification.class)) {
            return List.of(part);
        }
        List<Ambiguity> ways = new ArrayList<>(part.ambiguities());
        ways.add(new Ambiguity(Ambiguity.Kind.SERIAL_OR_TESTER, new Meaning.SerialNumber(m.group(1))));
        return List.of(new Part(part.start(), part.end(), part.text(), part.meaning(), ways));
    }

    private static List<Part> yearFirst(Matcher m, Seen seen) {
        YearMonth when = YearMonth.of(Integer.parseInt(m.group(1)), Integer.parseInt(m.group(2)));
        return TestDates.part(m, TestDates.date(when, "", TestDates.Symbols.in(Parts.capitals(m, 3))), null, seen);
    }

    private static List<Part> untested(Matcher m, Seen seen) {
        return TestDates.pairs(m, 1, 2, true, TestDates.Symbols.in(Parts.capitals(m, 3)), seen);
    }

    /** Two numbers with a space between are a date only once a specification has been seen. */
    private static List<Part> spaced(Matcher m, Seen seen) {
        return seen.has(Meaning.Specification.class) ? untested(m, seen) : List.of();
    }
}
