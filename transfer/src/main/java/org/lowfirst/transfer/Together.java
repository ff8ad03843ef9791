package org.lowfirst.transfer;

import java.util.List;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.Volume;

/**
 * Two or more supplies open to the hose at the same time: what happens when the rule "one supply valve at a time" is broken.
 *
 * <p>The supplies come to one pressure among themselves before the transfer valve is cracked: the fuller one loses its head to
 * the emptier one, which is where the waste lies. From then on they act as one supply of their joint volume.
 */
public final class Together {

    private Together() {}

    /**
     * @param supplies the open supplies, at least one
     * @return the supplies in the order given, all at one pressure, with no bottle connected
     */
    public static List<Vessel> levelled(List<Vessel> supplies) {
        Vessel pool = pool(supplies);
        return spread(supplies, pool);
    }

    /**
     * Opens all supplies at once to one bottle.
     *
     * @param supplies the open supplies, at least one
     * @param stop density in the bottle at which the transfer valve is shut
     */
    public static TogetherResult join(List<Vessel> supplies, Hose hose, Vessel bottle, Density stop) {
        StageResult joined = Stage.join(pool(supplies), hose, bottle, stop);
        return new TogetherResult(
                spread(supplies, joined.supply()), joined.hose(), joined.bottle(), joined.moved(), joined.ending());
    }

    private static Vessel pool(List<Vessel> supplies) {
        double volume_m3 = 0.0;
        double contents_mol = 0.0;
        for (Vessel supply : supplies) {
            volume_m3 += supply.waterVolume().cubicMetres();
            contents_mol += supply.contents().moles();
        }
        return new Vessel(new Volume(volume_m3), new Amount(contents_mol));
    }

    private static List<Vessel> spread(List<Vessel> supplies, Vessel pool) {
        Density level = pool.density();
        return supplies.stream()
                .map(supply -> new Vessel(supply.waterVolume(), level.amountIn(supply.waterVolume())))
                .toList();
    }
}
