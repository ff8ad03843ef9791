package org.lowfirst.app.flight;

import java.util.ArrayList;
import java.util.List;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.flight.BottleOnBoard;
import org.lowfirst.planning.warm.AtOtherTemperatures;
import org.lowfirst.planning.warm.OtherTemperatures;
import org.lowfirst.planning.warm.SameGas;
import org.lowfirst.transfer.warm.Answer;

/** What a full bottle shows at today's temperature: a marked pressure counts at the reference temperature only. */
final class FullBottle {

    private FullBottle() {}

    /** One reading for each bottle, in the order of the file. */
    static List<GaugePressure> of(FlightFile file, EquationOfState gas) {
        List<GaugePressure> full = new ArrayList<>();
        for (BottleOnBoard bottle : file.request().bottles()) {
            Answer<SameGas> answer = OtherTemperatures.read(
                    AtOtherTemperatures.of(bottle.reading(), file.request().temperature())
                            .rated(bottle.servicePressure(), file.rules().reference()),
                    gas);
            SameGas.Fullness fullness = answer instanceof Answer.Given<SameGas> given
                    ? given.value().full()
                    : null;
            full.add(fullness == null ? bottle.servicePressure() : fullness.full());
        }
        return full;
    }
}
