package org.lowfirst.app.bench;

import java.util.Optional;
import org.lowfirst.app.money.GasMeter;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Volume;
import org.lowfirst.station.Reading;

/** The gas count of the benches, for those who charge by it. */
record CountedGas(GasCount count) implements GasMeter {

    @Override
    public Optional<Amount> findContents(Volume waterVolume, Reading reading, AbsolutePressure ambient) {
        return count.findContents(waterVolume, reading, ambient);
    }

    @Override
    public Volume free(Amount amount, ReferenceCondition condition) {
        return count.gas().freeVolume(amount, condition);
    }
}
