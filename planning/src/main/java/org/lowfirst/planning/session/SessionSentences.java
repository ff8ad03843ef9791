package org.lowfirst.planning.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.words.Phrases;

/** A session's plan explained in sentences. */
final class SessionSentences {

    private final SessionPlan plan;
    private final ShownUnits units;
    private final Phrases phrases;

    SessionSentences(SessionPlan plan, ShownUnits units) {
        this.plan = plan;
        this.units = units;
        this.phrases = Phrases.in(units.language());
    }

    List<String> notes() {
        List<String> notes = new ArrayList<>();
        int bottles = plan.request().bottles().size();
        notes.add(phrases.text(
                "session.ready",
                Map.of("ready", number(plan.score().ready()), "bottles", number(bottles), "proof", proof())));
        if (plan.score().ready() < bottles) {
            notes.add(phrases.text("session.whole-stages", Map.of()));
        }
        if (plan.proof().stopped()) {
            notes.add(phrases.text("session.stopped", Map.of()));
        }
        plan.advice().habits().forEach(habit -> sentence(habit).ifPresent(notes::add));
        plan.advice().reasons().forEach(reason -> notes.add(sentence(reason)));
        addMoreReady(notes);
        return notes;
    }

    private String proof() {
        Proof proof = plan.proof();
        if (!proof.bestReady()) {
            return phrases.text("session.proof.at-most", Map.of("most", number(proof.readyAtMost())));
        }
        return proof.bestGas()
                ? phrases.text("session.proof.best", Map.of())
                : phrases.text(
                        "session.proof.gas-at-most",
                        Map.of(
                                "gas",
                                litres(less(proof.gasAtMost(), plan.score().gasLeft()))));
    }

    private Optional<String> sentence(HabitResult habit) {
        String order = phrases.text(
                "session.habit." + habit.habit().name().toLowerCase(Locale.ROOT).replace('_', '-'), Map.of());
        if (habit.ready() != plan.score().ready()) {
            return Optional.of(
                    phrases.text("session.habit.ready", Map.of("habit", order, "ready", number(habit.ready()))));
        }
        return more(plan.score().gasLeft(), habit.gasLeft())
                ? Optional.of(phrases.text(
                        "session.habit.gas",
                        Map.of("habit", order, "gas", litres(less(plan.score().gasLeft(), habit.gasLeft())))))
                : Optional.empty();
    }

    private String sentence(OrderReason reason) {
        String order = phrases.text(
                "session.before",
                Map.of("first", reason.first(), "second", reason.second(), "supply", reason.supply()));
        String missed = reason.wouldMiss();
        if (missed != null) {
            GaugePressure shortBy = Objects.requireNonNull(reason.shortBy(), "with the bottle missed");
            return phrases.text(
                    "session.before.short", Map.of("order", order, "bottle", missed, "short", shortfall(shortBy)));
        }
        Map<String, String> values =
                Map.of("order", order, "gas", litres(reason.gasLost()), "changes", number(reason.changesLost()));
        boolean gas = reason.gasLost().moles() > 0.2 * plan.proof().gasStep().moles();
        String changes = reason.changesLost() == 1 ? "change" : reason.changesLost() > 1 ? "changes" : "";
        String both = gas ? (changes.isEmpty() ? "gas" : "gas-" + changes) : changes;
        return phrases.text("session.before." + both, values);
    }

    private void addMoreReady(List<String> notes) {
        MoreReady more = plan.advice().moreReady();
        if (more == null) {
            return;
        }
        GaugePressure floor = more.commonFloor();
        if (floor != null) {
            notes.add(phrases.text("session.common-floor", Map.of("floor", roundedDown(floor))));
        }
        for (MoreReady.Exchange exchange : more.exchanges()) {
            if (exchange.ready() > plan.score().ready()) {
                notes.add(phrases.text(
                        "session.exchange", Map.of("supply", exchange.supply(), "ready", number(exchange.ready()))));
            }
        }
    }

    private static String number(int value) {
        return Integer.toString(value);
    }

    /** Never "0 bar short": a shortfall below what a gauge shows is told as less than that. */
    private String shortfall(GaugePressure pressure) {
        GaugePressure least = GaugePressure.of(1, units.pressure());
        return pressure.compareTo(least) < 0
                ? phrases.text("session.less-than", Map.of("pressure", pressure(least)))
                : pressure(pressure);
    }

    private boolean more(Amount a, Amount b) {
        return a.moles() - b.moles() > plan.proof().gasStep().moles();
    }

    private static Amount less(Amount from, Amount what) {
        return new Amount(Math.max(0.0, from.moles() - what.moles()));
    }

    private String litres(Amount amount) {
        ReferenceCondition at = units.temperature() == TemperatureUnit.FAHRENHEIT
                ? ReferenceCondition.US_70F_1ATM
                : ReferenceCondition.ISO_15C_1ATM;
        double litres = plan.gas().freeVolume(amount, at).toLitres();
        return units.number(litres, 0) + " L (" + at.label() + ")";
    }

    private String pressure(GaugePressure pressure) {
        return units.number(pressure.to(units.pressure()), 0) + " "
                + units.pressure().symbol();
    }

    private String roundedDown(GaugePressure pressure) {
        return units.number(Math.floor(pressure.to(units.pressure())), 0) + " "
                + units.pressure().symbol();
    }
}
