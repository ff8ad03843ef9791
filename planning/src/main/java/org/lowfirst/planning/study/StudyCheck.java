package org.lowfirst.planning.study;

import java.util.List;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.PlanRefused;

/** Looks at a study request before anything is simulated. The limits: common practice, no source. */
final class StudyCheck {

    private static final int MOST_ALTERNATIVES = 100;
    private static final int LARGEST_BANK = 64;
    private static final int MOST_KINDS = 100;
    private static final double MOST_FILLS_A_YEAR = 100_000;
    private static final int MOST_YEARS = 200;
    private static final double MOST_RUNS = 10_000_000;
    private static final double LONGEST_LEAD_D = 365;
    private static final GaugePressure LEAST_DELIVERED = GaugePressure.ofBar(2.0);
    private static final GaugePressure HIGHEST_READING = GaugePressure.ofBar(400.0);

    private final Checking checking = new Checking();
    private final StudyRequest request;

    StudyCheck(StudyRequest request) {
        this.request = request;
    }

    Checking look() {
        extent();
        site();
        prices();
        demand();
        checking.number("number of alternatives", request.alternatives().size(), 1, MOST_ALTERNATIVES, "");
        checking.names(
                "alternative",
                request.alternatives().stream().map(Alternative::name).toList());
        request.alternatives().forEach(this::alternative);
        return checking;
    }

    private void extent() {
        Extent extent = request.extent();
        checking.number("number of years", extent.years(), 1, MOST_YEARS, "")
                .number("number of warm-up years", extent.warmUpYears(), 0, MOST_YEARS, "")
                .number("number of runs", (double) extent.runs(), 2, MOST_RUNS, "");
    }

    private void site() {
        Site site = request.site();
        BenchTemperature bench = site.temperature();
        checking.number("swing of the temperature through the year", bench.swing_K(), 0, 60, "K")
                .number("warmest day of the year", bench.warmestDay(), 1, 365, "")
                .number("daily spread of the temperature", bench.dailySpread_K(), 0, 20, "K");
        if (!checking.clear()) {
            return;
        }
        EquationOfState gas = site.gas();
        Temperature lowest = gas.range().lowest();
        Temperature highest = gas.range().highest();
        double mean_K = bench.mean().kelvin();
        double reach_K = Bands.reach_K(bench);
        checking.temperature("mean bench temperature", bench.mean(), lowest, highest)
                .number("coldest bench temperature", mean_K - reach_K, lowest.kelvin(), highest.kelvin(), "K")
                .number("warmest bench temperature", mean_K + reach_K, lowest.kelvin(), highest.kelvin(), "K");
        if (checking.clear()) {
            PlanRefused refused = FillPlanner.under(
                            new Conditions(gas, bench.mean(), site.reference(), site.ambient(), site.hose()))
                    .refused();
            if (refused != null) {
                checking.refused(refused);
            }
        }
    }

    private void prices() {
        Prices prices = request.prices();
        checking.price("price of a delivery", prices.perDelivery())
                .number("days from sending for supplies to their arrival", prices.leadDays(), 0, LONGEST_LEAD_D, "")
                .price("price of a missed fill", prices.perMissedFill())
                .price("price of an interconnect", prices.perInterconnect())
                .number("years to pay off lines and booster", prices.writeOffYears(), 0.5, 100, "");
    }

    private void demand() {
        Demand demand = request.demand();
        checking.number("fills a year", demand.fillsPerYear(), 1, MOST_FILLS_A_YEAR, "")
                .number("spread between years", demand.yearSpread(), 0, 1, "")
                .number("number of kinds of bottles", demand.bottles().size(), 1, MOST_KINDS, "")
                .names("bottle", demand.bottles().stream().map(BottleUse::name).toList());
        factors("month factors", demand.months(), 12);
        factors("weekday factors", demand.weekdays(), 7);
        demand.bottles().forEach(this::bottle);
    }

    private void factors(String what, List<Double> factors, int wanted) {
        checking.number("number of " + what, factors.size(), wanted, wanted, "");
        factors.forEach(factor -> checking.number("largest of the " + what, factor, 0, 1e6, ""));
        checking.that(factors.stream().mapToDouble(Double::doubleValue).sum() > 0, what, "not all be zero");
    }

    private void bottle(BottleUse use) {
        String of = " of bottle " + use.name();
        checking.bottleVolume("water volume" + of, use.waterVolume())
                .pressure("service pressure" + of, use.servicePressure(), GaugePressure.ofBar(1), HIGHEST_READING)
                .pressure("target" + of, use.target(), GaugePressure.ofBar(1), use.servicePressure())
                .pressure("lowest start reading" + of, use.startLowest(), GaugePressure.ZERO, use.target())
                .pressure("highest start reading" + of, use.startHighest(), use.startLowest(), use.target())
                .share("share" + of, use.share());
    }

    private void alternative(Alternative way) {
        String of = " of alternative " + way.name();
        SupplyKind supply = way.supply();
        ExchangeHabit habit = way.habit();
        checking.number("bank size" + of, way.bankSize(), 1, LARGEST_BANK, "")
                .number("number of supplies in store" + of, way.stored(), 0, LARGEST_BANK, "")
                .supplyVolume("water volume of the supplies" + of, supply.waterVolume())
                .pressure("least delivered reading" + of, supply.deliveredLowest(), LEAST_DELIVERED, HIGHEST_READING)
                .pressure(
                        "highest delivered reading" + of,
                        supply.deliveredHighest(),
                        supply.deliveredLowest(),
                        HIGHEST_READING)
                .price("price of a supply" + of, supply.contentPrice())
                .price("rent for a day" + of, supply.rentPerDay())
                .number("number of supplies in a delivery" + of, habit.together(), 1, way.places(), "");
        GaugePressure residual = habit.residual();
        checking.that(
                (residual == null) == (habit.when() != When.LOWEST_AT_RESIDUAL),
                "exchange habit" + of,
                "name a residual when it waits for one, and only then");
        if (residual != null) {
            checking.pressure("residual" + of, residual, GaugePressure.ZERO, wellBelow(supply.deliveredLowest()));
        }
        Booster booster = way.booster();
        if (booster != null) {
            checking.pressure("inlet" + of, booster.minimumInlet(), GaugePressure.ZERO, supply.deliveredLowest())
                    .price("price of the booster" + of, booster.price())
                    .price("upkeep of the booster" + of, booster.upkeepPerYear())
                    .price("price of a boosted fill" + of, booster.pricePerBoostedFill());
        }
    }

    /** A good deal less, so that a full supply is above the residual on a cold day too. */
    private static GaugePressure wellBelow(GaugePressure delivered) {
        return new GaugePressure(0.7 * delivered.pascals());
    }
}
