package org.lowfirst.app.bench;

import java.util.List;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.Command.AmendBottle;
import org.lowfirst.station.Command.RegisterBottle;
import org.lowfirst.station.Command.RetireBottle;

/** Keeps the register of bottles. */
public interface RegisteringBottles {

    /** Bottles in use, by name; then the retired ones. */
    List<Bottle> listBottles(BenchId bench);

    Recording register(BenchId bench, RegisterBottle command, Submission submission);

    Recording amend(BenchId bench, AmendBottle command, Submission submission);

    Recording retire(BenchId bench, RetireBottle command, Submission submission);
}
