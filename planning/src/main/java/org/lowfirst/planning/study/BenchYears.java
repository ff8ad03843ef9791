package org.lowfirst.planning.study;

import org.lowfirst.planning.study.kernel.BankLevels;

/**
 * One alternative living through the bottles of one run. Mutable, used once by one thread.
 *
 * <p>A bottle that the bank cannot finish, even after the exchanges its habit and its store allow, is missed and takes no gas.
 * A cylinder that leaves the bank is exchanged for a full one from the store, or for one off the delivery.
 */
final class BenchYears {

    private final Numbers numbers;
    private final Way way;
    private final Prices prices;
    private final Extent extent;
    private final long run;
    private final RunLedger ledger = new RunLedger();

    private final BankLevels bank;
    private final Store store;
    private final ExchangeHabit habit;
    private long delivered;
    private boolean waiting;
    private int band;
    private boolean counting;
    private double before_mol;

    BenchYears(StudyRequest request, Numbers numbers, Way way, long run) {
        this.numbers = numbers;
        this.way = way;
        this.run = run;
        prices = request.prices();
        extent = request.extent();
        habit = way.alternative().habit();
        bank = way.newBank();
        store = new Store(
                way.alternative().stored(), habit.together(), way.alternative().places());
        for (int place = 0; place < bank.size(); place++) {
            bank.put(place, way.supply_m3(), nextDelivered_molPerM3());
        }
        bank.rank();
        while (store.fulls() < store.stored()) {
            store.keep(nextDelivered_molPerM3());
        }
    }

    RunLedger live(DrawnDemand demand) {
        for (int i = 0; i < demand.count(); i++) {
            until(demand.time_d(i));
            band = demand.band(i);
            serve(demand.time_d(i), demand.kind(i), demand.start_molPerM3(i));
        }
        until((extent.warmUpYears() + extent.years()) * (double) Calendar.DAYS);
        ledger.balance(before_mol, here_mol());
        ledger.add(Measure.COST, new Bill(way.alternative(), prices, extent.years()).of(ledger));
        return ledger;
    }

    private void serve(double now_d, int kind, double start_molPerM3) {
        double bottle_m3 = numbers.kinds().volume_m3(kind);
        double stop_molPerM3 = numbers.kinds().stop_molPerM3(kind, band);
        if (start_molPerM3 >= stop_molPerM3) {
            ledger.add(Measure.NOT_NEEDED, 1);
            return;
        }
        double inlet_molPerM3 = way.inlet_molPerM3(band);
        boolean done = bank.fill(bottle_m3, start_molPerM3, stop_molPerM3, inlet_molPerM3);
        if (!done && !way.freshFinishes(band, bottle_m3, start_molPerM3, stop_molPerM3)) {
            ledger.add(Measure.OUT_OF_REACH, 1);
            ledger.add(Measure.MISSED_FILLS, 1);
            return;
        }
        for (int left = bank.size(); !done && left > 0 && exchange(now_d); left--) {
            done = bank.fill(bottle_m3, start_molPerM3, stop_molPerM3, inlet_molPerM3);
        }
        if (!done) {
            ledger.add(Measure.MISSED_FILLS, 1);
            return;
        }
        ledger.add(Measure.FILLS, 1);
        ledger.add(Measure.TO_BOTTLES_MOL, bottle_m3 * (stop_molPerM3 - start_molPerM3));
        ledger.add(Measure.VENTED_MOL, bank.vented_mol());
        if (bank.boosted_mol() > 0.0) {
            ledger.add(Measure.BOOSTED_FILLS, 1);
        }
        if (sendsForSupplies()) {
            exchange(now_d);
        }
    }

    private boolean sendsForSupplies() {
        return switch (habit.when()) {
            case A_FILL_WOULD_FAIL -> false;
            case LOWEST_AT_RESIDUAL -> bank.density_molPerM3(0) <= way.residual_molPerM3(band);
            case THE_NEXT_MIGHT_FAIL -> nextMightFail();
        };
    }

    private boolean nextMightFail() {
        for (int kind = 0; kind < numbers.kinds().count(); kind++) {
            double start_molPerM3 =
                    numbers.bands().density_molPerM3(band, numbers.kinds().start_Pa(kind, 0.0));
            double stop_molPerM3 = numbers.kinds().stop_molPerM3(kind, band);
            if (way.freshFinishes(kind, band)
                    && start_molPerM3 < stop_molPerM3
                    && !bank.reaches(
                            numbers.kinds().volume_m3(kind), start_molPerM3, stop_molPerM3, way.inlet_molPerM3(band))) {
                return true;
            }
        }
        return false;
    }

    /** Puts full supplies in if there are any, sends for more as the habit says; answers whether the bank has changed. */
    private boolean exchange(double now_d) {
        if (store.fulls() > 0) {
            putIn(store.take());
            store.order(now_d + prices.leadDays(), false);
            return true;
        }
        double before = ledger.of(Measure.SENT_BACK);
        waiting = true;
        store.order(now_d + prices.leadDays(), true);
        while (store.nextArrival_d() <= now_d) {
            arrive();
        }
        return ledger.of(Measure.SENT_BACK) > before;
    }

    private void until(double now_d) {
        while (store.nextArrival_d() <= now_d) {
            countFrom(store.nextArrival_d());
            arrive();
        }
        countFrom(now_d);
    }

    private void arrive() {
        double now_d = store.nextArrival_d();
        int supplies = store.arrived();
        ledger.add(Measure.DELIVERIES, 1);
        ledger.add(Measure.SUPPLIES, supplies);
        for (int i = 0; i < supplies; i++) {
            double rho_molPerM3 = nextDelivered_molPerM3();
            ledger.add(Measure.RECEIVED_MOL, rho_molPerM3 * way.supply_m3());
            if (store.fulls() < store.stored()) {
                store.keep(rho_molPerM3);
            } else {
                putIn(rho_molPerM3);
                waiting = false;
            }
        }
        if (waiting && store.fulls() > 0) {
            putIn(store.take());
            waiting = false;
            store.order(now_d + prices.leadDays(), false);
        }
    }

    private void putIn(double rho_molPerM3) {
        ledger.add(Measure.SENT_BACK, 1);
        ledger.add(Measure.SENT_BACK_MOL, bank.density_molPerM3(0) * way.supply_m3());
        ledger.add(Measure.RESIDUALS_PA, numbers.bands().reading_Pa(band, bank.density_molPerM3(0)));
        bank.exchange(0, rho_molPerM3);
    }

    private void countFrom(double now_d) {
        if (!counting && now_d >= extent.warmUpYears() * (double) Calendar.DAYS) {
            counting = true;
            ledger.clear();
            before_mol = here_mol();
        }
    }

    private double here_mol() {
        return bank.contents_mol() + way.supply_m3() * store.sum_molPerM3();
    }

    private double nextDelivered_molPerM3() {
        return way.delivered_molPerM3(Stream.DELIVERIES.uniformAt(extent.seed(), run, delivered++));
    }
}
