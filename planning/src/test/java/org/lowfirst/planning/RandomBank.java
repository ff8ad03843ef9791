package org.lowfirst.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.IdealGas;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

/** A bank, a bottle and conditions drawn from a seed. */
final class RandomBank {

    final Conditions conditions;
    final FillPlanner planner;
    final List<SupplyState> supplies;
    final BottleToFill bottle;

    RandomBank(long seed) {
        Random random = new Random(seed);
        EquationOfState gas = random.nextBoolean() ? Oxygen.schmidtWagner() : new IdealGas("oxygen", 0.0319988);
        Temperature bench = Temperature.ofCelsius(-25 + 70 * random.nextDouble());
        conditions = new Conditions(
                gas,
                bench,
                ReferenceRule.EU.temperature(),
                StandardAtmosphere.PRESSURE,
                Volume.ofLitres(random.nextInt(3) == 0 ? 0.4 * random.nextDouble() : 0.0));
        planner = FillPlanner.under(conditions);
        supplies = supplies(random, 1 + random.nextInt(5));
        double reading = 100 * random.nextDouble();
        bottle = Planned.bottle(
                "R1",
                0.5 + 20 * random.nextDouble(),
                reading,
                reading + 100 * random.nextDouble(),
                300,
                PressureUnit.BAR);
    }

    static List<SupplyState> supplies(Random random, int count) {
        List<SupplyState> supplies = new ArrayList<>();
        boolean oneSize = random.nextBoolean();
        for (int i = 0; i < count; i++) {
            supplies.add(new SupplyState(
                    "S" + i,
                    Volume.ofLitres(oneSize ? 50 : 5 + 60 * random.nextDouble()),
                    GaugePressure.ofBar(220 * random.nextDouble()),
                    random.nextInt(12) == 0));
        }
        return supplies;
    }

    FillPlan plan() {
        return Planned.plan(planner, supplies, bottle);
    }
}
