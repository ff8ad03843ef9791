package org.lowfirst.app.money;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.MoneyFact;

/**
 * What an entry is about; of a correction, what both the corrected entry and its replacement are about.
 *
 * @param forAll it may have to do with every fill
 */
record Subject(Set<FillId> fills, Set<BottleId> bottles, boolean forAll) {

    boolean nothing() {
        return fills.isEmpty() && bottles.isEmpty() && !forAll;
    }

    static Subject of(Entry entry, Map<Long, Subject> earlier) {
        Set<FillId> fills = new LinkedHashSet<>();
        Set<BottleId> bottles = new LinkedHashSet<>();
        Fact fact = entry.fact();
        boolean forAll = add(fact, fills, bottles);
        if (fact instanceof Fact.EntryCorrected correction) {
            Subject corrected = earlier.get(correction.corrected());
            if (corrected != null) {
                fills.addAll(corrected.fills());
                bottles.addAll(corrected.bottles());
                forAll |= corrected.forAll();
            }
            if (correction.replacement() != null) {
                forAll |= add(Objects.requireNonNull(correction.replacement()), fills, bottles);
            }
        }
        return new Subject(fills, bottles, forAll);
    }

    private static boolean add(Fact fact, Set<FillId> fills, Set<BottleId> bottles) {
        if (fact instanceof Fact.FillStarted f) {
            fills.add(f.fill());
            bottles.add(f.bottle());
        } else if (fact instanceof Fact.StageRecorded f) {
            fills.add(f.fill());
        } else if (fact instanceof Fact.FillFinished f) {
            fills.add(f.fill());
        } else if (fact instanceof Fact.FillAbandoned f) {
            fills.add(f.fill());
        } else if (fact instanceof Fact.FillRecorded f) {
            fills.add(f.fill());
            bottles.add(f.bottle());
        } else if (fact instanceof MoneyFact.FillBilled f) {
            fills.add(f.fill());
        } else if (fact instanceof Fact.BottleRegistered f) {
            bottles.add(f.bottle());
        } else if (fact instanceof Fact.BottleAmended f) {
            bottles.add(f.bottle());
        }
        return fact instanceof Fact.BenchOpened
                || fact instanceof Fact.SettingsChanged
                || fact instanceof MoneyFact.TariffSet;
    }
}
