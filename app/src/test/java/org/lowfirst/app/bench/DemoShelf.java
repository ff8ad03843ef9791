package org.lowfirst.app.bench;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.station.Attest;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.Command.RegisterBottle;
import org.lowfirst.station.MarkedPlate;
import org.lowfirst.station.Marking;
import org.lowfirst.station.Material;
import org.lowfirst.station.PersonDetails;
import org.lowfirst.station.Role;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.Settings;
import org.lowfirst.station.StampLine;
import org.lowfirst.station.StatedAbsolutePressure;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.Surroundings;
import org.lowfirst.station.Units;
import org.lowfirst.station.rules.Service;
import org.lowfirst.station.rules.TestMark;
import org.lowfirst.station.rules.WallMaterial;
import org.lowfirst.station.stamp.Convention;

/** The people and bottles in the story of the demo bench. */
final class DemoShelf {

    /** Past its test since the story's last month but one. */
    static final String PAST_TEST = "Heron";

    private static final List<String> PEOPLE = List.of("Wren", "Tobias", "Ingrid", "Oona", "Ruben");

    private final DemoPen pen;

    DemoShelf(DemoPen pen) {
        this.pen = pen;
    }

    void open() {
        Settings settings = new Settings(
                "Quillmere Soaring (demo)",
                Units.METRIC,
                RuleSet.EU,
                new Surroundings(
                        DemoPen.temperature("17"),
                        StatedAbsolutePressure.of("101.3", PressureUnit.KILOPASCAL),
                        StatedVolume.of("0.05", VolumeUnit.LITRE)),
                DemoPen.bar(200),
                PEOPLE);
        DemoPen.recorded(pen.benches.openingABench().open(DemoPen.BENCH, settings, pen.by("Wren")));
        LocalDate end = LoadingTheDemoBench.DAY_AFTER;
        describe("Wren", Set.of(Role.RESPONSIBLE, Role.FILLER), end.plusMonths(14));
        describe("Tobias", Set.of(Role.FILLER), end.plusDays(26));
        describe("Ingrid", Set.of(Role.FILLER, Role.TREASURER), end.plusMonths(7));
        describe("Oona", Set.of(Role.SUPERVISED), null);
        describe("Ruben", Set.of(Role.MEMBER), null);
    }

    private void describe(String name, Set<Role> roles, @Nullable LocalDate checkedUntil) {
        Attest check = checkedUntil == null ? null : new Attest(checkedUntil, "Wren");
        DemoPen.recorded(pen.benches
                .keepingPeople()
                .describe(DemoPen.BENCH, new PersonDetails(name, roles, null, check), pen.by("Wren")));
    }

    void fill() {
        YearMonth k1 = YearMonth.of(2014, 3);
        YearMonth k2 = YearMonth.of(2017, 9);
        bottle("K1 front", "Club", "5", 180, 64, k1, YearMonth.of(2024, 2));
        bottle("K1 rear", "Club", "5", 180, 71, k1, YearMonth.of(2024, 2));
        bottle("K2 front", "Club", "5", 180, 48, k2, k2);
        bottle("K2 rear", "Club", "5", 180, 55, k2, k2);
        bottle("Tug", "Club", "2", 150, 90, YearMonth.of(2021, 5), YearMonth.of(2021, 5));
        bottle("Mountain 1", "Club", "10", 180, 82, YearMonth.of(2009, 11), YearMonth.of(2019, 10));
        bottle(PAST_TEST, "Ingrid", "3", 150, 40, YearMonth.of(2006, 4), YearMonth.of(2016, 5));
        bottle("Lapwing", "Tobias", "3", 150, 60, YearMonth.of(2018, 6), YearMonth.of(2018, 6));
        bottle("Swift", "Wren", "2", 150, 35, YearMonth.of(2020, 2), YearMonth.of(2020, 2));
        bottle("Dotterel", "Oona", "2", 150, 52, YearMonth.of(2022, 3), YearMonth.of(2022, 3));
        bottle("Pipit", "Ruben", "3", 150, 77, YearMonth.of(2006, 8), YearMonth.of(2016, 8));
        bottle("Old blue", "Club", "5", 150, 30, YearMonth.of(1998, 1), YearMonth.of(2018, 1));
    }

    private void bottle(
            String name, String owner, String litres, int target, int bar, YearMonth made, YearMonth tested) {
        boolean light = litres.equals("2");
        BottleDetails details = new BottleDetails(
                name,
                owner,
                DemoPen.litres(litres),
                DemoPen.bar(200),
                light ? Material.ALUMINIUM : Material.STEEL,
                DemoPen.bar(target));
        DemoPen.recorded(pen.benches
                .registeringBottles()
                .register(
                        DemoPen.BENCH,
                        new RegisterBottle(DemoPen.bottle(name), details, pen.reads(bar)),
                        pen.submission()));
        DemoPen.recorded(pen.benches
                .keepingMarkings()
                .mark(
                        DemoPen.BENCH,
                        DemoPen.bottle(name),
                        marking(light ? "ISO 7866" : "ISO 9809-1", litres, light, made, tested),
                        pen.submission()));
    }

    private static Marking marking(
            String specification, String litres, boolean light, YearMonth made, YearMonth tested) {
        String line = String.format(
                Locale.ROOT,
                "%s PH 300 BAR %s,0 L %d/%02d",
                specification,
                litres,
                tested.getYear(),
                tested.getMonthValue());
        return new Marking(
                new StampLine(line, Convention.EUROPEAN),
                new MarkedPlate(
                        specification, light ? WallMaterial.ALUMINIUM : WallMaterial.STEEL, DemoPen.bar(300), made),
                TestMark.of(tested.getYear(), tested.getMonthValue()),
                Service.oxygen("G 3/4"),
                null,
                null);
    }
}
