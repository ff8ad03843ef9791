package org.lowfirst.app.flight;

import java.util.List;
import java.util.Optional;
import org.lowfirst.app.sheet.JsonLine;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.flight.Altitude;
import org.lowfirst.planning.flight.FlightPlan;
import org.lowfirst.planning.flight.Need;
import org.lowfirst.planning.flight.Occupant;
import org.lowfirst.planning.flight.OxygenRule;
import org.lowfirst.planning.flight.Span;

/** The oxygen of a flight as one JSON object on one line, see docs/schema/flight-result.schema.json. */
public final class FlightJson {

    private final PlannedFlight flight;
    private final FlightPlan plan;
    private final List<Occupant> people;
    private final JsonLine json = new JsonLine();

    private FlightJson(PlannedFlight flight) {
        this.flight = flight;
        this.plan = flight.plan();
        this.people = flight.file().request().occupants();
    }

    /** The object, with a new line at its end. */
    public static String of(PlannedFlight flight) {
        return new FlightJson(flight).text();
    }

    private String text() {
        json.openObject();
        json.key("covered").value(plan.covered());
        json.key("rules").value(flight.file().rules().set());
        json.key("litres_at").value(flight.file().request().litres().label());
        json.key("temperature_K").value(flight.file().request().temperature().kelvin());
        json.key("duration_s").value(seconds());
        json.key("highest_ft").value(feet(flight.file().request().profile().highest()));
        litres();
        json.key("legs").openList();
        flight.legs().forEach(this::leg);
        json.closeList();
        people();
        bottles();
        times();
        json.key("needs").openList();
        plan.needs().forEach(this::need);
        json.closeList();
        json.key("gaps").openList();
        plan.gaps().forEach(this::gap);
        json.closeList();
        notes("notes", FlightNotes.ofNumbers(flight));
        notes("not_known", FlightNotes.unknown(flight));
        return json.closeObject() + "\n";
    }

    private double seconds() {
        return flight.file().request().profile().duration().toNanos() / 1e9;
    }

    private void litres() {
        json.key("used_litres").value(plan.usedLitres());
        json.key("margin_litres").value(plan.marginLitres());
        json.key("reserve_litres").value(plan.reserveLitres());
        json.key("needed_litres").value(plan.neededLitres());
        json.key("usable_litres").value(plan.usableLitres());
        json.key("short_litres").value(plan.shortLitres());
    }

    private void leg(LegRow leg) {
        json.openObject();
        json.key("name").value(leg.name());
        json.key("from_s").value(leg.from_s());
        json.key("to_s").value(leg.to_s());
        json.key("from_ft").value(feet(leg.from()));
        json.key("to_ft").value(feet(leg.to()));
        json.key("litres").value(leg.litres());
        json.closeObject();
    }

    private void people() {
        json.key("people").openList();
        for (int i = 0; i < people.size(); i++) {
            json.openObject();
            json.key("name").value(people.get(i).name());
            json.key("role").value(role(people.get(i).role()));
            json.key("from_ft").value(feet(people.get(i).from()));
            json.key("litres").value(plan.occupants().get(i).litres());
            json.closeObject();
        }
        json.closeList();
    }

    private void bottles() {
        json.key("bottles").openList();
        for (int i = 0; i < plan.bottles().size(); i++) {
            json.openObject();
            json.key("name").value(plan.bottles().get(i).name());
            pressure(
                    "reading",
                    Optional.of(flight.file().request().bottles().get(i).reading()));
            pressure("full_reads", Optional.of(flight.full().get(i)));
            json.key("usable_litres").value(plan.bottles().get(i).litres());
            pressure("fill_to", flight.fillTo(i));
            json.closeObject();
        }
        json.closeList();
        pressure("reading_needed", flight.readingNeeded());
    }

    private void times() {
        moment("start_down_by_s", plan.turn());
        moment("reserve_touched_s", plan.reserveTouched());
        moment("emptied_s", plan.emptied());
        moment("lasts_at_highest_flow_s", plan.highestFlowMinutes().map(minutes -> minutes * 60.0));
    }

    private void need(Need need) {
        OxygenRule rule = need.rule();
        json.openObject();
        json.key("reference").value(rule.reference());
        json.key("status").value(rule.status());
        json.key("role").value(role(rule.role()));
        json.key("duty").value(rule.duty() == OxygenRule.Duty.USE ? "use" : "provide");
        json.key("share_percent").value(rule.sharePercent());
        json.key("above_ft").value(feet(rule.above()));
        json.key("up_to_ft").value(feet(rule.upTo()));
        json.key("free_s").value(rule.after().toMillis() / 1000.0);
        json.key("people").openList();
        people.stream()
                .filter(who -> who.role() == rule.role())
                .map(Occupant::name)
                .forEach(json::value);
        json.closeList();
        json.key("spans").openList();
        need.spans().forEach(this::span);
        json.closeList();
        json.closeObject();
    }

    private void gap(FlightPlan.Gap gap) {
        json.openObject();
        json.key("person").value(gap.occupant());
        json.key("reference").value(gap.rule().reference());
        json.key("span");
        span(gap.span());
        json.closeObject();
    }

    private void span(Span span) {
        json.openObject();
        json.key("from_s").value(span.fromSeconds());
        json.key("to_s").value(span.toSeconds());
        json.closeObject();
    }

    private void notes(String key, List<String> sentences) {
        json.key(key).openList();
        sentences.forEach(json::value);
        json.closeList();
    }

    private void moment(String key, Optional<Double> seconds) {
        json.key(key);
        seconds.ifPresentOrElse(json::value, json::nothing);
    }

    private void pressure(String key, Optional<GaugePressure> reading) {
        json.key(key);
        if (reading.isEmpty()) {
            json.nothing();
            return;
        }
        json.openObject();
        json.key("psi").value(reading.get().toPsi());
        json.key("bar").value(reading.get().toBar());
        json.closeObject();
    }

    /** Feet to a millionth: altitudes typed in feet come back as typed. */
    private static double feet(Altitude altitude) {
        return Math.rint(altitude.toFeet() * 1e6) / 1e6;
    }

    private static String role(Occupant.Role role) {
        return role == Occupant.Role.CREW ? "crew" : "passenger";
    }
}
