package org.lowfirst.station.stamp;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Goes along one line and asks each recogniser in turn what stands at the place reached. */
final class StampReader {

    private final String line;
    private final Convention convention;
    private final List<Part> parts = new ArrayList<>();
    private final Seen seen;
    private final List<Recogniser> recognisers = new ArrayList<>();

    StampReader(String line, Convention convention, LocalDate today) {
        this.line = line;
        this.convention = convention;
        this.seen = new Seen(Collections.unmodifiableList(parts), today, MarkTable.builtIn());
        recognisers.addAll(CommonMarks.LABELLED);
        recognisers.addAll(convention == Convention.US ? UsMarks.ALL : EuropeanMarks.ALL);
        recognisers.addAll(CommonMarks.LEFT_OVERS);
    }

    Stamp read() {
        int place = 0;
        while (place < line.length()) {
            place = separator(place) || dash(place) ? place + 1 : next(place);
        }
        return new Stamp(line, convention, parts);
    }

    private boolean separator(int place) {
        char c = line.charAt(place);
        if (Character.isWhitespace(c) || c == ';' || c == ',' || c == '|') {
            return true;
        }
        boolean alone = place + 1 == line.length() || Character.isWhitespace(line.charAt(place + 1));
        return alone && dash(place);
    }

    /** A stroke where a part would begin stands between parts. */
    private boolean dash(int place) {
        return line.charAt(place) == '/' || line.charAt(place) == '-';
    }

    private int next(int place) {
        for (Recogniser recogniser : recognisers) {
            List<Part> found = recogniser.at(line, place, seen);
            if (!found.isEmpty()) {
                parts.addAll(found);
                return found.get(found.size() - 1).end();
            }
        }
        int end = place + 1;
        while (end < line.length() && !separator(end)) {
            end++;
        }
        String text = line.substring(place, end);
        parts.add(new Part(place, end, text, new Meaning.Unknown(text), List.of()));
        return end;
    }
}
