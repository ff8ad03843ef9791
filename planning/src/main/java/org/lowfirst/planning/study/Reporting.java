package org.lowfirst.planning.study;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.study.kernel.Percentiles;

/** Turns totals into the answer. */
final class Reporting {

    private final StudyRequest request;
    private final Numbers numbers;
    private final StudyTotals totals;
    private final EndlessBank endless;

    Reporting(StudyRequest request, Numbers numbers, StudyTotals totals) {
        this.request = request;
        this.numbers = numbers;
        this.totals = totals;
        endless = new EndlessBank(numbers, request);
    }

    StudyResult result() {
        int cheapest = cheapest();
        List<AlternativeResult> results = new ArrayList<>();
        for (int way = 0; way < numbers.ways().size(); way++) {
            results.add(alternative(way, cheapest));
        }
        List<BreakEven> breakEvens = new ArrayList<>();
        for (int way = 0; way < results.size(); way++) {
            if (cheapest >= 0 && way != cheapest && results.get(way).costPerFill() != null) {
                breakEvens.add(
                        BreakEven.between(request.demand().fillsPerYear(), results.get(way), results.get(cheapest)));
            }
        }
        return new StudyResult(
                results,
                cheapest < 0 ? null : request.alternatives().get(cheapest).name(),
                breakEvens,
                totals.runs(),
                request.extent().runs(),
                totals.worstImbalance());
    }

    /** -1 when no alternative has made a single fill. */
    private int cheapest() {
        int best = -1;
        for (int way = 0; way < numbers.ways().size(); way++) {
            if (totals.mean(way, Measure.FILLS) > 0 && (best < 0 || meanCost(way) < meanCost(best))) {
                best = way;
            }
        }
        return best;
    }

    private double meanCost(int way) {
        return totals.mean(way, Measure.COST) / totals.mean(way, Measure.FILLS);
    }

    private AlternativeResult alternative(int way, int cheapest) {
        Alternative alternative = request.alternatives().get(way);
        boolean fills = totals.mean(way, Measure.FILLS) > 0;
        Bill bill = new Bill(alternative, request.prices(), request.extent().years());
        CostParts parts = fills ? parts(way, bill) : null;
        return new AlternativeResult(
                alternative,
                fills ? totals.ratio(way, Measure.COST, Measure.FILLS) : null,
                fills && cheapest != way ? totals.costDifference(way, cheapest) : null,
                fills ? spread(totals.costPerFill(way)) : null,
                parts,
                usage(way),
                sentBack(way),
                new Storage(
                        alternative.places(),
                        new Amount(alternative.places()
                                * numbers.ways().get(way).supply_m3()
                                * numbers.ways().get(way).delivered_molPerM3(1.0)),
                        bill.firstOutlay()),
                fills ? limit(way, bill) : null);
    }

    private static CostSpread spread(Percentiles costs) {
        return new CostSpread(costs.at(0.05), costs.at(0.5), costs.at(0.95));
    }

    private CostParts parts(int way, Bill bill) {
        Alternative alternative = bill.alternative();
        Booster booster = alternative.booster();
        double fills = totals.mean(way, Measure.FILLS);
        double years = request.extent().years();
        return new CostParts(
                totals.mean(way, Measure.SUPPLIES) * alternative.supply().contentPrice() / fills,
                totals.mean(way, Measure.DELIVERIES) * request.prices().perDelivery() / fills,
                bill.rentPerYear() * years / fills,
                (bill.perYear() - bill.rentPerYear()) * years / fills,
                booster == null ? 0.0 : totals.mean(way, Measure.BOOSTED_FILLS) * booster.pricePerBoostedFill() / fills,
                totals.mean(way, Measure.MISSED_FILLS) * request.prices().perMissedFill() / fills);
    }

    private Usage usage(int way) {
        double years = request.extent().years();
        return new Usage(
                perYear(totals.of(way, Measure.FILLS)),
                perYear(totals.of(way, Measure.MISSED_FILLS)),
                totals.mean(way, Measure.OUT_OF_REACH) / years,
                totals.mean(way, Measure.SUPPLIES) / years,
                totals.mean(way, Measure.DELIVERIES) / years,
                totals.mean(way, Measure.SUPPLIES) > 0 ? totals.ratio(way, Measure.FILLS, Measure.SUPPLIES) : null,
                gasFromBefore(way));
    }

    private double gasFromBefore(int way) {
        double used_mol = totals.mean(way, Measure.TO_BOTTLES_MOL) + totals.mean(way, Measure.VENTED_MOL);
        double net_mol = totals.mean(way, Measure.RECEIVED_MOL) - totals.mean(way, Measure.SENT_BACK_MOL);
        return used_mol > 0.0 ? (used_mol - net_mol) / used_mol : 0.0;
    }

    private Estimate perYear(Estimate sum) {
        double years = request.extent().years();
        return new Estimate(sum.mean() / years, sum.low() / years, sum.high() / years);
    }

    private @Nullable SentBack sentBack(int way) {
        double supplies = totals.mean(way, Measure.SENT_BACK);
        if (!(supplies > 0) || !(totals.mean(way, Measure.RECEIVED_MOL) > 0)) {
            return null;
        }
        return new SentBack(
                new Amount(totals.mean(way, Measure.SENT_BACK_MOL)
                        / request.extent().years()),
                totals.ratio(way, Measure.SENT_BACK_MOL, Measure.RECEIVED_MOL),
                new GaugePressure(totals.mean(way, Measure.RESIDUALS_PA) / supplies));
    }

    /** With the rent and purchases of the alternative, its deliveries full, and its share of boosted and missed fills. */
    private @Nullable Limit limit(int way, Bill bill) {
        Alternative alternative = bill.alternative();
        OptionalDouble most = endless.fillsPerSupply(numbers.ways().get(way));
        if (most.isEmpty()) {
            return null;
        }
        double fillsPerSupply = most.getAsDouble();
        CostParts parts = parts(way, bill);
        double supply = alternative.supply().contentPrice()
                + request.prices().perDelivery() / alternative.habit().together();
        return new Limit(
                fillsPerSupply,
                supply / fillsPerSupply + parts.rent() + parts.purchases() + parts.boosting() + parts.missed());
    }
}
