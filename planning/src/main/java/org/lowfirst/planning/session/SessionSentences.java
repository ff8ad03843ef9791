package org.lowfirst.planning.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.planning.ShownUnits;

/** A session's plan explained in sentences. */
final class SessionSentences {

    private final SessionPlan plan;
    private final ShownUnits units;

    SessionSentences(SessionPlan plan, ShownUnits units) {
        this.plan = plan;
        this.units = units;
    }

    List<String> notes() {
        List<String> notes = new ArrayList<>();
        int bottles = plan.request().bottles().size();
        notes.add("%s of %s bottles end ready; %s.".formatted(plan.score().ready(), bottles, proof()));
        for (HabitResult habit : plan.advice().habits()) {
            if (habit.ready() != plan.score().ready()) {
                notes.add("Bottle by bottle %s would make %s ready.".formatted(words(habit.habit()), habit.ready()));
            } else if (more(plan.score().gasLeft(), habit.gasLeft())) {
                notes.add("Bottle by bottle %s would make as many ready and leave %s less above the highest stop."
                        .formatted(
                                words(habit.habit()), litres(less(plan.score().gasLeft(), habit.gasLeft()))));
            }
        }
        plan.advice().reasons().forEach(reason -> notes.add(sentence(reason)));
        addMoreReady(notes);
        return notes;
    }

    private String proof() {
        Proof proof = plan.proof();
        if (!proof.bestReady()) {
            return "no plan can make more than %s ready, and whether one makes more than these is not known"
                    .formatted(proof.readyAtMost());
        }
        String gas = proof.bestGas()
                ? "none of these leaves more gas above the highest stop than a gauge can show"
                : "none of these leaves more than %s more above the highest stop"
                        .formatted(litres(less(proof.gasAtMost(), plan.score().gasLeft())));
        return "no plan makes more ready, and " + gas;
    }

    private static String words(HabitResult.BottleOrder order) {
        return switch (order) {
            case AS_LISTED -> "as listed";
            case EMPTIEST_FIRST -> "emptiest first";
            case FULLEST_FIRST -> "fullest first";
        };
    }

    private String sentence(OrderReason reason) {
        String order =
                "%s before %s on %s: the other way round ".formatted(reason.first(), reason.second(), reason.supply());
        String missed = reason.wouldMiss();
        if (missed != null) {
            GaugePressure shortBy = Objects.requireNonNull(reason.shortBy(), "with the bottle missed");
            return order + "%s would end %s short.".formatted(missed, pressure(shortBy));
        }
        List<String> costs = new ArrayList<>();
        if (reason.gasLost().moles() > 0.2 * plan.proof().gasStep().moles()) {
            costs.add("costs %s more of the gas above the highest stop".formatted(litres(reason.gasLost())));
        }
        if (reason.changesLost() > 0) {
            costs.add(
                    reason.changesLost() == 1
                            ? "takes one change more"
                            : "takes %s changes more".formatted(reason.changesLost()));
        }
        return order + String.join(" and ", costs) + ".";
    }

    private void addMoreReady(List<String> notes) {
        MoreReady more = plan.advice().moreReady();
        if (more == null) {
            return;
        }
        GaugePressure floor = more.commonFloor();
        if (floor != null) {
            notes.add("With a floor of %s all of them can be made ready.".formatted(roundedDown(floor)));
        }
        for (MoreReady.Exchange exchange : more.exchanges()) {
            if (exchange.ready() > plan.score().ready()) {
                notes.add("A full supply in the place of %s makes %s ready."
                        .formatted(exchange.supply(), exchange.ready()));
            }
        }
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
        return String.format(Locale.ROOT, "%,.0f L (%s)", litres, at.label());
    }

    private String pressure(GaugePressure pressure) {
        return String.format(
                Locale.ROOT,
                "%,.0f %s",
                pressure.to(units.pressure()),
                units.pressure().symbol());
    }

    private String roundedDown(GaugePressure pressure) {
        return String.format(
                Locale.ROOT,
                "%,.0f %s",
                Math.floor(pressure.to(units.pressure())),
                units.pressure().symbol());
    }
}
