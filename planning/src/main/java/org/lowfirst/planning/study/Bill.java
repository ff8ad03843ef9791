package org.lowfirst.planning.study;

/** What the counted years of an alternative cost. */
record Bill(Alternative alternative, Prices prices, int years) {

    double of(RunLedger ledger) {
        Booster booster = alternative.booster();
        double boosted = booster == null ? 0.0 : booster.pricePerBoostedFill();
        return ledger.of(Measure.SUPPLIES) * alternative.supply().contentPrice()
                + ledger.of(Measure.DELIVERIES) * prices.perDelivery()
                + ledger.of(Measure.MISSED_FILLS) * prices.perMissedFill()
                + ledger.of(Measure.BOOSTED_FILLS) * boosted
                + perYear() * years;
    }

    /** What a year costs before the first bottle comes. */
    double perYear() {
        Booster booster = alternative.booster();
        return rentPerYear() + bought() / prices.writeOffYears() + (booster == null ? 0.0 : booster.upkeepPerYear());
    }

    double rentPerYear() {
        return alternative.places() * alternative.supply().rentPerDay() * Calendar.DAYS;
    }

    /** Lines between the supplies and the booster. */
    double bought() {
        Booster booster = alternative.booster();
        return (alternative.bankSize() - 1) * prices.perInterconnect() + (booster == null ? 0.0 : booster.price());
    }

    /** Money to lay out before the first fill: what is bought, and the first supplies in one delivery. */
    double firstOutlay() {
        return bought() + alternative.places() * alternative.supply().contentPrice() + prices.perDelivery();
    }
}
