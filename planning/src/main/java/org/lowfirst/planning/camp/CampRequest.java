package org.lowfirst.planning.camp;

import java.util.List;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.study.BottleUse;

/**
 * A camp and the question how many supplies to take.
 *
 * @param conditions at the camp
 * @param supplyVolume water volume of each supply
 * @param supplyReading settled reading of each at the camp's temperature
 * @param bottles the bottles of the camp, with their shares
 * @param days length of the camp
 * @param pilots people who fly
 * @param fillsPerPilotPerDay mean number of fills of one pilot on a day that is flown
 * @param flyableShare chance that a day is flown, from 0 to 1
 * @param chanceWanted chance wanted that every bottle can be finished, below 1
 * @param seed where chance starts
 */
public record CampRequest(
        Conditions conditions,
        Volume supplyVolume,
        GaugePressure supplyReading,
        List<BottleUse> bottles,
        int days,
        int pilots,
        double fillsPerPilotPerDay,
        double flyableShare,
        double chanceWanted,
        long seed) {

    public CampRequest {
        bottles = List.copyOf(bottles);
    }
}
