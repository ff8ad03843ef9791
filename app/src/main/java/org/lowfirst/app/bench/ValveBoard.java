package org.lowfirst.app.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.ValveState.Setting;
import org.lowfirst.app.words.Wording;
import org.lowfirst.station.SupplyId;

/**
 * The valves of a bench and how each stands once a step is done.
 *
 * @param bank the bank at the fill's temperature
 */
record ValveBoard(BankNow bank, Wording wording) {

    /**
     * Bottle first, then transfer, then the supplies in rank order.
     *
     * @param worked the supply the stage is on, null before and after the stages
     */
    List<ValveState> after(Phase phase, @Nullable SupplyId worked) {
        List<ValveState> valves = new ArrayList<>();
        valves.add(new ValveState(
                new Valve.OfBottle(),
                wording.text("valve.bottle", Map.of()),
                bottle(phase),
                phase == Phase.OPEN_BOTTLE || phase == Phase.SHUT_BOTTLE));
        valves.add(new ValveState(
                new Valve.Transfer(),
                wording.text("valve.transfer", Map.of()),
                transfer(phase),
                phase == Phase.CRACK_TRANSFER || phase == Phase.SHUT_TRANSFER));
        for (BankNow.Shown shown : bank.supplies()) {
            boolean here = shown.supply().id().equals(worked);
            valves.add(new ValveState(
                    new Valve.OfSupply(shown.supply().id()),
                    wording.text(
                            "valve.supply",
                            Map.of("supply", shown.supply().details().name())),
                    here ? supply(phase) : Setting.SHUT,
                    here && (phase == Phase.OPEN_SUPPLY || phase == Phase.SHUT_SUPPLY)));
        }
        return valves;
    }

    private static Setting bottle(Phase phase) {
        return switch (phase) {
            case CONNECT, SHUT_BOTTLE, VENT_HOSE, FINISH -> Setting.SHUT;
            case OPEN_BOTTLE, OPEN_SUPPLY, CRACK_TRANSFER, WATCH, SHUT_TRANSFER, SHUT_SUPPLY, ENTER_READING ->
                Setting.OPEN;
        };
    }

    private static Setting transfer(Phase phase) {
        return phase == Phase.CRACK_TRANSFER || phase == Phase.WATCH ? Setting.CRACKED : Setting.SHUT;
    }

    private static Setting supply(Phase phase) {
        return switch (phase) {
            case OPEN_SUPPLY, CRACK_TRANSFER, WATCH, SHUT_TRANSFER -> Setting.OPEN;
            case CONNECT, OPEN_BOTTLE, SHUT_SUPPLY, ENTER_READING, SHUT_BOTTLE, VENT_HOSE, FINISH -> Setting.SHUT;
        };
    }
}
