package org.lowfirst.app.bench;

/** The use cases over one database, wired together. Thread-safe. */
public interface Benches extends AutoCloseable {

    OpeningABench openingABench();

    KeepingTheBank keepingTheBank();

    TakingReadings takingReadings();

    RegisteringBottles registeringBottles();

    PlanningAFill planningAFill();

    GuidingAFill guidingAFill();

    CorrectingAnEntry correctingAnEntry();

    ReadingTheJournal readingTheJournal();

    LoadingTheDemoBench loadingTheDemoBench();

    RemovingTheDemo removingTheDemo();

    @Override
    void close();
}
