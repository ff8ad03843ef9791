package org.lowfirst.station;

import java.time.LocalDate;
import org.lowfirst.station.due.DueKind;
import org.lowfirst.station.due.Upkeep;
import org.lowfirst.station.readiness.Place;

/** A hose that is looked after, and a group of two bottles, one of them a spare. */
final class Squads {

    static final Upkeep HOSE = new Upkeep(DueKind.HOSE, "hose 2", LocalDate.of(2026, 3, 14), 60, "maker's sheet");
    static final GroupDetails RESCUE = new GroupDetails("rescue", 1, Larkmoor.bar("100"), Larkmoor.bar("150"));
    static final BottleId SPARE = new BottleId("sp-1");

    private Squads() {}

    static Fact[] facts() {
        return new Fact[] {
            new CareFact.UpkeepDescribed(HOSE),
            new CareFact.GroupDescribed(RESCUE),
            new Fact.BottleRegistered(SPARE, Larkmoor.bottle("SP-1"), Larkmoor.reads("160", 1)),
            new CareFact.BottleAssigned(Larkmoor.M_03, "rescue", Place.IN_SERVICE),
            new CareFact.BottleAssigned(SPARE, "rescue", Place.SPARE)
        };
    }
}
