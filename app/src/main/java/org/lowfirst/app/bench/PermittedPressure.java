package org.lowfirst.app.bench;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.stream.Stream;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BottleId;

/**
 * How much a bottle may hold: the lowest of the pressure limits of the rule book in force, and the marked pressure where the book
 * has none for it because its marking is not known. Gate, plan, the steps of a fill and stop-and-settle ask here and nowhere else.
 */
final class PermittedPressure {

    private final GateGas gate;
    private final ZoneId zone;

    /** @param zone where the bench stands, which tells what day it is */
    PermittedPressure(GateGas gate, ZoneId zone) {
        this.gate = gate;
        this.zone = zone;
    }

    /** As a settled gauge reading at the reference temperature of the bench's rule set. */
    GaugePressure atReference(Bench bench, BottleId bottle, Instant when) {
        return at(bench, bottle, when, reference(bench));
    }

    /** What the gauge may show on a bench as warm as this: no more there, and no more once at the reference temperature. */
    GaugePressure onTheBench(Bench bench, BottleId bottle, Instant when, Temperature temperature) {
        return Stream.of(atReference(bench, bottle, when), at(bench, bottle, when, temperature))
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    private GaugePressure at(Bench bench, BottleId bottle, Instant when, Temperature temperature) {
        return gate.findMost(bench, bottle, LocalDate.ofInstant(when, zone), temperature)
                .orElseGet(() -> gate.settledAt(
                        bench,
                        bench.getBottle(bottle).details().servicePressure().gauge(),
                        reference(bench),
                        temperature));
    }

    private static Temperature reference(Bench bench) {
        return bench.settings().rules().figures().referenceTemperature().temperature();
    }
}
