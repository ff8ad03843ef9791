package org.lowfirst.web.ready;

import org.lowfirst.station.Bottle;
import org.lowfirst.web.view.NoSuchThing;
import org.lowfirst.web.workplace.BenchNow;

/** Finds the bottles that addresses and forms name. */
final class ReadyBottles {

    private ReadyBottles() {}

    /** @throws NoSuchThing when no bottle in use has that id */
    static Bottle bottle(BenchNow now, String id) {
        return now.bench().listBottles().stream()
                .filter(bottle -> bottle.inUse() && bottle.id().value().equals(id))
                .findFirst()
                .orElseThrow(() -> new NoSuchThing("bottle " + id));
    }
}
