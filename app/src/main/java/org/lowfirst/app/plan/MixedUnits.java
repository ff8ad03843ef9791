package org.lowfirst.app.plan;

import java.util.List;
import org.lowfirst.app.file.Kind;
import org.lowfirst.app.file.Measure;
import org.lowfirst.app.file.PlausibleRange;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.sheet.Numerals;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Parsed;

/** Warns of a reading in psi among readings in bar, or the other way round, when either could be meant. */
final class MixedUnits {

    private final PlausibleRange<GaugePressure> range = PlausibleRange.of("reading", Kind.PRESSURE);
    private final Problems problems;

    MixedUnits(Problems problems) {
        this.problems = problems;
    }

    /**
     * @param first a reading whose unit the others are held against
     * @param lines what to look at
     */
    void warn(Measure<GaugePressure> first, List<? extends CylinderReader.Line> lines) {
        for (CylinderReader.Line line : lines) {
            Measure<GaugePressure> reading = line.reading();
            String other = Numerals.grouped(reading.number()) + " " + first.unit();
            if (isPsi(reading) != isPsi(first) && reading.number() > 0.0 && couldBe(other)) {
                problems.warning(
                        reading.place(),
                        "The reading of " + line.label() + " (" + reading.written() + ") is in " + reading.unit()
                                + ", that of the first supply in " + first.unit() + ". Maybe " + other + " was meant.");
            }
        }
    }

    private boolean couldBe(String written) {
        return Kind.PRESSURE.read().apply(written) instanceof Parsed.Read<GaugePressure> read
                && range.contains(read.value());
    }

    private static boolean isPsi(Measure<GaugePressure> reading) {
        return reading.unit().startsWith("psi");
    }
}
