package org.lowfirst.app.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Attest;
import org.lowfirst.station.Bench;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.PersonDetails;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Role;
import org.lowfirst.station.Supply;
import org.lowfirst.station.Units;
import org.lowfirst.station.WaterVolume;

/** What a bench has now, row by row: bottles, supplies, people. */
final class BenchTables {

    private final Bench bench;
    private final Units units;

    BenchTables(Bench bench) {
        this.bench = bench;
        this.units = bench.settings().units();
    }

    /** In the order registered; the columns are those of {@link BottleColumn}, the reading left out. */
    List<List<String>> bottles() {
        return bench.listBottles().stream().map(this::bottle).toList();
    }

    private List<String> bottle(Bottle bottle) {
        BottleDetails details = bottle.details();
        WaterVolume volume = details.waterVolume();
        return new Cells(units)
                .text(bottle.id().value())
                .text(details.name())
                .text(details.owner())
                .volume(volume.stated())
                .text(lower(volume.basis()))
                .text(volume.source())
                .pressure(details.servicePressure())
                .text(details.material() == null ? "" : lower(details.material()))
                .pressure(details.usualTarget())
                .yes(!bottle.inUse())
                .row();
    }

    /** In the order connected. */
    List<List<String>> supplies() {
        return bench.supplies().values().stream().map(this::supply).toList();
    }

    private List<String> supply(Supply supply) {
        Reading latest = supply.latest();
        return new Cells(units)
                .text(supply.id().value())
                .text(supply.details().name())
                .text(supply.details().serial())
                .volume(supply.details().waterVolume().stated())
                .text(lower(supply.details().waterVolume().basis()))
                .pressure(supply.details().servicePressure())
                .yes(supply.connected())
                .time(latest.at())
                .reading(latest)
                .row();
    }

    /** Those to choose from first, then whoever was described beside them. */
    List<List<String>> people() {
        List<String> names = new ArrayList<>(bench.settings().people());
        bench.areas().crew().described().keySet().stream()
                .filter(name -> !names.contains(name))
                .forEach(names::add);
        return names.stream().map(this::person).toList();
    }

    private List<String> person(String name) {
        PersonDetails details = bench.areas().crew().described().get(name);
        return new Cells(units)
                .text(name)
                .text(details == null ? "" : roles(details))
                .text(details == null ? "" : lastDay(details.training()))
                .text(details == null ? "" : lastDay(details.checkOut()))
                .row();
    }

    private static String roles(PersonDetails details) {
        return details.roles().stream().map((Role role) -> lower(role)).collect(Collectors.joining(" "));
    }

    private static String lastDay(@Nullable Attest attest) {
        return attest == null ? "" : attest.lastDay().toString();
    }

    private static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
