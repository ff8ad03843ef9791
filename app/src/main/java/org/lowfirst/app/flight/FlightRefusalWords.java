package org.lowfirst.app.flight;

import org.lowfirst.app.sheet.Numerals;
import org.lowfirst.app.sheet.ShownReadings;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.flight.FlightOutcome;

/** Why a flight cannot be worked out, as a sentence. */
final class FlightRefusalWords {

    private FlightRefusalWords() {}

    static String of(FlightOutcome.Refused refused, FlightUnits units) {
        String who = refused.subject();
        String measured = Numerals.grouped(refused.measured()) + " " + refused.unit();
        String limit = Numerals.grouped(refused.limit()) + " " + refused.unit();
        return switch (refused.problem()) {
            case NO_OCCUPANTS -> "There is nobody on board. Add people: with one line for each person.";
            case DUPLICATE_NAME -> "The name \"" + who + "\" is given twice. Give each its own name.";
            case MARGIN_BELOW_ZERO -> "The margin (" + measured + ") must be at least " + limit + ". Correct it.";
            case RESERVE_BELOW_ZERO -> "The reserve (" + measured + ") must be at least " + limit + ". Correct it.";
            case DESCENT_NOT_ABOVE_ZERO ->
                "The rate of descent (" + measured + ") must be above 0 and at most 75 m/s. Correct it.";
            case TEMPERATURE_OUT_OF_RANGE ->
                "The temperature of the bottles (" + units.show(new Temperature(refused.measured()))
                        + ") is beyond " + units.show(new Temperature(refused.limit()))
                        + ", where the gas equation ends. Check the number and its unit.";
            case READING_ABOVE_SERVICE_PRESSURE ->
                "Bottle " + who + " reads " + reading(refused.measured(), units)
                        + ", far above its service pressure of "
                        + reading(refused.limit(), units) + ". Check both; if the gauge is right, keep away and ask the"
                        + " person responsible.";
            case READING_BELOW_ZERO -> "The reading of bottle " + who + " is below zero. Read it again.";
            case KEEP_BELOW_ZERO -> "The pressure to keep in bottle " + who + " is below zero. Correct it.";
            case PRESSURE_OUT_OF_RANGE ->
                "The pressure of bottle " + who + " (" + reading(refused.measured(), units) + ") is beyond "
                        + reading(refused.limit(), units) + ", where the gas equation ends. Check the number and its"
                        + " unit.";
        };
    }

    private static String reading(double gauge_Pa, FlightUnits units) {
        ShownReadings shown = units.readings();
        return shown.withUnit(shown.given(new GaugePressure(gauge_Pa)));
    }
}
