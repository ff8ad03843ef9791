package org.lowfirst.app.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Judging;
import org.lowfirst.station.rules.PressureAt;
import org.lowfirst.station.rules.PressureLimit;

/** The same gas at the temperatures a rule book speaks of. Real gas, settled; the walls keep their volume. */
final class GateGas {

    private static final Volume ANY = Volume.ofLitres(1.0);

    private final GasCount count;

    GateGas(GasCount count) {
        this.count = count;
    }

    /**
     * Contents as settled pressures at the temperatures of the book in force; those no gas is computed for are left out, and
     * then the rule that needs them refuses.
     *
     * @param shown settled gauge reading
     * @param at temperature it is stated at
     */
    List<PressureAt> atBookTemperatures(Bench bench, LocalDate day, GaugePressure shown, Temperature at) {
        List<PressureAt> stated = new ArrayList<>();
        for (Temperature temperature : Judging.book(bench).temperatures(day)) {
            shift(shown, at, temperature, ambient(bench))
                    .ifPresent(pressure -> stated.add(new PressureAt(pressure, temperature)));
        }
        return stated;
    }

    /**
     * The highest settled gauge reading at a temperature that keeps all pressure limits of a bottle; empty when it has none.
     */
    Optional<GaugePressure> findMost(Bench bench, BottleId bottle, LocalDate day, Temperature at) {
        return Judging.judge(bench, bottle, null, day, List.of()).limits().stream()
                .map(PressureLimit::most)
                .flatMap(most -> shift(most.pressure(), most.temperature(), at, ambient(bench)).stream())
                .min(Comparator.naturalOrder());
    }

    /** What a settled reading at one temperature is at another; the same where that is not computed. */
    GaugePressure settledAt(Bench bench, GaugePressure shown, Temperature from, Temperature to) {
        return shift(shown, from, to, ambient(bench)).orElse(shown);
    }

    private Optional<GaugePressure> shift(
            GaugePressure shown, Temperature from, Temperature to, AbsolutePressure ambient) {
        if (from.equals(to)) {
            return Optional.of(shown);
        }
        return count.findContents(ANY, shown, from, ambient)
                .flatMap(contents -> count.findShown(ANY, contents, to, ambient));
    }

    private static AbsolutePressure ambient(Bench bench) {
        return bench.settings().surroundings().ambient().absolute();
    }
}
