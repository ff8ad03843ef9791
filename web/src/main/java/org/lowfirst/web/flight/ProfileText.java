package org.lowfirst.web.flight;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.lowfirst.app.flight.FlownTrack;
import org.lowfirst.planning.flight.Altitude;
import org.lowfirst.planning.flight.Leg;
import org.lowfirst.planning.flight.Profile;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.words.Words;

/**
 * A profile as it is typed: one line for each point with the time after the start, the altitude and, if wanted, the name of the leg
 * that ends there.
 */
final class ProfileText {

    private static final Pattern LINE = Pattern.compile(
            "([0-9]{1,2}):([0-5][0-9])(?::([0-5][0-9](?:[.,][0-9]{1,3})?))?\\s+(-?[0-9][0-9., ]*?)(?:\\s*(?:ft|m))?(?:\\s+([^0-9\\s].*))?");
    private static final int MOST_LINES = 2_000;

    private final boolean feet;
    private final Words words;
    private String fault = "";

    ProfileText(boolean feet, Words words) {
        this.feet = feet;
        this.words = words;
    }

    /** Why there is no profile; empty when there is one. */
    String fault() {
        return fault;
    }

    /** The profile; empty with a fault. */
    Optional<Profile> read(String text) {
        List<String> lines =
                text.lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
        if (lines.size() < 2) {
            fault = words.of("fault.flight.profile.short");
            return Optional.empty();
        }
        if (lines.size() > MOST_LINES) {
            fault = words.of("fault.flight.profile.long", lines.size(), MOST_LINES);
            return Optional.empty();
        }
        List<Leg> legs = new ArrayList<>();
        double before_s = 0.0;
        Altitude from = new Altitude(0.0);
        for (int i = 0; i < lines.size(); i++) {
            Matcher line = LINE.matcher(lines.get(i));
            if (!line.matches()) {
                fault = words.of("fault.flight.profile.line", i + 1, lines.get(i));
                return Optional.empty();
            }
            double at_s = seconds(line);
            Altitude altitude = altitude(line.group(4));
            if (i > 0 && at_s <= before_s) {
                fault = words.of("fault.flight.profile.back", i + 1, lines.get(i));
                return Optional.empty();
            }
            if (i > 0) {
                String name = line.group(5);
                legs.add(new Leg(
                        name == null ? words.of("flight.leg", i) : name.strip(),
                        Duration.ofMillis(Math.round((at_s - before_s) * 1_000)),
                        from,
                        altitude));
            }
            before_s = at_s;
            from = altitude;
        }
        return checked(legs);
    }

    private Optional<Profile> checked(List<Leg> legs) {
        Profile.Outcome outcome = Profile.of(legs);
        if (outcome instanceof Profile.Checked checked) {
            return Optional.of(checked.profile());
        }
        Profile.Refused refused = (Profile.Refused) outcome;
        fault = words.of(
                "fault.flight.profile." + refused.problem().name().toLowerCase(Locale.ROOT),
                legs.isEmpty() ? "" : legs.get(refused.leg()).name(),
                plain(refused.measured()) + " " + refused.unit(),
                plain(refused.limit()) + " " + refused.unit());
        return Optional.empty();
    }

    /** A recorded track as it would be typed. */
    String of(FlownTrack track) {
        return track.points().stream()
                .map(point -> String.format(
                        Locale.ROOT,
                        "%d:%02d:%02d %d",
                        (long) point.seconds() / 3600,
                        (long) point.seconds() / 60 % 60,
                        (long) point.seconds() % 60,
                        Math.round(feet ? new Altitude(point.metres()).toFeet() : point.metres())))
                .distinct()
                .collect(Collectors.joining("\n"));
    }

    private static double seconds(Matcher line) {
        String seconds = line.group(3);
        return 3_600.0 * Integer.parseInt(line.group(1))
                + 60.0 * Integer.parseInt(line.group(2))
                + (seconds == null ? 0.0 : Double.parseDouble(seconds.replace(',', '.')));
    }

    private Altitude altitude(String typed) {
        double number = Double.parseDouble(typed.replaceAll("[., ](?=[0-9]{3}(?:\\D|$))", "")
                .replace(" ", "")
                .replace(',', '.')
                .replaceAll("\\.+$", ""));
        return feet ? Altitude.ofFeet(number) : new Altitude(number);
    }

    private static String plain(double value) {
        return Figures.number(value, value == Math.rint(value) ? 0 : 1, Locale.ENGLISH);
    }
}
