package org.lowfirst.app.virtual;

import java.util.List;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.station.StatedPressure;

/**
 * One fill as it really was.
 *
 * @param order what was entered before it
 * @param found true pressure of the bottle when it came
 * @param room the air when the fill began
 * @param roomAtEnd the air when the bottle was read last
 * @param stages in order
 * @param end true pressure when it was read last
 * @param settled true pressure once as warm as the room then was
 * @param endShown what was entered last
 */
public record FillSeen(
        FillOrder order,
        GaugePressure found,
        Temperature room,
        Temperature roomAtEnd,
        List<StageSeen> stages,
        GaugePressure end,
        GaugePressure settled,
        StatedPressure endShown) {

    public FillSeen {
        stages = List.copyOf(stages);
    }
}
