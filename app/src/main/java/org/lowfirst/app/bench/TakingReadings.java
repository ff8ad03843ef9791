package org.lowfirst.app.bench;

import org.lowfirst.station.BenchId;
import org.lowfirst.station.Command.TakeReading;

/** Takes what the gauges show. */
public interface TakingReadings {

    Recording take(BenchId bench, TakeReading command, Submission submission);
}
