package org.lowfirst.planning.warm;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.Evaluated;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.warm.AtOtherTemperatures.Rating;
import org.lowfirst.transfer.warm.Answer;
import org.lowfirst.transfer.warm.WarmRefusal;

/**
 * Any reading at any temperature: in a rigid cylinder the density stays, so it is worked out once and read at each temperature.
 *
 * <p>Accuracy: docs/validation.md, rows "settled pressure".
 */
public final class OtherTemperatures {

    private OtherTemperatures() {}

    /** Reads the same gas at other temperatures. */
    public static Answer<SameGas> read(AtOtherTemperatures asked, EquationOfState gas) {
        WarmRefusal wrong = wrong(asked);
        if (wrong != null) {
            return Answer.refused(wrong);
        }
        Evaluated<Density> density = gas.density(asked.reading().toAbsolute(asked.ambient()), asked.gas());
        if (!(density instanceof Evaluated.Value<Density> found)) {
            return Answer.refused(WarmRefusal.of(density));
        }
        List<ReadingAt> readings = new ArrayList<>();
        for (Temperature temperature : asked.at()) {
            Evaluated<AbsolutePressure> pressure = gas.pressure(found.value(), temperature);
            if (!(pressure instanceof Evaluated.Value<AbsolutePressure> there)) {
                return Answer.refused(WarmRefusal.of(pressure));
            }
            readings.add(new ReadingAt(temperature, there.value().toGauge(asked.ambient())));
        }
        return Answer.of(new SameGas(
                found.value(), readings, contents(asked, gas, found.value()), fullness(asked, gas, found.value())));
    }

    private static @Nullable WarmRefusal wrong(AtOtherTemperatures asked) {
        WarmRefusal wrong = WarmCheck.first(
                WarmCheck.reading("reading", asked.reading()),
                WarmCheck.gas("temperature of the gas", asked.gas()),
                asked.waterVolume() == null ? null : WarmCheck.volume("water volume", asked.waterVolume()),
                asked.rating() == null
                        ? null
                        : WarmCheck.rating("service pressure", asked.rating().servicePressure()));
        for (Temperature temperature : asked.at()) {
            wrong = WarmCheck.first(wrong, WarmCheck.gas("temperature to read at", temperature));
        }
        return wrong;
    }

    private static SameGas.@Nullable Contents contents(
            AtOtherTemperatures asked, EquationOfState gas, Density density) {
        Volume water = asked.waterVolume();
        if (water == null) {
            return null;
        }
        Amount amount = density.amountIn(water);
        return new SameGas.Contents(
                amount, gas.massOf(amount), gas.freeVolume(amount, asked.condition()), asked.condition());
    }

    private static SameGas.@Nullable Fullness fullness(
            AtOtherTemperatures asked, EquationOfState gas, Density density) {
        Rating rating = asked.rating();
        if (rating == null) {
            return null;
        }
        Temperature reference = rating.rule().temperature();
        Density rated = rated(gas, rating.servicePressure(), reference, asked.ambient());
        GaugePressure atReference =
                gas.pressure(density, reference).orElseThrow().toGauge(asked.ambient());
        GaugePressure full = gas.pressure(rated, asked.gas()).orElseThrow().toGauge(asked.ambient());
        return new SameGas.Fullness(
                100.0 * density.molesPerCubicMetre() / rated.molesPerCubicMetre(), atReference, full);
    }

    /** Density of gas that reads the service pressure at the reference temperature. */
    static Density rated(
            EquationOfState gas, GaugePressure servicePressure, Temperature reference, AbsolutePressure ambient) {
        return gas.density(servicePressure.toAbsolute(ambient), reference).orElseThrow();
    }
}
