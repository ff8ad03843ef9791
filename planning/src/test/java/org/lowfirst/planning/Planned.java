package org.lowfirst.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

/** Short ways to say a bank, a bottle and what came out, for tests. */
final class Planned {

    private Planned() {}

    static FillPlanner oxygen(Temperature bench, ReferenceRule rule) {
        return FillPlanner.under(Conditions.of(Oxygen.schmidtWagner(), bench, rule));
    }

    /** Supplies of one water volume named A, B, C, ... */
    static List<SupplyState> bank(double litres, PressureUnit unit, double... readings) {
        List<SupplyState> bank = new ArrayList<>();
        for (double reading : readings) {
            bank.add(supply(String.valueOf((char) ('A' + bank.size())), litres, reading, unit));
        }
        return bank;
    }

    static SupplyState supply(String name, double litres, double reading, PressureUnit unit) {
        return new SupplyState(name, Volume.ofLitres(litres), GaugePressure.of(reading, unit));
    }

    static BottleToFill bottle(
            String name, double litres, double reading, double target, double service, PressureUnit unit) {
        return new BottleToFill(
                name,
                Volume.ofLitres(litres),
                GaugePressure.of(reading, unit),
                GaugePressure.of(target, unit),
                GaugePressure.of(service, unit));
    }

    static FillPlan plan(FillPlanner planner, List<SupplyState> bank, BottleToFill bottle) {
        return plan(planner, new FillRequest(bank, bottle));
    }

    static FillPlan plan(FillPlanner planner, FillRequest request) {
        PlanOutcome outcome = planner.plan(request);
        assertThat(outcome).isInstanceOf(FillPlan.class);
        return (FillPlan) outcome;
    }

    static List<SupplyState> states(List<RankedSupply> bank) {
        return bank.stream().map(RankedSupply::toState).toList();
    }

    /** Readings in rank order. */
    static double[] readings(List<RankedSupply> bank, PressureUnit unit) {
        return bank.stream().mapToDouble(s -> s.reading().to(unit)).toArray();
    }

    /** What the bottle reads after each step. */
    static double[] bottleReadings(FillPlan plan, PressureUnit unit) {
        return plan.fill().steps().stream()
                .mapToDouble(s -> s.bottle().after().to(unit))
                .toArray();
    }

    static List<String> order(FillPlan plan) {
        return plan.fill().steps().stream().map(Step::supply).toList();
    }

    /** Litres of oxygen at 15 C and 1.01325 bar. */
    static double standardLitres(Amount amount) {
        return Oxygen.schmidtWagner()
                .freeVolume(amount, ReferenceCondition.ISO_15C_1ATM)
                .toLitres();
    }
}
