package org.lowfirst.app.virtual;

import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.bench.IdSource;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.bench.Submission;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Mass;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.Volume;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.planning.contents.ContentsAssumptions;
import org.lowfirst.planning.contents.Gauge;
import org.lowfirst.planning.contents.GaugeAccuracy;
import org.lowfirst.planning.contents.GaugeScale;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.ConnectSupply;
import org.lowfirst.station.Command.RegisterBottle;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.MarkedPlate;
import org.lowfirst.station.Marking;
import org.lowfirst.station.Reading;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.Settings;
import org.lowfirst.station.StatedAbsolutePressure;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.Surroundings;
import org.lowfirst.station.Units;
import org.lowfirst.station.WaterVolume;
import org.lowfirst.station.rules.Service;
import org.lowfirst.station.rules.TestMark;
import org.lowfirst.transfer.warm.WallMaterial;
import org.lowfirst.transfer.warm.WallOrigin;
import org.lowfirst.transfer.warm.Walls;
import org.lowfirst.transfer.warm.WarmVessel;

/**
 * A metric bench drawn by chance: supplies A, B, ... of 50 L in steel, bottles of 5 L in aluminium, a gauge for the supplies and
 * one for the bottle. True volumes scatter about the stamped ones as the estimates assume; walls weigh 0.8 to 1.2 of what their
 * marking asks for.
 *
 * @param onSupplies the gauge every supply is read on
 * @param onBottle the gauge every bottle is read on
 */
public record InventedBench(
        BenchId id,
        Settings settings,
        List<InventedSupply> supplies,
        List<InventedBottle> bottles,
        VirtualGauge onSupplies,
        VirtualGauge onBottle) {

    public static final String SOMEBODY = "Iris Holm";

    private static final String SUPPLY_LITRES = "50";
    private static final String BOTTLE_LITRES = "5";
    private static final StatedPressure SERVICE = StatedPressure.of("200", PressureUnit.BAR);
    private static final StatedPressure TEST = StatedPressure.of("300", PressureUnit.BAR);
    private static final int AGE_A = 5;
    private static final StatedPressure TARGET = StatedPressure.of("150", PressureUnit.BAR);

    public InventedBench {
        supplies = List.copyOf(supplies);
        bottles = List.copyOf(bottles);
    }

    /**
     * @param true_bar true settled pressure of each supply [bar]
     * @param leaksPerDay share of its contents that each supply loses in a day
     * @param bottleCount how many bottles there are, M-01 and so on
     */
    public static InventedBench draw(
            BenchId id, List<Double> true_bar, List<Double> leaksPerDay, int bottleCount, SplittableRandom chance) {
        List<InventedSupply> supplies = new ArrayList<>();
        for (int i = 0; i < true_bar.size(); i++) {
            String name = Character.toString((char) ('A' + i));
            WarmVessel vessel = vessel(WallMaterial.STEEL, litres(SUPPLY_LITRES), chance);
            supplies.add(new InventedSupply(
                    new SupplyDetails(name, null, litres(SUPPLY_LITRES), SERVICE),
                    new CylinderTruth(name, vessel, GaugePressure.ofBar(true_bar.get(i)), leaksPerDay.get(i))));
        }
        List<InventedBottle> bottles = new ArrayList<>();
        for (int i = 1; i <= bottleCount; i++) {
            bottles.add(new InventedBottle(
                    new BottleDetails("M-0" + i, "Nora Vale", litres(BOTTLE_LITRES), SERVICE, null, TARGET),
                    vessel(WallMaterial.ALUMINIUM, litres(BOTTLE_LITRES), chance)));
        }
        VirtualGauge onSupplies = VirtualGauge.draw(gauge("supplies", 315), chance);
        return new InventedBench(
                id, settings(id), supplies, bottles, onSupplies, VirtualGauge.draw(gauge("bottle", 250), chance));
    }

    /** Class 1.6, read to a bar. */
    private static Gauge gauge(String name, double full_bar) {
        return Gauge.of(name, GaugeScale.of(full_bar, 1, PressureUnit.BAR), new GaugeAccuracy.OfFullScale(1.6));
    }

    private static Settings settings(BenchId id) {
        Surroundings surroundings = new Surroundings(
                StatedTemperature.of("18", TemperatureUnit.CELSIUS),
                StatedAbsolutePressure.STANDARD,
                StatedVolume.of("0", VolumeUnit.LITRE));
        return new Settings(
                "Invented bench " + id.value(), Units.METRIC, RuleSet.EU, surroundings, SERVICE, List.of(SOMEBODY));
    }

    private static WaterVolume litres(String litres) {
        return WaterVolume.stamped(StatedVolume.of(litres, VolumeUnit.LITRE));
    }

    private static WarmVessel vessel(WallMaterial material, WaterVolume marked, SplittableRandom chance) {
        double stamped = ContentsAssumptions.standard().volumes().stamped();
        double litres = marked.stated().volume().toLitres() * (1.0 + stamped * chance.nextGaussian());
        Volume water = Volume.ofLitres(litres);
        double share = 0.8 + 0.4 * chance.nextDouble();
        Mass wall = new Mass(
                share * Walls.assumedMass(material, water, SERVICE.gauge()).kilograms());
        return new WarmVessel(water, Walls.ofMass(material, water, wall, WallOrigin.STATED));
    }

    public List<CylinderTruth> truths() {
        return supplies.stream().map(InventedSupply::truth).toList();
    }

    /** Opens the bench and enters supplies and bottles, each supply read once by {@code person}. */
    public void enter(Benches benches, VirtualBench truth, VirtualPerson person, IdSource ids) {
        StatedTemperature thermometer = person.readThermometer(TemperatureUnit.CELSIUS);
        recorded(benches.openingABench().open(id, settings, submission(ids)));
        for (InventedSupply supply : supplies) {
            String name = supply.details().name();
            Reading reading = new Reading(person.readSupply(name), truth.now(), thermometer, false, null);
            ConnectSupply command = new ConnectSupply(new SupplyId("s-" + name), supply.details(), reading);
            recorded(benches.keepingTheBank().connect(id, command, submission(ids)));
        }
        for (InventedBottle bottle : bottles) {
            BottleId bottleId = new BottleId("b-" + bottle.details().name());
            RegisterBottle command = new RegisterBottle(bottleId, bottle.details(), null);
            recorded(benches.registeringBottles().register(id, command, submission(ids)));
            recorded(benches.keepingMarkings().mark(id, bottleId, marking(truth.now()), submission(ids)));
        }
    }

    /** In aluminium, five years old, tested when it was made. */
    private static Marking marking(Instant now) {
        YearMonth made = YearMonth.from(now.atZone(ZoneOffset.UTC)).minusYears(AGE_A);
        return new Marking(
                null,
                new MarkedPlate("ISO 7866", org.lowfirst.station.rules.WallMaterial.ALUMINIUM, TEST, made),
                TestMark.of(made.getYear(), made.getMonthValue()),
                Service.oxygen("G 3/4"),
                null,
                null);
    }

    private static Submission submission(IdSource ids) {
        return Submission.now(new EntryKey(ids.next()), SOMEBODY);
    }

    private static void recorded(Recording recording) {
        if (!(recording instanceof Recording.Recorded)) {
            throw new IllegalStateException("Not recorded: " + recording);
        }
    }
}
