package org.lowfirst.app.bench;

import org.lowfirst.station.BenchId;
import org.lowfirst.station.Command.AmendSupply;
import org.lowfirst.station.Command.ConnectSupply;
import org.lowfirst.station.Command.RecordTwoOpenTogether;
import org.lowfirst.station.Command.RemoveSupply;

/** Shows the bank and keeps it: supplies come, go, and are sometimes open together. */
public interface KeepingTheBank {

    /**
     * The bank now, rank 1 first.
     *
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    BankView bank(BenchId bench);

    Recording connect(BenchId bench, ConnectSupply command, Submission submission);

    Recording amend(BenchId bench, AmendSupply command, Submission submission);

    Recording remove(BenchId bench, RemoveSupply command, Submission submission);

    Recording recordTwoOpenTogether(BenchId bench, RecordTwoOpenTogether command, Submission submission);
}
