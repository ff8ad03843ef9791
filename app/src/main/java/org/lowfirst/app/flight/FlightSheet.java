package org.lowfirst.app.flight;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.lowfirst.app.sheet.Numerals;
import org.lowfirst.app.sheet.Paragraph;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.flight.BottleOnBoard;
import org.lowfirst.planning.flight.FlightPlan;
import org.lowfirst.planning.flight.Need;
import org.lowfirst.planning.flight.Occupant;

/** The oxygen of a flight as a sheet for people, at most 80 columns wide. */
public final class FlightSheet {

    private final PlannedFlight flight;
    private final FlightFile file;
    private final FlightPlan plan;
    private final FlightUnits units;
    private final NeedWords words;
    private final StringBuilder out = new StringBuilder();

    private FlightSheet(PlannedFlight flight) {
        this.flight = flight;
        this.file = flight.file();
        this.plan = flight.plan();
        this.units = file.units();
        this.words = new NeedWords(units, file.request().occupants());
    }

    /** The sheet, each line ended. */
    public static String of(PlannedFlight flight) {
        return new FlightSheet(flight).text();
    }

    private String text() {
        head();
        result();
        out.append(new LitresTable(flight).text());
        people();
        bottles();
        out.append('\n').append(new FlightClock(flight).text());
        rules();
        heading("Behind the numbers");
        FlightNotes.ofNumbers(flight).forEach(this::item);
        heading("What this sheet does not know");
        FlightNotes.unknown(flight).forEach(this::item);
        return out.toString();
    }

    private void head() {
        String people =
                file.request().occupants().stream().map(FlightSheet::person).collect(Collectors.joining(", "));
        out.append(Paragraph.of(
                "",
                "FLIGHT OXYGEN for "
                        + HoursAndMinutes.near(
                                file.request().profile().duration().toMillis() / 1000.0)
                        + " h, up to " + units.show(file.request().profile().highest()) + ". " + people
                        + ". Bottles at "
                        + units.show(file.request().temperature()) + "."));
        out.append('\n');
    }

    private void result() {
        String numbers = "the bottles give " + Litres.of(plan.usableLitres()) + ", flight, margin and reserve need "
                + Litres.of(plan.neededLitres()) + ".";
        if (plan.covered()) {
            paragraph("COVERED: " + numbers);
        } else {
            paragraph("NOT COVERED, " + Litres.of(plan.shortLitres()) + " short: " + numbers);
        }
        words.gaps(plan.gaps()).forEach(this::paragraph);
        out.append('\n');
    }

    private void people() {
        if (plan.occupants().size() < 2) {
            return;
        }
        out.append('\n');
        for (FlightPlan.Use use : plan.occupants()) {
            out.append(String.format(Locale.ROOT, "  %-34s %10s\n", use.name(), Litres.of(use.litres())));
        }
    }

    private void bottles() {
        out.append('\n');
        List<BottleOnBoard> bottles = file.request().bottles();
        for (int i = 0; i < bottles.size(); i++) {
            BottleOnBoard bottle = bottles.get(i);
            paragraph("Bottle " + bottle.name() + " ("
                    + Numerals.grouped(bottle.waterVolume().toLitres()) + " L) reads "
                    + units.given(bottle.reading()) + " and gives "
                    + Litres.of(plan.bottles().get(i).litres()) + " down to " + units.given(bottle.keep())
                    + "; full it would read "
                    + units.readings()
                            .withUnit(units.readings().limit(flight.full().get(i))) + " today.");
            if (bottle.reading().compareTo(flight.full().get(i)) > 0) {
                paragraph("Bottle " + bottle.name()
                        + " reads more than a full one. Check marking and gauge; if both are right, ask the person"
                        + " responsible before it is carried.");
            }
        }
        needed(bottles.size());
    }

    private void needed(int bottles) {
        if (!flight.canBeCovered()) {
            paragraph("Not even full bottles cover the flight. Take more or larger ones, or fly lower or shorter.");
            return;
        }
        String which = bottles == 1 ? "it must read at least " : "with one reading of all it takes at least ";
        flight.readingNeeded()
                .ifPresent(reading ->
                        paragraph("To cover the flight " + which + atLeast(reading) + " at " + today() + "."));
        String fill = IntStream.range(0, bottles)
                .filter(i -> flight.fillTo(i).isPresent())
                .mapToObj(i -> plan.bottles().get(i).name() + " to at least "
                        + atLeast(flight.fillTo(i).orElseThrow()))
                .collect(Collectors.joining(", "));
        if (bottles > 1 && !fill.isEmpty()) {
            paragraph("From what they read now: fill " + fill + "; one that is not named stays as it is.");
        }
    }

    private String atLeast(GaugePressure reading) {
        return units.readings().withUnit(units.readings().atLeast(reading));
    }

    private String today() {
        return units.show(file.request().temperature());
    }

    private void rules() {
        heading("What the rule texts ask of them (" + file.rules().text() + ")");
        List<Need> needs = plan.needs().stream()
                .filter(need -> words.speaksOfSomebody(need.rule()))
                .toList();
        if (needs.isEmpty()) {
            item("None of them asks anybody on board for oxygen on this profile.");
        }
        for (Need need : needs) {
            out.append(Paragraph.of(
                    String.format(
                            Locale.ROOT, "  %-14s ", NeedWords.span(need.spans().get(0))),
                    words.sentence(need)));
        }
    }

    private static String person(Occupant who) {
        return who.name() + (who.role() == Occupant.Role.CREW ? " (crew)" : " (passenger)");
    }

    private void heading(String title) {
        out.append('\n').append(title).append('\n');
    }

    private void item(String sentence) {
        out.append(Paragraph.of("  - ", sentence));
    }

    private void paragraph(String sentence) {
        out.append(Paragraph.of("  ", sentence));
    }
}
