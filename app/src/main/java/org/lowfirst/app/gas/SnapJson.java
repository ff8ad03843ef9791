package org.lowfirst.app.gas;

import org.lowfirst.app.sheet.JsonLine;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.StandardAtmosphere;

/** The end temperature behind a snapped valve as one JSON object on one line, see docs/schema/gas-result.schema.json. */
public final class SnapJson {

    private SnapJson() {}

    /** The object, with a new line at its end. */
    public static String of(SnapAnswer answer) {
        JsonLine json = new JsonLine().openObject();
        json.key("gas").value("oxygen");
        AbsolutePressure supply = answer.supply().value().toAbsolute(StandardAtmosphere.PRESSURE);
        json.key("supply_absolute").openObject();
        json.key("psi").value(supply.to(PressureUnit.PSI));
        json.key("bar").value(supply.toBar());
        json.closeObject();
        json.key("temperature_K").value(answer.at().value().kelvin());
        json.key("pressure_ratio").value(answer.opening().ratio());
        json.key("real_gas_K").value(answer.opening().realGas().kelvin());
        json.key("constant_gamma_K").value(answer.opening().constantGamma().kelvin());
        json.key("notes").openList();
        answer.notes().forEach(json::value);
        json.closeList();
        return json.closeObject() + "\n";
    }
}
