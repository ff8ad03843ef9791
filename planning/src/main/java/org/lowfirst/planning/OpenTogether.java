package org.lowfirst.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.transfer.Together;
import org.lowfirst.transfer.Vessel;

/** Works out what supplies opened together cost; the request has been checked. */
final class OpenTogether {

    private OpenTogether() {}

    static TogetherCost cost(Bench bench, FillRequest request, Set<String> open) {
        BottleToFill bottle = request.bottle();
        GaugePressure service = Objects.requireNonNull(bottle.servicePressure(), "checked before");
        Charge charge = Charge.of(bottle, bench.stop(bottle.target(), service), bench.now());
        BankState apart = BankState.of(request.supplies(), bench.now());
        List<RankedSupply> joined =
                apart.supplies().stream().filter(s -> open.contains(s.name())).toList();
        List<Vessel> levelled = Together.levelled(joined.stream()
                .map(s -> new Vessel(s.waterVolume(), s.contents()))
                .toList());
        GaugePressure level = bench.now().reading(levelled.get(0).density().molesPerCubicMetre());
        List<RankedSupply> after = new ArrayList<>(apart.supplies());
        for (int i = 0; i < joined.size(); i++) {
            RankedSupply supply = joined.get(i);
            after.set(supply.rank() - 1, supply.holding(level, levelled.get(i).contents()));
        }
        BankState together = BankState.ranked(after);
        return new TogetherCost(
                level,
                together.supplies(),
                Counting.fillsLeft(apart, bench, charge, Habit.LOWEST_FIRST),
                Counting.fillsLeft(together, bench, charge, Habit.LOWEST_FIRST),
                usable(apart, charge),
                usable(together, charge));
    }

    private static Amount usable(BankState bank, Charge charge) {
        double usable_mol = 0.0;
        for (RankedSupply supply : bank.supplies()) {
            double atStop_mol = supply.waterVolume().cubicMetres() * charge.stop_molPerM3();
            usable_mol += Math.max(0.0, supply.contents().moles() - atStop_mol);
        }
        return new Amount(usable_mol);
    }
}
