package org.lowfirst.web.objection;

import java.util.Map;
import org.lowfirst.planning.study.Objection;

/** Which field of a form an objection of the planner is about, by what the planner calls it. */
public final class ObjectionFields {

    private ObjectionFields() {}

    /** @param fields what the planner calls a thing, and the field it is typed into */
    public static String of(Objection objection, Map<String, String> fields) {
        String what = what(objection);
        int owner = what.indexOf(" of alternative ");
        return fields.getOrDefault(owner < 0 ? what : what.substring(0, owner), "form");
    }

    private static String what(Objection objection) {
        if (objection instanceof Objection.NumberOutOfRange number) {
            return number.what();
        }
        if (objection instanceof Objection.PressureOutOfRange pressure) {
            return pressure.what();
        }
        if (objection instanceof Objection.VolumeOutOfRange volume) {
            return volume.what();
        }
        return objection instanceof Objection.TemperatureOutOfRange temperature ? temperature.what() : "";
    }
}
