package org.lowfirst.app.bench;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.lowfirst.app.fitness.FitnessReport;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.Step;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.AbandonFill;
import org.lowfirst.station.Command.FinishFill;
import org.lowfirst.station.Command.RecordFill;
import org.lowfirst.station.Command.RecordStage;
import org.lowfirst.station.Command.StartFill;
import org.lowfirst.station.FillId;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Stage;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.rules.Answer;

/** The fills in the story of the demo bench: guided, entered afterwards, broken off, with a second person, with a doubt. */
final class DemoFills {

    /** A fill entered afterwards with a slip, one broken off, one with a doubt that a second person took on. */
    private static final int SLIPPED = 7;

    private static final int BROKEN_OFF = 21;
    private static final int DOUBTED = 34;

    /** Every so many fills one is filled by somebody who learns it, and one is paid by a guest. */
    private static final int SUPERVISED = 12;

    private static final int BILLED = 15;

    private final DemoPen pen;
    private final DemoMoney money;
    private final DemoBank bank;
    private int fills;

    DemoFills(DemoPen pen, DemoMoney money, DemoBank bank) {
        this.pen = pen;
        this.money = money;
        this.bank = bank;
    }

    void one() {
        List<Bottle> inUse = pen.benches.registeringBottles().listBottles(DemoPen.BENCH).stream()
                .filter(Bottle::inUse)
                .filter(bottle -> !bottle.details().name().equals(DemoShelf.PAST_TEST))
                .toList();
        Bottle bottle = inUse.get(pen.draw(inUse.size()));
        int before = 25 + pen.draw(60);
        if (plan(bottle, pen.reads(before)).fillsLeft().complete() < 2) {
            bank.exchange();
            pen.minutes(10);
        }
        fills++;
        FillId id = new FillId("demo-fill-" + fills);
        if (fills % 4 == 3) {
            afterwards(id, bottle, pen.reads(before));
        } else {
            guided(id, bottle, pen.reads(before));
        }
        if (fills % BILLED == 9) {
            money.guest(id);
        }
    }

    private FillPlan plan(Bottle bottle, Reading before) {
        if (pen.benches.planningAFill().plan(DemoPen.BENCH, bottle.id(), target(bottle), before)
                instanceof FillPlan plan) {
            return plan;
        }
        throw new AssertionError("every bottle of the story can be planned");
    }

    private static StatedPressure target(Bottle bottle) {
        StatedPressure target = bottle.details().usualTarget();
        if (target == null) {
            throw new AssertionError("every bottle of the story has a target");
        }
        return target;
    }

    private void afterwards(FillId id, Bottle bottle, Reading before) {
        FillPlan plan = plan(bottle, before);
        pen.minutes(25);
        Reading after = pen.reads(DemoPen.rounded(plan.fill().finalReading()));
        RecordFill right = new RecordFill(id, bottle.id(), target(bottle), before, after, List.of());
        if (fills == SLIPPED) {
            money.slip(right, pen.submission());
        } else {
            DemoPen.recorded(pen.benches.guidingAFill().recordFill(DemoPen.BENCH, right, pen.submission()));
        }
    }

    private void guided(FillId id, Bottle bottle, Reading before) {
        GuidingAFill guiding = pen.benches.guidingAFill();
        FillPlan plan = plan(bottle, before);
        String filler = lookAt(bottle.id());
        String second = filler.equals("Oona") ? "Wren" : null;
        DemoPen.recorded(guiding.start(
                DemoPen.BENCH, new StartFill(id, bottle.id(), target(bottle), before), second, pen.by(filler)));
        int last = DemoPen.rounded(before.pressure().gauge());
        for (Step step : plan.fill().steps()) {
            pen.minutes(4 + pen.draw(4));
            last = Math.max(last, DemoPen.rounded(step.bottle().after()));
            boolean supplyRead = pen.draw(2) == 0;
            Stage stage = new Stage(
                    DemoPen.supply(step.supply()),
                    pen.reads(last),
                    null,
                    supplyRead
                            ? pen.reads(DemoBank.shows(
                                    step.supplyReading().before().toBar(),
                                    step.supplyReading().after().toBar()))
                            : null);
            DemoPen.recorded(guiding.recordStage(DemoPen.BENCH, new RecordStage(id, stage), pen.by(filler)));
            if (fills == BROKEN_OFF) {
                pen.minutes(2);
                DemoPen.recorded(
                        guiding.abandon(DemoPen.BENCH, new AbandonFill(id, "called to the winch"), pen.by(filler)));
                return;
            }
        }
        pen.minutes(3);
        DemoPen.recorded(guiding.finish(DemoPen.BENCH, new FinishFill(id, pen.reads(last)), pen.by(filler)));
    }

    /**
     * Every question of the book is answered no, but for one doubt.
     *
     * @return who fills
     */
    private String lookAt(BottleId bottle) {
        boolean doubted = fills == DOUBTED;
        String filler = doubted ? "Tobias" : fills % SUPERVISED == 0 ? "Oona" : pen.somebody();
        Map<String, Answer> answers = new HashMap<>();
        report(bottle)
                .questions()
                .forEach(question -> answers.put(
                        question.code(), doubted && question.code().equals("corroded") ? Answer.NOT_SURE : Answer.NO));
        if (!answers.isEmpty()) {
            DemoPen.recorded(pen.benches.keepingMarkings().answer(DemoPen.BENCH, bottle, answers, pen.by(filler)));
        }
        if (doubted) {
            DemoPen.recorded(pen.benches
                    .keepingMarkings()
                    .setAside(
                            DemoPen.BENCH,
                            bottle,
                            report(bottle).toSetAside(),
                            filler,
                            "flash rust on the shoulder, wiped off",
                            pen.by("Wren")));
        }
        return filler;
    }

    private FitnessReport report(BottleId bottle) {
        return pen.benches.judgingFitness().ofBottle(DemoPen.BENCH, bottle);
    }
}
