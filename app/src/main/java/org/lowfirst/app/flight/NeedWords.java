package org.lowfirst.app.flight;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.lowfirst.planning.flight.Altitude;
import org.lowfirst.planning.flight.FlightPlan;
import org.lowfirst.planning.flight.Need;
import org.lowfirst.planning.flight.Occupant;
import org.lowfirst.planning.flight.OxygenRule;
import org.lowfirst.planning.flight.Span;

/** Says what rule texts ask, and where a device does not do it. */
final class NeedWords {

    /** Rules that end this high end with the table of rules, not with the text. */
    private static final Altitude NO_UPPER_END = Altitude.ofFeet(60_000);

    private static final int ALL = 100;
    private static final int MOST_SPANS = 4;

    private final FlightUnits units;
    private final List<Occupant> people;

    NeedWords(FlightUnits units, List<Occupant> people) {
        this.units = units;
        this.people = people;
    }

    /** Whether anybody on board has the role a rule speaks of. */
    boolean speaksOfSomebody(OxygenRule rule) {
        return people.stream().anyMatch(person -> person.role() == rule.role());
    }

    /** Whom a rule asks for what, when besides its first span, and where it is from. */
    String sentence(Need need) {
        OxygenRule rule = need.rule();
        String names = people.stream()
                .filter(person -> person.role() == rule.role())
                .map(Occupant::name)
                .collect(Collectors.joining(", "));
        String duty = rule.duty() == OxygenRule.Duty.USE ? ": use oxygen" : ": have oxygen at hand";
        return names + duty + also(need) + ". " + condition(rule) + ". " + rule.reference() + ", " + status(rule) + ".";
    }

    /** "Crew above 12,500 ft to 14,000 ft, after the first 30 min above it". */
    private String condition(OxygenRule rule) {
        String who = rule.role() == Occupant.Role.CREW ? "Crew" : "Passengers";
        String share = rule.sharePercent() == ALL ? "" : ", " + rule.sharePercent() + " % of them";
        String free =
                rule.after().isZero() ? "" : ", after the first " + rule.after().toMinutes() + " min up there";
        return who + share + " " + band(rule) + free;
    }

    private String band(OxygenRule rule) {
        String above = "above " + ruleFeet(rule.above());
        return rule.upTo().compareTo(NO_UPPER_END) >= 0 ? above : above + " to " + ruleFeet(rule.upTo());
    }

    /** Rule texts are in feet; a sheet in metres has both. */
    private String ruleFeet(Altitude altitude) {
        String feet = String.format(Locale.ROOT, "%,.0f ft", altitude.toFeet());
        return units.feet() ? feet : feet + " (" + units.show(altitude) + ")";
    }

    private static String also(Need need) {
        List<Span> more = need.spans().subList(1, need.spans().size());
        if (more.isEmpty()) {
            return "";
        }
        String shown = more.stream().limit(MOST_SPANS).map(NeedWords::span).collect(Collectors.joining(", "));
        String rest = more.size() > MOST_SPANS ? " and " + (more.size() - MOST_SPANS) + " times more" : "";
        return String.format(
                Locale.ROOT, ", also %s%s (%.0f min in all)", shown, rest, Math.ceil(need.seconds() / 60.0));
    }

    static String span(Span span) {
        return HoursAndMinutes.before(span.fromSeconds()) + " to " + HoursAndMinutes.after(span.toSeconds());
    }

    /** How far the text of a rule is known. */
    private static String status(OxygenRule rule) {
        return switch (rule.status()) {
            case "read" -> "text read";
            case "read-2nd-hand" -> "a quotation of the text read";
            case "memory" -> "from memory, not read";
            default -> rule.status();
        };
    }

    /** One sentence for each person and rule text, in the order of the gaps. */
    List<String> gaps(List<FlightPlan.Gap> gaps) {
        Map<String, List<FlightPlan.Gap>> byDuty = gaps.stream()
                .collect(Collectors.groupingBy(
                        gap -> gap.occupant() + "\n" + gap.rule().reference(),
                        LinkedHashMap::new,
                        Collectors.toList()));
        return byDuty.values().stream().map(this::gap).toList();
    }

    private String gap(List<FlightPlan.Gap> gaps) {
        FlightPlan.Gap first = gaps.get(0);
        String on = people.stream()
                .filter(person -> person.name().equals(first.occupant()))
                .map(person ->
                        person.flow().litresPerMinuteAt(first.rule().above().metres()) > 0.0
                                ? "is on from " + units.show(person.from()) + " only"
                                : "gives no oxygen")
                .findFirst()
                .orElse("is off");
        String spans =
                gaps.stream().map(FlightPlan.Gap::span).map(NeedWords::span).collect(Collectors.joining(", "));
        return "GAP: " + first.rule().reference() + " asks " + first.occupant() + " to use oxygen from " + spans
                + ", but the device " + on + ".";
    }
}
