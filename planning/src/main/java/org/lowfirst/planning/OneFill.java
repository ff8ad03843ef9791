package org.lowfirst.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.transfer.Ending;

/** Works out the plan for one bottle whose request has been checked. */
final class OneFill {

    private final Bench bench;
    private final BankState bank;
    private final FillRequest request;
    private final StopReading stop;
    private final Charge charge;

    OneFill(Bench bench, BankState bank, FillRequest request) {
        this.bench = bench;
        this.bank = bank;
        this.request = request;
        BottleToFill bottle = request.bottle();
        stop = bench.stop(bottle.target(), Objects.requireNonNull(bottle.servicePressure(), "checked before"));
        charge = Charge.of(bottle, stop, bench.now());
    }

    FillPlan plan() {
        Fill fill = fill(Habit.LOWEST_FIRST);
        FillsLeft lowest = Counting.fillsLeft(bank, bench, charge, Habit.LOWEST_FIRST);
        FillsLeft fullest = Counting.fillsLeft(bank, bench, charge, Habit.FULLEST_FIRST);
        Fill fullestFill = fill(Habit.FULLEST_FIRST);
        return new FillPlan(
                request,
                stop,
                fill,
                lowest,
                new HabitComparison(
                        fullestFill.finalReading(),
                        fullestFill.bankAfter(),
                        fullest,
                        lowest.complete() - fullest.complete()),
                fill.reaches() ? null : new Finishing(bench, bank, charge, request.fullSupply()).remedies(fill));
    }

    private Fill fill(Habit habit) {
        Cascade cascade = new Cascade(bank, bench);
        double end_mol = cascade.fill(charge, habit);
        List<Step> steps = new ArrayList<>(bank.size());
        List<Skipped> skipped = new ArrayList<>(bank.size());
        List<RankedSupply> after = new ArrayList<>(bank.size());
        GaugePressure bottle = request.bottle().reading();
        for (int place : bank.inOrderOfUse()) {
            RankedSupply supply = bank.supplies().get(place);
            Visit visit = cascade.visit(place);
            if (visit == Visit.EQUAL || visit == Visit.TARGET) {
                Step step = step(cascade, place, supply, bottle);
                steps.add(step);
                bottle = step.bottle().after();
                after.add(supply.holding(step.supplyReading().after(), new Amount(cascade.contents_mol(place))));
            } else {
                after.add(supply);
                skipped.add(new Skipped(supply.name(), supply.rank(), supply.reading(), bottle, SkipReason.of(visit)));
            }
        }
        return new Fill(
                cascade.reached(),
                bottle,
                steps,
                skipped,
                BankState.ranked(after).supplies(),
                new Amount(end_mol - charge.start_mol()),
                new Amount(cascade.vented_mol()));
    }

    private Step step(Cascade cascade, int place, RankedSupply supply, GaugePressure bottleBefore) {
        boolean target = cascade.visit(place) == Visit.TARGET;
        double after_mol = cascade.bottleAfter_mol(place);
        GaugePressure supplyAfter = bench.now()
                .reading(cascade.contents_mol(place) / supply.waterVolume().cubicMetres());
        GaugePressure bottleAfter = target ? stop.reading() : supplyAfter;
        return new Step(
                supply.name(),
                supply.rank(),
                new Change(bottleBefore, bottleAfter),
                new Change(supply.reading(), supplyAfter),
                new Amount(after_mol - cascade.bottleBefore_mol(place)),
                target ? Ending.TARGET : Ending.EQUAL);
    }
}
