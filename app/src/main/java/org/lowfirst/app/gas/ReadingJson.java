package org.lowfirst.app.gas;

import org.lowfirst.app.sheet.JsonLine;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Parsed;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.warm.SameGas;

/** A reading at other temperatures as one JSON object on one line, see docs/schema/gas-result.schema.json. */
public final class ReadingJson {

    private ReadingJson() {}

    /** The object, with a new line at its end. */
    public static String of(ReadingAnswer answer) {
        TypedReading typed = answer.typed();
        JsonLine json = new JsonLine().openObject();
        json.key("gas").value("oxygen");
        pressure(json.key("reading"), typed.reading().value());
        json.key("temperature_K").value(typed.at().value().kelvin());
        json.key("density_mol_m3").value(answer.real().density().molesPerCubicMetre());
        json.key("readings").openList();
        for (int i = 0; i < typed.readsAt().size(); i++) {
            json.openObject();
            json.key("temperature_K").value(typed.readsAt().get(i).value().kelvin());
            pressure(json.key("real_gas"), answer.real().readings().get(i).reading());
            pressure(json.key("ideal_gas"), answer.ideal().readings().get(i).reading());
            json.closeObject();
        }
        json.closeList();
        contents(json.key("contents"), answer);
        full(json.key("full"), answer);
        json.key("notes").openList();
        answer.notes().forEach(json::value);
        json.closeList();
        return json.closeObject() + "\n";
    }

    private static void contents(JsonLine json, ReadingAnswer answer) {
        SameGas.Contents real = answer.real().contents();
        SameGas.Contents ideal = answer.ideal().contents();
        if (real == null || ideal == null) {
            json.nothing();
            return;
        }
        json.openObject();
        json.key("free_gas_at").value(real.condition().label());
        amounts(json.key("real_gas"), real);
        amounts(json.key("ideal_gas"), ideal);
        json.closeObject();
    }

    private static void amounts(JsonLine json, SameGas.Contents contents) {
        json.openObject();
        json.key("amount_mol").value(contents.amount().moles());
        json.key("mass_kg").value(contents.mass().kilograms());
        json.key("free_gas_litres").value(contents.freeVolume().toLitres());
        json.key("free_gas_cu_ft").value(contents.freeVolume().to(VolumeUnit.CUBIC_FOOT));
        json.closeObject();
    }

    private static void full(JsonLine json, ReadingAnswer answer) {
        SameGas.Fullness real = answer.real().full();
        SameGas.Fullness ideal = answer.ideal().full();
        Parsed.Read<GaugePressure> rated = answer.typed().rated();
        if (real == null || ideal == null || rated == null) {
            json.nothing();
            return;
        }
        json.openObject();
        json.key("rules").value(answer.typed().rules() == ReferenceRule.US ? "us" : "eu");
        json.key("reference_temperature_K")
                .value(answer.typed().rules().temperature().kelvin());
        pressure(json.key("service_pressure"), rated.value());
        fullness(json.key("real_gas"), real);
        fullness(json.key("ideal_gas"), ideal);
        json.closeObject();
    }

    private static void fullness(JsonLine json, SameGas.Fullness full) {
        json.openObject();
        json.key("percent").value(full.percent());
        pressure(json.key("reads_at_reference"), full.atReference());
        pressure(json.key("full_reads_now"), full.full());
        json.closeObject();
    }

    private static void pressure(JsonLine json, GaugePressure reading) {
        json.openObject();
        json.key("psi").value(reading.toPsi());
        json.key("bar").value(reading.toBar());
        json.closeObject();
    }
}
