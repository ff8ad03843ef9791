package org.lowfirst.app.honest;

import java.time.Instant;
import java.util.List;
import org.lowfirst.app.journal.Head;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.Turn;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Supply;

/** Where a bench comes from. */
public interface BenchSource {

    /**
     * The bench as it stands.
     *
     * @throws java.util.NoSuchElementException when there is no such bench
     */
    Standing getStanding(BenchId bench);

    /** The entries up to this head that count, in the order they count, corrections resolved. */
    List<Entry> listEntries(BenchId bench, Head head);

    /**
     * The latest of them: those with the highest numbers up to this head, in the order they count.
     *
     * @param most at most so many
     */
    List<Entry> listLatest(BenchId bench, Head head, int most);

    /** The supplies of the usual bank that may be planned with, at one temperature, lowest first. */
    List<Banked> listBank(BenchId bench, Temperature temperature);

    /** The same of one of several banks, by its name. */
    List<Banked> listBank(BenchId bench, String bank, Temperature temperature);

    /**
     * The highest settled gauge reading at the reference temperature that the rule book in force permits for a bottle; the marked
     * pressure where the book has no limit for it.
     */
    GaugePressure permitted(Bench bench, BottleId bottle, Instant when);

    /** The moment it is. */
    Instant now();

    /** What is in the cylinders. */
    EquationOfState gas();

    /** A bench and the head of the journal it was folded from. */
    record Standing(Bench bench, Head head) {}

    /**
     * A supply that may be opened.
     *
     * @param reading what its gauge should show
     * @param turn when it is opened
     */
    record Banked(Supply supply, GaugePressure reading, Turn turn) {}
}
