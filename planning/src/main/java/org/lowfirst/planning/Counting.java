package org.lowfirst.planning;

/** Counts fills. */
final class Counting {

    private Counting() {}

    static FillsLeft fillsLeft(BankState bank, Bench bench, Charge bottle, Habit habit) {
        if (bottle.needsNothing()) {
            return FillsLeft.NOT_COUNTED;
        }
        Cascade cascade = new Cascade(bank, bench);
        for (int complete = 0; complete < FillsLeft.MOST; complete++) {
            double end_mol = cascade.fill(bottle, habit);
            if (!cascade.reached()) {
                return new FillsLeft(complete, bench.now().reading(end_mol / bottle.volume_m3()));
            }
        }
        return new FillsLeft(FillsLeft.MOST, null);
    }
}
