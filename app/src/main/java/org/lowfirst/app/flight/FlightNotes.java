package org.lowfirst.app.flight;

import java.util.ArrayList;
import java.util.List;

/** The sentences that go with the numbers of a flight: where they are from, and what they do not know. */
final class FlightNotes {

    private FlightNotes() {}

    /** Where the numbers are from. */
    static List<String> ofNumbers(PlannedFlight flight) {
        FlightFile file = flight.file();
        List<String> notes = new ArrayList<>();
        notes.add("Litres are free gas at " + file.request().litres().label() + "; a maker's flows may count at another"
                + " condition.");
        notes.add("Altitudes are pressure altitudes. The bottles are counted at "
                + file.units().show(file.request().temperature())
                + " throughout; colder aloft, they read lower and give less.");
        notes.add(
                "The reserve counts at the highest flow of the flight. The last moment to start down counts a straight"
                        + " way down to sea level at " + file.units().descent()
                        + " and leaves the margin out.");
        notes.add(
                "The rule texts are those for unpressurised aircraft, read at the pressure altitude flown. Time free of a"
                        + " duty counts over the whole flight above its lower altitude: the careful reading."
                        + (file.rules() == RuleChoice.EU_NCO
                                ? " NCO.OP.190 has these altitudes for when the pilot in command cannot judge how lack of oxygen"
                                        + " might affect those on board; else that judgement counts, lower down too."
                                : ""));
        notes.addAll(file.trackNotes());
        return List.copyOf(notes);
    }

    /** What nobody can read off the numbers. */
    static List<String> unknown(PlannedFlight flight) {
        return List.of(
                "How anybody feels. Cold, tiredness, smoke, illness and age call for oxygen lower than any rule text;"
                        + " who feels odd goes down.",
                "What a device does: flows and savings are as typed. Masks leak, pulses follow the breath, regulators"
                        + " have a least pressure and freeze, gauges err.",
                "Which rule text is in force (" + flight.file().rules().text()
                        + " as this program has it). The pilot in"
                        + " command reads it; makers' instructions and local codes come first.");
    }
}
