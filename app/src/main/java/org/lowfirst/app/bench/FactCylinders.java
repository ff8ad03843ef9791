package org.lowfirst.app.bench;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.station.AreaFact;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.Stage;

/** Whether a fact is about one cylinder; every step of a fill is about its bottle. */
final class FactCylinders {

    private final CylinderId cylinder;
    private final Set<FillId> fills = new HashSet<>();

    private FactCylinders(CylinderId cylinder) {
        this.cylinder = cylinder;
    }

    static FactCylinders about(CylinderId cylinder, Journal journal, BenchId bench) {
        FactCylinders about = new FactCylinders(cylinder);
        if (cylinder instanceof BottleId bottle) {
            journal.inPlaceOrder(bench, entries -> {
                entries.forEachRemaining(entry -> about.note(entry.fact(), bottle));
                return true;
            });
        }
        return about;
    }

    private void note(Fact fact, BottleId bottle) {
        if (fact instanceof Fact.FillStarted f && f.bottle().equals(bottle)) {
            fills.add(f.fill());
        }
    }

    boolean concerns(Fact fact) {
        if (fact instanceof Fact.EntryCorrected f) {
            return f.replacement() != null && concerns(f.replacement());
        } else if (fact instanceof Fact.FillFinished f) {
            return fills.contains(f.fill());
        } else if (fact instanceof Fact.FillAbandoned f) {
            return fills.contains(f.fill());
        } else if (fact instanceof Fact.StageRecorded f) {
            return fills.contains(f.fill()) || f.stage().supply().equals(cylinder);
        }
        return cylinders(fact).contains(cylinder);
    }

    private static List<CylinderId> cylinders(Fact fact) {
        if (fact instanceof AreaFact f) {
            return f.cylinders();
        } else if (fact instanceof Fact.SupplyConnected f) {
            return List.of(f.supply());
        } else if (fact instanceof Fact.SupplyAmended f) {
            return List.of(f.supply());
        } else if (fact instanceof Fact.SupplyRemoved f) {
            return List.of(f.supply());
        } else if (fact instanceof Fact.TwoOpenedTogether f) {
            return List.of(f.first(), f.second());
        } else if (fact instanceof Fact.BottleRegistered f) {
            return List.of(f.bottle());
        } else if (fact instanceof Fact.BottleAmended f) {
            return List.of(f.bottle());
        } else if (fact instanceof Fact.BottleRetired f) {
            return List.of(f.bottle());
        } else if (fact instanceof Fact.ReadingTaken f) {
            return List.of(f.cylinder());
        } else if (fact instanceof Fact.FillStarted f) {
            return List.of(f.bottle());
        } else if (fact instanceof Fact.FillRecorded f) {
            List<CylinderId> all = new ArrayList<>(List.of(f.bottle()));
            f.stages().stream().map(Stage::supply).forEach(all::add);
            return all;
        }
        return List.of();
    }
}
