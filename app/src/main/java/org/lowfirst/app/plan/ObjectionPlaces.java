package org.lowfirst.app.plan;

import java.util.Optional;
import org.lowfirst.app.file.NumberReader;
import org.lowfirst.app.file.Place;
import org.lowfirst.app.file.Problems;
import org.lowfirst.planning.PlanRefused;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.study.Objection;

/** Puts what planning objects to at the place in the file that it is about. */
public final class ObjectionPlaces {

    private final NumberReader noted;
    private final Problems problems;

    /** @param noted knows where things stand by what problems call them */
    public ObjectionPlaces(NumberReader noted, Problems problems) {
        this.noted = noted;
        this.problems = problems;
    }

    public void report(Objection objection, ShownUnits units) {
        String sentence = objection.inWords(units);
        place(objection).ifPresentOrElse(place -> problems.error(place, sentence), () -> problems.fileError(sentence));
    }

    private Optional<Place> place(Objection objection) {
        if (objection instanceof Objection.NumberOutOfRange number) {
            return find(number.what());
        }
        if (objection instanceof Objection.PressureOutOfRange pressure) {
            return find(pressure.what());
        }
        if (objection instanceof Objection.TemperatureOutOfRange temperature) {
            return find(temperature.what());
        }
        if (objection instanceof Objection.VolumeOutOfRange volume) {
            return find(volume.what());
        }
        if (objection instanceof Objection.NameNotItsOwn name) {
            return find(name.what() + " " + name.name());
        }
        if (objection instanceof Objection.Unfitting unfitting) {
            return find(unfitting.what());
        }
        if (objection instanceof Objection.ConditionsRefused refused) {
            return refused.why() instanceof PlanRefused.BottleAboveLimit above
                    ? find("reading of bottle " + above.bottle())
                    : Optional.empty();
        }
        throw new AssertionError("unhandled " + objection);
    }

    /** The thing itself, or what it is a part of: "largest of the month factors" stands where "month factors" does. */
    private Optional<Place> find(String what) {
        Optional<Place> exact = noted.findPlace(what);
        if (exact.isPresent()) {
            return exact;
        }
        for (String lead : new String[] {"largest of the ", "number of ", "number of kinds of "}) {
            if (what.startsWith(lead)) {
                Optional<Place> part = noted.findPlace(what.substring(lead.length()));
                if (part.isPresent()) {
                    return part;
                }
            }
        }
        return Optional.empty();
    }
}
