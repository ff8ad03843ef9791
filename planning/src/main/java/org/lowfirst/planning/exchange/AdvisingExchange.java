package org.lowfirst.planning.exchange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.planning.Turn;
import org.lowfirst.planning.study.Objection;
import org.lowfirst.planning.study.kernel.BankLevels;
import org.lowfirst.planning.study.kernel.Draws;

/** Works out which supply or pair to send back, and when. */
public final class AdvisingExchange {

    private static final int FUTURES = 16;
    /** What the coming years of two options may differ by without telling them apart. */
    private static final double A_CENT = 0.01;

    private static final int LEAST_BOTTLES = 50;
    private static final int MOST_BOTTLES = 1_000;
    /** Pairs are looked at among the lowest ones only: a fuller one is never the better to send back. */
    private static final int PAIRED = 6;

    private final ExchangeRequest request;
    /** In the order a fill opens them; the numbers that the year ahead knows them by. */
    private final List<SupplyState> inOrder;

    private final Isotherm line;
    private final YearAhead year;

    private AdvisingExchange(ExchangeRequest request) {
        this.request = request;
        inOrder = SupplyState.inOrderOfUse(request.bank());
        line = request.conditions().gas().isotherm(request.conditions().bench()).orElseThrow();
        int bottles = (int) Math.max(
                LEAST_BOTTLES,
                Math.min(MOST_BOTTLES, Math.rint(365 * request.rate().fillsPerDay())));
        List<ComingBottles> futures = new ArrayList<>();
        for (int i = 0; i < FUTURES; i++) {
            futures.add(new ComingBottles(
                    request.conditions(), request.usual(), bottles + bottles / 2, new Draws(request.seed(), i)));
        }
        year = new YearAhead(levels(false), levels(true), request.terms(), futures, bottles);
    }

    /** The advice, or what is wrong with the request. */
    public static ExchangeOutcome advise(ExchangeRequest request) {
        Optional<Objection> objection = new ExchangeCheck(request).look().first();
        return objection.isPresent()
                ? new ExchangeOutcome.Refused(objection.get())
                : new AdvisingExchange(request).advice();
    }

    private ExchangeAdvice advice() {
        int fillsLeft = (int) Math.rint(year.fillsLeft());
        List<OrderAt> orders = orders(fillsLeft);
        OrderAt best = orders.stream()
                .min(Comparator.comparingDouble(OrderAt::cost).thenComparingInt(OrderAt::fillsLeft))
                .orElseThrow();
        boolean pairLater = inOrder.size() > 1 && year.costOfAPairLater() < year.cost(List.of());
        List<ExchangeOption> options = options(pairLater);
        boolean waits = best.fillsLeft() < orders.size() - 1 && waitingIsCheapest(options);
        if (!waits) {
            options.sort(Comparator.comparing(ExchangeOption::waits).thenComparingDouble(ExchangeOption::aboveBest));
        }
        return new ExchangeAdvice(
                options,
                waits,
                lowestFirst().stream()
                        .limit(pairLater ? 2 : 1)
                        .map(place -> inOrder.get(place).name())
                        .toList(),
                orders.size() - 1,
                best.fillsLeft(),
                orders,
                request.rate().fillsPerDay(),
                UsualFills.usual(request).name());
    }

    private static boolean waitingIsCheapest(List<ExchangeOption> options) {
        return options.stream().filter(ExchangeOption::waits).allMatch(wait -> wait.aboveBest() <= A_CENT);
    }

    /** @param pairLater whether waiting ends with the two lowest sent back together */
    private List<ExchangeOption> options(boolean pairLater) {
        List<List<Integer>> choices = new ArrayList<>();
        choices.add(List.of());
        List<Integer> lowestFirst = lowestFirst();
        lowestFirst.forEach(place -> choices.add(List.of(place)));
        for (int low = 0; low < Math.min(PAIRED, inOrder.size()); low++) {
            for (int high = low + 1; high < Math.min(PAIRED, inOrder.size()); high++) {
                choices.add(List.of(lowestFirst.get(low), lowestFirst.get(high)));
            }
        }
        double[] costs = choices.stream().mapToDouble(year::cost).toArray();
        if (pairLater) {
            costs[0] = year.costOfAPairLater();
        }
        double least = Arrays.stream(costs).min().orElseThrow();
        List<ExchangeOption> options = new ArrayList<>();
        for (int i = 0; i < costs.length; i++) {
            options.add(option(choices.get(i), costs[i] - least));
        }
        options.sort(Comparator.comparingDouble(ExchangeOption::aboveBest));
        return options;
    }

    private List<Integer> lowestFirst() {
        return IntStream.range(0, inOrder.size())
                .boxed()
                .sorted(Comparator.comparing(place -> inOrder.get(place).reading()))
                .toList();
    }

    private ExchangeOption option(List<Integer> places, double aboveBest) {
        double returned_mol = 0.0;
        double worth = 0.0;
        double full_molPerM3 = density_molPerM3(request.terms().fullSupply());
        for (int place : places) {
            SupplyState supply = inOrder.get(place);
            double rho_molPerM3 = density_molPerM3(supply.reading());
            returned_mol += rho_molPerM3 * supply.waterVolume().cubicMetres();
            worth += request.terms().contentPrice() * rho_molPerM3 / full_molPerM3;
        }
        return new ExchangeOption(
                places.stream().map(place -> inOrder.get(place).name()).toList(),
                new Amount(returned_mol),
                worth,
                places.isEmpty()
                        ? 0.0
                        : places.size() * request.terms().contentPrice()
                                + request.terms().perDelivery(),
                UsualFills.left(request, inOrder, places),
                aboveBest);
    }

    private List<OrderAt> orders(int fillsLeft) {
        double[] chances = new LeadDemand(request.rate(), request.terms().leadDays()).chances();
        double[] early = new double[Math.min(fillsLeft, chances.length - 1) + 1];
        double inTime = year.costOfExchangingWith(0);
        for (int left = 1; left < early.length; left++) {
            early[left] = year.costOfExchangingWith(left) - inTime;
        }
        return OrderAt.each(early, chances, request.terms().perMissedFill());
    }

    private BankLevels levels(boolean full) {
        BankLevels levels = new BankLevels(
                inOrder.size(), request.conditions().hose().cubicMetres(), density_molPerM3(GaugePressure.ZERO));
        for (int place = 0; place < inOrder.size(); place++) {
            SupplyState supply = inOrder.get(place);
            GaugePressure reading = full ? request.terms().fullSupply() : supply.reading();
            levels.put(place, supply.waterVolume().cubicMetres(), density_molPerM3(reading));
        }
        levels.useFirst((int) inOrder.stream()
                .filter(supply -> !full && supply.turn() == Turn.FIRST)
                .count());
        levels.rank();
        return levels;
    }

    private double density_molPerM3(GaugePressure reading) {
        return line.density_molPerM3(
                reading.pascals() + request.conditions().ambient().pascals());
    }
}
