package org.lowfirst.app.session;

import org.jspecify.annotations.Nullable;
import org.lowfirst.app.sheet.JsonLine;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.RankedSupply;
import org.lowfirst.planning.session.BottleEnd;
import org.lowfirst.planning.session.HabitResult;
import org.lowfirst.planning.session.MoreReady;
import org.lowfirst.planning.session.OrderReason;
import org.lowfirst.planning.session.Proof;
import org.lowfirst.planning.session.SessionPlan;
import org.lowfirst.planning.session.SessionStep;
import org.lowfirst.transfer.Ending;

/** A session as one JSON object on one line, see docs/schema/session-result.schema.json. */
public final class SessionJson {

    private final PlannedSession session;
    private final SessionPlan plan;
    private final JsonLine json = new JsonLine();

    private SessionJson(PlannedSession session) {
        this.session = session;
        this.plan = session.plan();
    }

    /** The object, with a new line at its end. */
    public static String of(PlannedSession session) {
        return new SessionJson(session).text();
    }

    private String text() {
        json.openObject();
        json.key("temperature_K")
                .value(session.file().bank().conditions().bench().kelvin());
        json.key("all_ready").value(session.allReady());
        json.key("ready").value(plan.score().ready());
        json.key("full").value(plan.score().full());
        litres("gas_left_litres", plan.score().gasLeft());
        json.key("changes").value(plan.score().changes());
        json.key("time_s").value(plan.score().time_s());
        proof(plan.proof());
        json.key("steps").openList();
        plan.course().steps().forEach(this::step);
        json.closeList();
        json.key("bottles").openList();
        plan.course().ends().forEach(this::bottle);
        json.closeList();
        json.key("supplies").openList();
        plan.course().bankAfter().forEach(this::supply);
        json.closeList();
        json.key("habits").openList();
        plan.advice().habits().forEach(this::habit);
        json.closeList();
        json.key("reasons").openList();
        plan.advice().reasons().forEach(this::reason);
        json.closeList();
        moreReady(plan.advice().moreReady());
        json.key("notes").openList();
        session.notes().forEach(json::value);
        json.closeList();
        return json.closeObject() + "\n";
    }

    private void proof(Proof proof) {
        json.key("proof").openObject();
        json.key("ready_at_most").value(proof.readyAtMost());
        json.key("best_ready").value(proof.bestReady());
        json.key("best_choice").value(proof.bestChoice());
        litres("gas_at_most_litres", proof.gasAtMost());
        json.key("best_gas").value(proof.bestGas());
        litres("gas_step_litres", proof.gasStep());
        json.key("stopped").value(proof.stopped());
        json.closeObject();
    }

    private void step(SessionStep step) {
        json.openObject();
        json.key("bottle").value(step.bottle());
        json.key("supply").value(step.supply());
        pressure("bottle_before", step.bottleReading().before());
        pressure("bottle_after", step.bottleReading().after());
        pressure("supply_before", step.supplyReading().before());
        pressure("supply_after", step.supplyReading().after());
        litres("moved_litres", step.moved());
        json.key("ends").value(step.ends() == Ending.TARGET ? "target" : "equal");
        json.key("hose_change").value(step.changes().hose());
        json.key("supply_change").value(step.changes().supply());
        json.key("start_s").value(step.start_s());
        json.closeObject();
    }

    private void bottle(BottleEnd end) {
        json.openObject();
        json.key("name").value(end.name());
        json.key("ends").value(SessionWords.readiness(end.readiness()));
        pressure("reading", end.reading());
        pressure("stop", end.stop());
        json.closeObject();
    }

    private void supply(RankedSupply supply) {
        json.openObject();
        json.key("name").value(supply.name());
        json.key("rank").value(supply.rank());
        pressure("reading", supply.reading());
        json.closeObject();
    }

    private void habit(HabitResult habit) {
        json.openObject();
        json.key("habit").value(SessionWords.habit(habit.habit()));
        json.key("ready").value(habit.ready());
        litres("gas_left_litres", habit.gasLeft());
        json.closeObject();
    }

    private void reason(OrderReason reason) {
        json.openObject();
        json.key("first").value(reason.first());
        json.key("second").value(reason.second());
        json.key("supply").value(reason.supply());
        String missed = reason.wouldMiss();
        json.key("would_miss");
        if (missed == null) {
            json.nothing();
        } else {
            json.value(missed);
        }
        pressure("short_by", reason.shortBy());
        litres("gas_lost_litres", reason.gasLost());
        json.key("changes_lost").value(reason.changesLost());
        json.closeObject();
    }

    private void moreReady(@Nullable MoreReady more) {
        json.key("more_ready");
        if (more == null) {
            json.nothing();
            return;
        }
        json.openObject();
        pressure("common_floor", more.commonFloor());
        json.key("exchanges").openList();
        for (MoreReady.Exchange exchange : more.exchanges()) {
            json.openObject();
            json.key("supply").value(exchange.supply());
            json.key("ready").value(exchange.ready());
            json.closeObject();
        }
        json.closeList();
        json.closeObject();
    }

    private void litres(String key, Amount amount) {
        json.key(key).value(session.file().bank().standardLitres(amount));
    }

    private void pressure(String key, @Nullable GaugePressure reading) {
        json.key(key);
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
