package org.lowfirst.planning.contents;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.FillsLeft;
import org.lowfirst.planning.Step;
import org.lowfirst.planning.contents.FillErrors.Movement;
import org.lowfirst.planning.contents.FillSpread.CountedFill;
import org.lowfirst.planning.contents.FillSpread.Spread;
import org.lowfirst.planning.contents.FillSpread.StageSpread;
import org.lowfirst.planning.contents.PerturbedFill.Shown;
import org.lowfirst.transfer.Ending;

/**
 * Spreads a plan: moves every uncertain input one standard deviation up and down, plans again, and adds the halves of the
 * differences in quadrature (JCGM 100:2008, 5.1.3, from memory). Immutable and thread-safe.
 *
 * <p>The half-widths are those of the rectangular errors and a normal rest, not of a normal distribution.
 *
 * <p>The inputs count as independent: the lasting error of each gauge (which also shows in the readings to come), the scatter of
 * each reading taken, each water volume, the temperature of the bench.
 */
public final class FillSpreads {

    /** Beyond this many fills the count is not spread. */
    private static final int MOST_COUNTED = 60;

    private final ContentsAssumptions assumptions;
    private final double temperatureDeviation_K;
    private final FillPlanner now;
    private final FillPlanner warmer;
    private final FillPlanner colder;

    private FillSpreads(Conditions conditions, double temperatureDeviation_K, ContentsAssumptions assumptions) {
        this.assumptions = assumptions;
        this.temperatureDeviation_K = temperatureDeviation_K;
        this.now = FillPlanner.under(conditions);
        this.warmer = FillPlanner.under(warmer(conditions, temperatureDeviation_K));
        this.colder = FillPlanner.under(warmer(conditions, -temperatureDeviation_K));
    }

    private static Conditions warmer(Conditions c, double by_K) {
        return new Conditions(
                c.gas(), new Temperature(c.bench().kelvin() + by_K), c.reference(), c.ambient(), c.hose());
    }

    /**
     * Made ready for many plans under the same conditions.
     *
     * @param temperatureDeviation_K standard deviation of the bench's temperature [K]
     */
    public static FillSpreads under(
            Conditions conditions, double temperatureDeviation_K, ContentsAssumptions assumptions) {
        return new FillSpreads(conditions, temperatureDeviation_K, assumptions);
    }

    /**
     * @param plan a plan made under the same conditions
     * @param known how well its supplies and its bottle are known; a supply that is not named counts as exact
     */
    public FillSpread spread(FillPlan plan, FillUncertainty known) {
        List<Movement> movements = FillErrors.of(known, assumptions);
        Runs runs = new Runs(movements, runs(plan, known, movements));
        List<StageSpread> stages = stages(plan, known, runs);
        CountedFill first = counted(1, plan, known, runs);
        FillsLeft left = plan.fillsLeft();
        boolean counts = left.complete() < MOST_COUNTED;
        return new FillSpread(
                plan,
                stages,
                first.reach(),
                first.chanceReaches(),
                counts && left.complete() >= 1 ? counted(left.complete(), plan, known, runs) : null,
                counts && left.nextStopsAt() != null ? counted(left.complete() + 1, plan, known, runs) : null);
    }

    /** One fill planned under one set of errors. */
    private record Run(FillPlanner planner, PerturbedFill fill) {}

    /** The runs, and what was moved in them. */
    private record Runs(List<Movement> movements, List<Run> all) {

        /** What was moved in run {@code i} and the one after it is a rectangular error. */
        boolean isRectangular(int i) {
            int moved = (i - 1) / 2;
            return moved < movements.size() && movements.get(moved).rectangular();
        }
    }

    /** The run with nothing moved, then for each input the run with more and the run with less of it. */
    private List<Run> runs(FillPlan plan, FillUncertainty known, List<Movement> movements) {
        List<Run> runs = new ArrayList<>();
        runs.add(new Run(now, asRead(plan, known)));
        for (Movement movement : movements) {
            for (double by : new double[] {1.0, -1.0}) {
                PerturbedFill moved = asRead(plan, known);
                movement.shift().apply(moved, by);
                runs.add(new Run(now, moved));
            }
        }
        if (temperatureDeviation_K > 0.0) {
            runs.add(new Run(warmer, asRead(plan, known)));
            runs.add(new Run(colder, asRead(plan, known)));
        }
        return runs;
    }

    private static PerturbedFill asRead(FillPlan plan, FillUncertainty known) {
        PerturbedFill fill = new PerturbedFill(plan.request(), plan.stop().reading());
        FillErrors.applyLearned(fill, known);
        return fill;
    }

    private List<StageSpread> stages(FillPlan plan, FillUncertainty known, Runs runs) {
        List<@Nullable Shown> shown = new ArrayList<>();
        runs.all().forEach(run -> shown.add(run.fill().shown(run.planner())));
        double bottleScatter_Pa = known.bottle().gauge().repeat_Pa(assumptions.gauges());
        List<StageSpread> stages = new ArrayList<>();
        for (Step step : plan.fill().steps()) {
            String name = step.supply();
            FillUncertainty.Known supply = known.supplies().get(name);
            double supplyScatter_Pa = supply == null ? 0.0 : supply.gauge().repeat_Pa(assumptions.gauges());
            Spread bottle = step.ends() == Ending.TARGET
                    ? new Spread(plan.stop().reading(), GaugePressure.ZERO)
                    : over(runs, shown, s -> s.bottle().get(name), bottleScatter_Pa);
            stages.add(new StageSpread(
                    name, bottle, over(runs, shown, s -> s.supply().get(name), supplyScatter_Pa)));
        }
        return stages;
    }

    private CountedFill counted(int number, FillPlan plan, FillUncertainty known, Runs runs) {
        List<@Nullable Double> reach = new ArrayList<>();
        runs.all().forEach(run -> reach.add(run.fill().reach_Pa(run.planner(), number)));
        Spread true_ = over(runs, reach, r -> r, 0.0);
        double scatter_Pa = known.bottle().gauge().repeat_Pa(assumptions.gauges());
        Spread shown = new Spread(
                true_.expected(),
                new GaugePressure(Math.hypot(true_.standardDeviation().pascals(), scatter_Pa)),
                true_.rectangles());
        return new CountedFill(number, shown, true_.chanceAtLeast(plan.stop().reading()));
    }

    /** Expected value and standard deviation of one number over the runs; where one side has no plan, the other counts twice. */
    private static <T> Spread over(
            Runs runs, List<@Nullable T> values, Function<T, @Nullable Double> number, double scatter_Pa) {
        Double middle = value(values.get(0), number);
        if (middle == null) {
            throw new IllegalArgumentException("The plan must be one made under the same conditions.");
        }
        double variance = scatter_Pa * scatter_Pa;
        List<GaugePressure> rectangles = new ArrayList<>();
        for (int i = 1; i + 1 < values.size(); i += 2) {
            Double more = value(values.get(i), number);
            Double less = value(values.get(i + 1), number);
            double half_Pa = 0.5 * ((more == null ? middle : more) - (less == null ? middle : less));
            double both_Pa = more == null || less == null ? 2.0 * half_Pa : half_Pa;
            variance += both_Pa * both_Pa;
            if (runs.isRectangular(i)) {
                rectangles.add(new GaugePressure(Math.sqrt(3.0) * Math.abs(both_Pa)));
            }
        }
        return new Spread(new GaugePressure(middle), new GaugePressure(Math.sqrt(variance)), rectangles);
    }

    private static <T> @Nullable Double value(@Nullable T run, Function<T, @Nullable Double> number) {
        return run == null ? null : number.apply(run);
    }
}
