package org.lowfirst.station.stamp;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Months of tests, with two or four digits of year and the symbols that may follow. */
final class TestDates {

    /** Symbols after a date: plus, star, and letters; the group holds them all. */
    static final String SYMBOLS = "((?:\\s*[+*\\u2605\\u2606]|\\s*(?:STAR|PLUS|UE|VE|E|S)(?![A-Z0-9/]))*)";

    static final String MONTH = "(0?[1-9]|1[0-2])";

    private static final Pattern LETTERS = Pattern.compile("\\b(?:UE|VE|E|S)\\b");

    private TestDates() {}

    /** The symbols as they were read. */
    record Symbols(boolean plus, boolean star, String suffix) {

        static Symbols in(String written) {
            boolean star = written.contains("*")
                    || written.contains("\u2605")
                    || written.contains("\u2606")
                    || written.contains("STAR");
            Matcher letters = LETTERS.matcher(written.replaceAll("[+*\u2605\u2606]", " "));
            return new Symbols(
                    written.contains("+") || written.contains("PLUS"), star, letters.find() ? letters.group() : "");
        }
    }

    static Meaning.TestDate date(YearMonth month, String tester, Symbols symbols) {
        return new Meaning.TestDate(month, tester, symbols.plus(), symbols.star(), symbols.suffix());
    }

    /** Four digits as they are; two digits as the latest year not after today's. */
    static int year(String digits, LocalDate today) {
        int year = Integer.parseInt(digits);
        if (digits.length() == 4) {
            return year;
        }
        int century = today.getYear() / 100 * 100;
        return century + year <= today.getYear() ? century + year : century - 100 + year;
    }

    /**
     * A date and the ways it may be misread.
     *
     * @param swapped the date with month and year exchanged, null when that is no date or not in question
     */
    static List<Part> part(Matcher match, Meaning.TestDate date, @Nullable Meaning swapped, Seen seen) {
        List<Ambiguity> ambiguities = new ArrayList<>();
        if (swapped != null) {
            ambiguities.add(new Ambiguity(Ambiguity.Kind.MONTH_OR_YEAR_FIRST, swapped));
        }
        if (date.month().isAfter(YearMonth.from(seen.today()))) {
            ambiguities.add(new Ambiguity(Ambiguity.Kind.TEST_OR_NEXT_TEST, new Meaning.NextTest(date.month())));
        }
        return List.of(new Part(match.start(), match.end(), match.group(), date, ambiguities));
    }

    /** Two pairs of digits as a month and a year, in the order of the convention; the other order when only that works. */
    static List<Part> pairs(Matcher match, int first, int second, boolean monthFirst, Symbols symbols, Seen seen) {
        String one = match.group(first);
        String two = match.group(second);
        Meaning.@Nullable TestDate usual = monthFirst ? of(one, two, symbols, seen) : of(two, one, symbols, seen);
        Meaning.@Nullable TestDate other = monthFirst ? of(two, one, symbols, seen) : of(one, two, symbols, seen);
        if (usual != null) {
            boolean inQuestion = other != null && !other.equals(usual);
            return part(match, usual, inQuestion ? other : null, seen);
        }
        return other == null ? List.of() : part(match, other, new Meaning.Unknown(match.group()), seen);
    }

    private static Meaning.@Nullable TestDate of(String month, String year, Symbols symbols, Seen seen) {
        int number = Integer.parseInt(month);
        if (month.length() > 2 || year.length() < 2 || number < 1 || number > 12) {
            return null;
        }
        return date(YearMonth.of(year(year, seen.today()), number), "", symbols);
    }
}
