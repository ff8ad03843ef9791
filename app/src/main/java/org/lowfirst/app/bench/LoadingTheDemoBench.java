package org.lowfirst.app.bench;

import org.lowfirst.station.BenchId;

/** Loads the demo bench, an invented one; only when asked. */
public interface LoadingTheDemoBench {

    /** The demo bench; loaded now unless it is there already. */
    BenchId load();
}
