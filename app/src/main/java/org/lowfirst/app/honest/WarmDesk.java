package org.lowfirst.app.honest;

import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Mass;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.warm.Compensation;
import org.lowfirst.planning.warm.RatedBottle;
import org.lowfirst.planning.warm.TimedSupply;
import org.lowfirst.planning.warm.WarmBench;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.Material;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.WarmStop;
import org.lowfirst.transfer.warm.Answer;
import org.lowfirst.transfer.warm.WallMaterial;
import org.lowfirst.transfer.warm.WarmModel;

/** A bench in the words of warm plans. */
final class WarmDesk {

    private static final WarmModel OXYGEN = WarmModel.oxygen();

    private WarmDesk() {}

    /** @param temperature of the bench now */
    static WarmBench bench(Bench bench, Temperature temperature) {
        return new WarmBench(
                OXYGEN,
                temperature,
                bench.settings().surroundings().ambient().absolute(),
                BenchUnits.rule(bench.settings()));
    }

    /**
     * @param empty its mass without gas; null when nobody weighed it, then it is assumed
     * @param permitted what the rule book in force permits, see {@link BenchSource#permitted}
     */
    static Answer<RatedBottle> bottle(BottleDetails details, @Nullable Mass empty, GaugePressure permitted) {
        return RatedBottle.of(
                        details.name(),
                        details.waterVolume().stated().volume(),
                        details.servicePressure().gauge(),
                        wall(details.material()),
                        empty)
                .map(bottle -> bottle.permitting(permitted));
    }

    static Answer<TimedSupply> supply(SupplyDetails details, GaugePressure reading) {
        return TimedSupply.of(
                details.name(),
                details.waterVolume().stated().volume(),
                reading,
                details.servicePressure().gauge(),
                null);
    }

    /** Off unless the journal has a permission. */
    static Compensation compensation(Bench bench) {
        WarmStop permission = bench.warmStop();
        return permission == null
                ? Compensation.OFF
                : new Compensation.On(permission.followed(), permission.responsible());
    }

    private static @Nullable WallMaterial wall(@Nullable Material material) {
        if (material == null) {
            return null;
        }
        return switch (material) {
            case ALUMINIUM -> WallMaterial.ALUMINIUM;
            case STEEL -> WallMaterial.STEEL;
            case COMPOSITE -> WallMaterial.COMPOSITE;
        };
    }
}
