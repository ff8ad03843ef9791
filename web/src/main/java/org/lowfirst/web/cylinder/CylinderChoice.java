package org.lowfirst.web.cylinder;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.Supply;
import org.lowfirst.station.SupplyId;
import org.lowfirst.web.workplace.BenchNow;

/**
 * A supply of the bank or a bottle in use, to choose from in a form.
 *
 * @param value its text in the form
 * @param name what people call it, e.g. "Supply A"
 */
public record CylinderChoice(String value, String name) {

    private static final String OF_SUPPLY = "s.";
    private static final String OF_BOTTLE = "b.";

    /** The bank, then the bottles in use. */
    public static List<CylinderChoice> list(BenchNow now) {
        List<CylinderChoice> choices = new ArrayList<>();
        now.bench().bank().forEach(supply -> choices.add(of(now, supply.id())));
        now.bench().listBottles().stream().filter(Bottle::inUse).forEach(bottle -> choices.add(of(now, bottle.id())));
        return choices;
    }

    public static CylinderChoice of(BenchNow now, CylinderId id) {
        String name = id instanceof SupplyId supply
                ? now.words()
                        .of(
                                "cylinder.supply",
                                now.bench().getSupply(supply).details().name())
                : now.words()
                        .of(
                                "cylinder.bottle",
                                now.bench().getBottle((BottleId) id).details().name());
        return new CylinderChoice(value(id), name);
    }

    public static String value(CylinderId id) {
        return (id instanceof SupplyId ? OF_SUPPLY : OF_BOTTLE) + id.value();
    }

    /** The cylinder a form names; nothing when it names none of this bench. */
    public static Optional<CylinderId> find(BenchNow now, String value) {
        Optional<CylinderId> supply = now.bench().supplies().values().stream()
                .map(Supply::id)
                .filter(id -> value(id).equals(value))
                .map(CylinderId.class::cast)
                .findFirst();
        return supply.isPresent()
                ? supply
                : now.bench().listBottles().stream()
                        .map(Bottle::id)
                        .filter(id -> value(id).equals(value))
                        .map(CylinderId.class::cast)
                        .findFirst();
    }
}
