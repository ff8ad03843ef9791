package org.lowfirst.app.bench;

import java.util.List;
import java.util.Optional;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Settings;

/** Opens benches, lists them, and changes what they are set to. */
public interface OpeningABench {

    /** The benches in this database, oldest first. */
    List<BenchSummary> listBenches();

    /** The bench as it stands now. */
    Optional<Bench> findBench(BenchId bench);

    Recording open(BenchId bench, Settings settings, Submission submission);

    Recording changeSettings(BenchId bench, Settings settings, Submission submission);
}
