package org.lowfirst.app.bench;

import java.time.Clock;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.lowfirst.app.honest.AskingOtherTemperatures;
import org.lowfirst.app.honest.BenchSource;
import org.lowfirst.app.honest.CheckingForLeaks;
import org.lowfirst.app.honest.ComparingDelivery;
import org.lowfirst.app.honest.FillingInTime;
import org.lowfirst.app.honest.JudgingReadings;
import org.lowfirst.app.honest.SpreadingAPlan;
import org.lowfirst.app.honest.StoppingAndSettling;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.outlook.AskingAhead;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.station.Language;

/** The use cases over one database, wired together. Thread-safe. */
public final class Benches implements AutoCloseable {

    private final Recorder recorder;
    private final GasCount count;
    private final BenchPlanner planner;
    private final Locale locale;
    private final BenchSource source;
    private final JudgingReadings judging;
    private final KeepingAccounts accounts;
    private final Map<Language, Benches> spoken;

    /**
     * @param journal the database; closed with this
     * @param gas what is in the cylinders
     * @param locale language of the sentences
     */
    public Benches(Journal journal, Clock clock, EquationOfState gas, Locale locale) {
        this.count = new GasCount(gas);
        this.recorder = new Recorder(journal, clock, count);
        this.planner = new BenchPlanner(count, clock.getZone());
        this.locale = locale;
        this.source = new JournalSource(recorder, count, planner.permitted());
        this.judging = new JudgingReadings(source, locale);
        this.accounts = new KeepingAccounts(recorder, judging, count, locale);
        this.spoken = new ConcurrentHashMap<>();
    }

    private Benches(Benches shared, Locale locale) {
        this.count = shared.count;
        this.recorder = shared.recorder;
        this.planner = shared.planner;
        this.locale = locale;
        this.source = shared.source;
        this.judging = new JudgingReadings(source, locale);
        this.accounts = new KeepingAccounts(recorder, judging, count, locale);
        this.spoken = shared.spoken;
    }

    /** The same benches, spoken of in another language. */
    public Benches in(Language language) {
        return language.locale().equals(locale)
                ? this
                : spoken.computeIfAbsent(language, other -> new Benches(this, other.locale()));
    }

    public OpeningABench openingABench() {
        return new OpeningABench(recorder);
    }

    public KeepingTheBank keepingTheBank() {
        return new KeepingTheBank(recorder, count);
    }

    public ExchangingASupply exchangingASupply() {
        return new ExchangingASupply(recorder, planner, keepingTheBank(), keepingAccounts(), count);
    }

    public WeighingTwoOpen weighingTwoOpen() {
        return new WeighingTwoOpen(recorder, planner, count);
    }

    public TakingReadings takingReadings() {
        return new TakingReadings(recorder);
    }

    public RegisteringBottles registeringBottles() {
        return new RegisteringBottles(recorder);
    }

    public JudgingFitness judgingFitness() {
        return new JudgingFitness(recorder, new GateGas(count), locale);
    }

    public KeepingMarkings keepingMarkings() {
        return new KeepingMarkings(recorder);
    }

    public KeepingRules keepingRules() {
        return new KeepingRules(recorder, locale);
    }

    public PlanningAFill planningAFill() {
        return new PlanningAFill(recorder, planner);
    }

    public GuidingAFill guidingAFill() {
        return new GuidingAFill(recorder, planner, count, locale);
    }

    public PlanningASession planningASession() {
        return new PlanningASession(recorder, planner);
    }

    public GuidingASession guidingASession() {
        return new GuidingASession(recorder, planner, count);
    }

    public CorrectingAnEntry correctingAnEntry() {
        return new CorrectingAnEntry(recorder);
    }

    public ReadingTheJournal readingTheJournal() {
        return new ReadingTheJournal(recorder, locale);
    }

    public LoadingTheDemoBench loadingTheDemoBench() {
        return new LoadingTheDemoBench(recorder);
    }

    public RemovingTheDemo removingTheDemo() {
        return new RemovingTheDemo(recorder);
    }

    public SearchingTheJournal searchingTheJournal() {
        return new SearchingTheJournal(recorder, locale);
    }

    public EnteringManyBottles enteringManyBottles() {
        return new EnteringManyBottles(recorder);
    }

    public KeepingLocalHelp keepingLocalHelp() {
        return new KeepingLocalHelp(recorder);
    }

    public KeepingGauges keepingGauges() {
        return new KeepingGauges(recorder, judging);
    }

    public KeepingEquipment keepingEquipment() {
        return new KeepingEquipment(recorder);
    }

    public AskingWhatIsDue askingWhatIsDue() {
        return new AskingWhatIsDue(recorder, locale);
    }

    public KeepingReady keepingReady() {
        return new KeepingReady(recorder);
    }

    public KeepingPeople keepingPeople() {
        return new KeepingPeople(recorder);
    }

    public KeepingAccounts keepingAccounts() {
        return accounts;
    }

    public AllowingWarmStops allowingWarmStops() {
        return new AllowingWarmStops(recorder);
    }

    public JudgingReadings judgingReadings() {
        return judging;
    }

    public SpreadingAPlan spreadingAPlan() {
        return new SpreadingAPlan(source, judging, locale);
    }

    public StoppingAndSettling stoppingAndSettling() {
        return new StoppingAndSettling(source, locale);
    }

    public FillingInTime fillingInTime() {
        return new FillingInTime(source, locale);
    }

    public CheckingForLeaks checkingForLeaks() {
        return new CheckingForLeaks(source, judging, locale);
    }

    public ComparingDelivery comparingDelivery() {
        return new ComparingDelivery(source, judging, locale);
    }

    public AskingOtherTemperatures askingOtherTemperatures() {
        return new AskingOtherTemperatures(source, locale);
    }

    public KeepingTheOutlook keepingTheOutlook() {
        return new KeepingTheOutlook(recorder);
    }

    public AskingAhead askingAhead() {
        return new AskingAhead(source);
    }

    /** The journals behind the benches, for export, import and verification. */
    public Journal journal() {
        return recorder.journal();
    }

    @Override
    public void close() {
        recorder.journal().close();
    }
}
