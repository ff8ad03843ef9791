package org.lowfirst.app.bench;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.lowfirst.app.journal.FactLines;
import org.lowfirst.app.journal.StoredEntry;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.Step;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.AbandonFill;
import org.lowfirst.station.Command.ConnectSupply;
import org.lowfirst.station.Command.FinishFill;
import org.lowfirst.station.Command.RecordFill;
import org.lowfirst.station.Command.RecordStage;
import org.lowfirst.station.Command.RegisterBottle;
import org.lowfirst.station.Command.RemoveSupply;
import org.lowfirst.station.Command.RetireBottle;
import org.lowfirst.station.Command.StartFill;
import org.lowfirst.station.Command.TakeReading;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.Delivery;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;
import org.lowfirst.station.MarkedPlate;
import org.lowfirst.station.Marking;
import org.lowfirst.station.Material;
import org.lowfirst.station.Reading;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.Settings;
import org.lowfirst.station.Stage;
import org.lowfirst.station.StampLine;
import org.lowfirst.station.StandFact;
import org.lowfirst.station.StatedAbsolutePressure;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.Surroundings;
import org.lowfirst.station.Units;
import org.lowfirst.station.WaterVolume;
import org.lowfirst.station.rules.Answer;
import org.lowfirst.station.rules.Service;
import org.lowfirst.station.rules.TestMark;
import org.lowfirst.station.rules.WallMaterial;
import org.lowfirst.station.stamp.Convention;

/**
 * Tells the invented story of the demo bench through the use cases and writes it as the lines of demo.jsonl. Seeded: the same
 * story every time.
 */
final class DemoStory {

    private static final BenchId BENCH = new BenchId("story");
    private static final LocalDate FIRST_DAY = LoadingTheDemoBench.DAY_AFTER.minusDays(24);
    /** Past its test, and one whose marking nobody has entered. */
    private static final Set<String> NOT_FILLED = Set.of("Heron", "Dotterel");

    private static final List<String> PEOPLE = List.of("Wren", "Tobias", "Ingrid");

    /** A fill entered afterwards with a slip, and one that a guest pays for. */
    private static final int SLIPPED = 7;

    private static final int BILLED = 9;

    private final Benches benches;
    private final DemoMoney money;
    private final SetClock clock;
    private final Random random = new Random(1903);
    private final Random lookers = new Random(77);
    private int keys;
    private int fills;
    private String celsius = "17";

    DemoStory(Benches benches, SetClock clock) {
        this.benches = benches;
        this.clock = clock;
        this.money = new DemoMoney(benches, BENCH, clock);
    }

    List<String> tell() {
        setUp();
        for (LocalDate day = FIRST_DAY; day.isBefore(LoadingTheDemoBench.DAY_AFTER); day = day.plusDays(1)) {
            day(day, (int) (day.toEpochDay() - FIRST_DAY.toEpochDay()));
        }
        new DemoCare(benches, BENCH)
                .tell(bottle("K2 rear"), bottle("K1 front"), bottle("K1 rear"), bottle("Mountain 1"));
        return lines();
    }

    private void setUp() {
        clock.set(at(FIRST_DAY, 8, 30));
        Settings settings = new Settings(
                "Quillmere Soaring (demo)",
                Units.METRIC,
                RuleSet.EU,
                new Surroundings(
                        temperature("17"),
                        StatedAbsolutePressure.of("101.3", PressureUnit.KILOPASCAL),
                        StatedVolume.of("0.05", VolumeUnit.LITRE)),
                bar(200),
                PEOPLE);
        recorded(benches.openingABench().open(BENCH, settings, submission()));
        connect("A", "50", "QM 2217", 74);
        connect("B", "50", "QM 2244", 121);
        connect("C", "50", "QM 2305", 168);
        connect("D", "40", "QM 0098", 197);
        register("K1 front", "Club", "5", 180, 64);
        register("K1 rear", "Club", "5", 180, 71);
        register("K2 front", "Club", "5", 180, 48);
        register("K2 rear", "Club", "5", 180, 55);
        register("Tug", "Club", "2", 150, 90);
        register("Mountain 1", "Club", "10", 180, 82);
        register("Heron", "Ingrid", "3", 150, 40);
        register("Lapwing", "Tobias", "3", 150, 60);
        register("Swift", "Wren", "2", 150, 35);
        register("Dotterel", "Oona", "2", 150, 52);
        register("Pipit", "Ruben", "3", 150, 77);
        register("Old blue", "Club", "5", 150, 30);
        money.agree(FIRST_DAY);
        mark("K1 front", YearMonth.of(2014, 3), YearMonth.of(2024, 2));
        mark("K1 rear", YearMonth.of(2014, 3), YearMonth.of(2024, 2));
        mark("K2 front", YearMonth.of(2017, 9), YearMonth.of(2017, 9));
        mark("K2 rear", YearMonth.of(2017, 9), YearMonth.of(2017, 9));
        mark("Tug", YearMonth.of(2021, 5), YearMonth.of(2021, 5));
        mark("Mountain 1", YearMonth.of(2009, 11), YearMonth.of(2019, 10));
        mark("Heron", YearMonth.of(2006, 4), YearMonth.of(2016, 5));
        mark("Lapwing", YearMonth.of(2018, 6), YearMonth.of(2018, 6));
        mark("Swift", YearMonth.of(2020, 2), YearMonth.of(2020, 2));
        mark("Pipit", YearMonth.of(2006, 8), YearMonth.of(2016, 8));
        mark("Old blue", YearMonth.of(1998, 1), YearMonth.of(2018, 1));
    }

    private void day(LocalDate day, int number) {
        celsius = Integer.toString(13 + random.nextInt(8));
        int today = day.getDayOfWeek().getValue() >= 6 ? 3 : random.nextInt(3);
        clock.set(at(day, 9, random.nextInt(40)));
        if (number % 7 == 6) {
            readTheBank();
        }
        if (number == 4) {
            slip();
        }
        if (number == 9) {
            recorded(benches.registeringBottles()
                    .retire(BENCH, new RetireBottle(bottle("Old blue"), "dented at the shoulder"), submission()));
        }
        if (number == 12) {
            exchange("E", "QM 2391", 187);
            money.pay(day, "QM 2391");
        }
        if (number == 22) {
            money.bill(day, FIRST_DAY, "QM 2217", "QM 0098");
        }
        if (number == 19) {
            exchange("F", "QM 2402", 198);
        }
        for (int i = 0; i < today; i++) {
            clock.forward(Duration.ofMinutes(20 + random.nextInt(90)));
            fill(number == 16 && i == 0);
        }
    }

    private void fill(boolean brokenOff) {
        List<Bottle> inUse = benches.registeringBottles().listBottles(BENCH).stream()
                .filter(Bottle::inUse)
                .filter(bottle -> !NOT_FILLED.contains(bottle.details().name()))
                .toList();
        Bottle bottle = inUse.get(random.nextInt(inUse.size()));
        StatedPressure target = bottle.details().usualTarget();
        Reading before = reads(25 + random.nextInt(60));
        if (target == null
                || !(benches.planningAFill().plan(BENCH, bottle.id(), target, before) instanceof FillPlan plan)) {
            throw new AssertionError("every bottle of the story can be planned");
        }
        fills++;
        FillId id = new FillId("demo-fill-" + fills);
        if (fills % 4 == 3 && !brokenOff) {
            clock.forward(Duration.ofMinutes(25));
            Reading after = reads(rounded(plan.fill().finalReading()));
            RecordFill right = new RecordFill(id, bottle.id(), target, before, after, List.of());
            if (fills == SLIPPED) {
                money.slip(right, submission());
            } else {
                recorded(benches.guidingAFill().recordFill(BENCH, right, submission()));
            }
            return;
        }
        guided(id, bottle, target, before, plan, brokenOff);
    }

    private void guided(
            FillId id, Bottle bottle, StatedPressure target, Reading before, FillPlan plan, boolean brokenOff) {
        lookAt(bottle.id());
        recorded(benches.guidingAFill().start(BENCH, new StartFill(id, bottle.id(), target, before), submission()));
        int last = rounded(before.pressure().gauge());
        for (Step step : plan.fill().steps()) {
            clock.forward(Duration.ofMinutes(4 + random.nextInt(4)));
            last = Math.max(last, rounded(step.bottle().after()));
            boolean supplyRead = random.nextBoolean();
            Stage stage = new Stage(
                    supply(step.supply()),
                    reads(last),
                    null,
                    supplyRead ? reads(rounded(step.supplyReading().after())) : null);
            recorded(benches.guidingAFill().recordStage(BENCH, new RecordStage(id, stage), submission()));
            if (brokenOff) {
                clock.forward(Duration.ofMinutes(2));
                recorded(benches.guidingAFill()
                        .abandon(BENCH, new AbandonFill(id, "called to the winch"), submission()));
                return;
            }
        }
        clock.forward(Duration.ofMinutes(3));
        recorded(benches.guidingAFill().finish(BENCH, new FinishFill(id, reads(last)), submission()));
        if (fills == BILLED) {
            money.guest(id);
        }
    }

    private void readTheBank() {
        for (SupplyView view : benches.keepingTheBank().bank(BENCH).supplies()) {
            take(view.supply().id(), rounded(view.estimate()));
        }
    }

    /** A reading typed with two digits the wrong way round, and put right ten minutes later. */
    private void slip() {
        SupplyId supply = supply("B");
        int right = rounded(benches.keepingTheBank().bank(BENCH).supplies().stream()
                .filter(view -> view.supply().id().equals(supply))
                .findFirst()
                .orElseThrow()
                .estimate());
        Reading wrong = reads(right + 63);
        long seq = recorded(benches.takingReadings().take(BENCH, new TakeReading(supply, wrong), submission()));
        Reading shown = new Reading(bar(right), wrong.at(), wrong.temperature(), false, null);
        clock.forward(Duration.ofMinutes(10));
        Submission now = submission();
        recorded(benches.correctingAnEntry()
                .replace(
                        BENCH,
                        seq,
                        "digits the wrong way round",
                        new Fact.ReadingTaken(supply, shown),
                        new Submission(now.key(), now.author(), null, false)));
    }

    private void exchange(String name, String serial, int bar) {
        ExchangingASupply acts = benches.exchangingASupply();
        SupplyView lowest = benches.keepingTheBank().bank(BENCH).supplies().get(0);
        SupplyId id = lowest.supply().id();
        recorded(acts.begin(BENCH, id, by("Wren")));
        Reading left = reads(rounded(lowest.estimate()));
        recorded(acts.readResidual(BENCH, id, left, by("Wren")));
        recorded(acts.takeOff(BENCH, new RemoveSupply(id, left, "back to the supplier"), submission()));
        clock.forward(Duration.ofMinutes(15));
        recorded(acts.takeIn(BENCH, id, connecting(name, "50", serial, bar), paper(serial), submission()));
    }

    private void connect(String name, String litres, String serial, int bar) {
        recorded(benches.keepingTheBank().connect(BENCH, connecting(name, litres, serial, bar), submission()));
        recorded(benches.keepingTheBank()
                .stand(BENCH, new StandFact.SupplyDelivered(supply(name), paper(serial)), by("Wren")));
    }

    private ConnectSupply connecting(String name, String litres, String serial, int bar) {
        SupplyDetails details = new SupplyDetails(name, serial, litres(litres), bar(200));
        return new ConnectSupply(supply(name), details, reads(bar));
    }

    private Delivery paper(String serial) {
        return new Delivery(
                "L-" + serial.substring(3), LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC), "Holm Gases");
    }

    private void register(String name, String owner, String litres, int target, int bar) {
        Material material = litres.equals("2") ? Material.ALUMINIUM : Material.STEEL;
        BottleDetails details = new BottleDetails(name, owner, litres(litres), bar(200), material, bar(target));
        recorded(benches.registeringBottles()
                .register(BENCH, new RegisterBottle(bottle(name), details, reads(bar)), submission()));
    }

    /** Every question of the book answered no: nothing was to be seen. */
    private void lookAt(BottleId bottle) {
        Map<String, Answer> answers = new HashMap<>();
        benches.judgingFitness()
                .ofBottle(BENCH, bottle)
                .questions()
                .forEach(question -> answers.put(question.code(), Answer.NO));
        if (!answers.isEmpty()) {
            recorded(benches.keepingMarkings().answer(BENCH, bottle, answers, gateSubmission()));
        }
    }

    private void mark(String name, YearMonth made, YearMonth tested) {
        boolean two = name.equals("Tug") || name.equals("Swift");
        String specification = two ? "ISO 7866" : "ISO 9809-1";
        String line = specification + " PH 300 BAR " + tested.getYear() + "/"
                + String.format(Locale.ROOT, "%02d", tested.getMonthValue());
        Marking marking = new Marking(
                new StampLine(line, Convention.EUROPEAN),
                new MarkedPlate(specification, two ? WallMaterial.ALUMINIUM : WallMaterial.STEEL, bar(300), made),
                TestMark.of(tested.getYear(), tested.getMonthValue()),
                Service.oxygen("G 3/4"),
                null,
                null);
        recorded(benches.keepingMarkings().mark(BENCH, bottle(name), marking, gateSubmission()));
    }

    /** Who looks and enters markings is drawn apart, and takes no time. */
    private Submission gateSubmission() {
        keys++;
        String author = PEOPLE.get(lookers.nextInt(PEOPLE.size()));
        return new Submission(new EntryKey("story-" + keys), author, clock.instant(), false);
    }

    private void take(CylinderId cylinder, int bar) {
        recorded(benches.takingReadings().take(BENCH, new TakeReading(cylinder, reads(bar)), submission()));
    }

    private static BottleId bottle(String name) {
        return new BottleId("demo-bottle-" + name.toLowerCase(Locale.ROOT).replace(' ', '-'));
    }

    private static SupplyId supply(String name) {
        return new SupplyId("demo-supply-" + name);
    }

    private Submission submission() {
        return by(PEOPLE.get(random.nextInt(PEOPLE.size())));
    }

    /** Takes nothing from the chance that makes the rest of the story. */
    private Submission by(String author) {
        keys++;
        clock.forward(Duration.ofSeconds(20));
        return new Submission(new EntryKey("story-" + keys), author, clock.instant(), false);
    }

    private static long recorded(Recording recording) {
        if (recording instanceof Recording.Recorded recorded) {
            return recorded.entries().get(0).seq();
        }
        throw new AssertionError(recording.toString());
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (StoredEntry stored : benches.journal().listFrom(BENCH, 1)) {
            long place = stored.entry().fact() instanceof Fact.EntryCorrected correction ? correction.corrected() : 0;
            lines.add(FactLines.write(stored.entry(), place));
        }
        return lines;
    }

    private Reading reads(int bar) {
        return new Reading(bar(bar), clock.instant(), temperature(celsius), false, null);
    }

    private static StatedTemperature temperature(String celsius) {
        return StatedTemperature.of(celsius, TemperatureUnit.CELSIUS);
    }

    static StatedPressure bar(int value) {
        return new StatedPressure(BigDecimal.valueOf(value), PressureUnit.BAR);
    }

    private static WaterVolume litres(String value) {
        return WaterVolume.stamped(StatedVolume.of(value, VolumeUnit.LITRE));
    }

    private static int rounded(GaugePressure pressure) {
        return (int) Math.round(pressure.toBar());
    }

    private static Instant at(LocalDate day, int hour, int minute) {
        return day.atTime(LocalTime.of(hour, minute)).toInstant(ZoneOffset.UTC);
    }
}
