package org.lowfirst.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lowfirst.app.outlook.MoreFills;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a planned event as typed behind {@code --event}: {@code 2026-05-23=5}, or {@code 2026-05-23/7=30} for seven days. */
final class EventOption implements ITypeConverter<MoreFills> {

    private static final Pattern SHAPE =
            Pattern.compile("(\\d{4}-\\d{2}-\\d{2})(?:/(\\d{1,4}))?=(\\d{1,6}(?:\\.\\d{1,6})?)");

    @Override
    public MoreFills convert(String typed) {
        Matcher shape = SHAPE.matcher(typed.strip());
        if (!shape.matches()) {
            throw unreadable(typed);
        }
        try {
            LocalDate from = LocalDate.parse(shape.group(1));
            int days = shape.group(2) == null ? 1 : Integer.parseInt(shape.group(2));
            return new MoreFills(from, days, Double.parseDouble(shape.group(3)));
        } catch (DateTimeException noDay) {
            throw unreadable(typed);
        }
    }

    private static TypeConversionException unreadable(String typed) {
        return new TypeConversionException("the event (" + typed
                + ") must be DATE=FILLS or DATE/DAYS=FILLS, for example 2026-05-23=5 or 2026-05-23/7=30");
    }
}
