package org.lowfirst.app.plan;

import org.jspecify.annotations.Nullable;
import org.lowfirst.app.sheet.JsonLine;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.FillsLeft;
import org.lowfirst.planning.RankedSupply;
import org.lowfirst.planning.Skipped;
import org.lowfirst.planning.Step;
import org.lowfirst.transfer.Ending;

/**
 * A plan as one JSON object on one line, see docs/schema/plan-result.schema.json. Pressures are gauge, in psi and in bar;
 * {@code supplies} is the bank after the last bottle.
 */
public final class PlanJson {

    private PlanJson() {}

    /** The object, with a new line at its end. */
    public static String of(PlannedFile planned) {
        JsonLine json = new JsonLine().openObject();
        json.key("temperature_K").value(planned.file().conditions().bench().kelvin());
        json.key("reaches_all").value(planned.reachesAll());
        json.key("bottles").openList();
        planned.plans().plans().forEach(plan -> bottle(json, plan, planned));
        json.closeList();
        json.key("supplies").openList();
        planned.plans().bankAfter().forEach(supply -> supply(json, supply));
        json.closeList();
        json.key("notes").openList();
        planned.notes().forEach(json::value);
        json.closeList();
        return json.closeObject() + "\n";
    }

    private static void bottle(JsonLine json, FillPlan plan, PlannedFile planned) {
        json.openObject();
        json.key("name").value(plan.request().bottle().name());
        json.key("reaches").value(plan.reaches());
        pressure(json.key("stop"), plan.stop().reading());
        pressure(json.key("final"), plan.fill().finalReading());
        pressure(json.key("short_by"), plan.shortBy());
        Amount delivered = plan.fill().delivered();
        json.key("delivered_mol").value(delivered.moles());
        json.key("delivered_litres").value(planned.file().standardLitres(delivered));
        json.key("steps").openList();
        plan.fill().steps().forEach(step -> step(json, step));
        json.closeList();
        json.key("skipped").openList();
        plan.fill().skipped().forEach(skipped -> skipped(json, skipped));
        json.closeList();
        fillsLeft(json.key("fills_left"), plan.fillsLeft());
        json.closeObject();
    }

    private static void step(JsonLine json, Step step) {
        json.openObject();
        json.key("supply").value(step.supply());
        pressure(json.key("bottle_before"), step.bottle().before());
        pressure(json.key("bottle_after"), step.bottle().after());
        pressure(json.key("supply_before"), step.supplyReading().before());
        pressure(json.key("supply_after"), step.supplyReading().after());
        json.key("moved_mol").value(step.moved().moles());
        json.key("ends").value(step.ends() == Ending.TARGET ? "target" : "equal");
        json.closeObject();
    }

    private static void skipped(JsonLine json, Skipped skipped) {
        json.openObject();
        json.key("supply").value(skipped.supply());
        json.key("reason").value(skipped.reason().words());
        json.closeObject();
    }

    private static void fillsLeft(JsonLine json, FillsLeft left) {
        json.openObject();
        json.key("complete").value(left.complete());
        pressure(json.key("next_stops_at"), left.nextStopsAt());
        json.closeObject();
    }

    private static void supply(JsonLine json, RankedSupply supply) {
        json.openObject();
        json.key("name").value(supply.name());
        json.key("rank").value(supply.rank());
        pressure(json.key("reading"), supply.reading());
        json.closeObject();
    }

    private static void pressure(JsonLine json, @Nullable GaugePressure reading) {
        if (reading == null) {
            json.nothing();
            return;
        }
        json.openObject();
        json.key("psi").value(reading.toPsi());
        json.key("bar").value(reading.toBar());
        json.closeObject();
    }
}
