package org.lowfirst.app.honest;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.warm.AtOtherTemperatures;
import org.lowfirst.planning.warm.AtOtherTemperatures.Rating;
import org.lowfirst.planning.warm.OtherTemperatures;
import org.lowfirst.planning.warm.SameGas;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.SupplyId;

/** Reads the same gas at other temperatures: what the gauge shows, what is inside, how full that is. Records nothing. */
public final class AskingOtherTemperatures {

    private final BenchSource source;
    private final Problems problems;

    public AskingOtherTemperatures(BenchSource source, Locale locale) {
        this.source = source;
        this.problems = new Problems(Wording.of(AskingOtherTemperatures.class, locale));
    }

    /**
     * @param cylinder the cylinder, for contents and per cent full; null for readings only
     * @param reading what the gauge shows
     * @param gas temperature of the gas behind it
     * @param at temperatures to read it at; may be empty
     * @throws java.util.NoSuchElementException when there is no such bench or cylinder
     */
    public Outcome<SameGas> ask(
            BenchId id, @Nullable CylinderId cylinder, GaugePressure reading, Temperature gas, List<Temperature> at) {
        Bench bench = source.getStanding(id).bench();
        Volume water = null;
        Rating rating = null;
        if (cylinder instanceof SupplyId supply) {
            SupplyDetails details = bench.getSupply(supply).details();
            water = details.waterVolume().stated().volume();
            rating = new Rating(details.servicePressure().gauge(), BenchUnits.rule(bench.settings()));
        } else if (cylinder instanceof BottleId bottle) {
            BottleDetails details = bench.getBottle(bottle).details();
            water = details.waterVolume().stated().volume();
            rating = new Rating(details.servicePressure().gauge(), BenchUnits.rule(bench.settings()));
        }
        AtOtherTemperatures asked = new AtOtherTemperatures(
                reading,
                gas,
                bench.settings().surroundings().ambient().absolute(),
                at,
                water,
                BenchUnits.free(bench.settings()),
                rating);
        return problems.outcome(OtherTemperatures.read(asked, source.gas()), BenchUnits.shown(bench.settings()));
    }
}
