package org.lowfirst.app.gas;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.file.TypedUnits;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Parsed;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.warm.AtOtherTemperatures;

/**
 * A question about a reading, understood, with the units it was typed in.
 *
 * @param readsAt temperatures to read at, in the order asked for
 * @param volume water volume; null when contents are not asked for
 * @param rated service pressure; null when not known
 */
record TypedReading(
        Parsed.Read<GaugePressure> reading,
        Parsed.Read<Temperature> at,
        List<Parsed.Read<Temperature>> readsAt,
        Parsed.@Nullable Read<Volume> volume,
        Parsed.@Nullable Read<GaugePressure> rated,
        ReferenceRule rules) {

    TypedReading {
        readsAt = List.copyOf(readsAt);
    }

    /** Condition at which free gas counts. */
    ReferenceCondition condition() {
        return rules == ReferenceRule.US ? ReferenceCondition.US_70F_1ATM : ReferenceCondition.ISO_15C_1ATM;
    }

    /** The units in which the answer is given: those of the reading and of its temperature. */
    ShownUnits units() {
        return new ShownUnits(TypedUnits.pressure(reading.unit()), TypedUnits.temperature(at.unit()), VolumeUnit.LITRE);
    }

    PressureUnit pressureUnit() {
        return TypedUnits.pressure(reading.unit());
    }

    AtOtherTemperatures asked() {
        return new AtOtherTemperatures(
                reading.value(),
                at.value(),
                StandardAtmosphere.PRESSURE,
                readsAt.stream().map(Parsed.Read::value).toList(),
                volume == null ? null : volume.value(),
                condition(),
                rated == null ? null : new AtOtherTemperatures.Rating(rated.value(), rules));
    }
}
