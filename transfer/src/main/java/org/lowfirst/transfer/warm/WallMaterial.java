package org.lowfirst.transfer.warm;

import java.util.Locale;

/** What a cylinder is made of; figures with their sources in wall-materials.txt. */
public enum WallMaterial {
    ALUMINIUM,
    STEEL,
    /** Carbon fibre and epoxy; as a cylinder always over an aluminium liner. */
    COMPOSITE;

    private static final class Sheet {
        static final Datasheet FIGURES = Datasheet.beside(WallMaterial.class, "wall-materials.txt");
    }

    /** The figures of all materials. */
    public static Datasheet figures() {
        return Sheet.FIGURES;
    }

    double figure(String name, String unit) {
        return figures().value(name().toLowerCase(Locale.ROOT) + "." + name, unit);
    }

    /** [kg/m3]. */
    double density_kgPerM3() {
        return figure("density", "kg/m3");
    }

    /** [W/(m K)]. */
    double conductivity_WPerMK() {
        return figure("conductivity", "W/(m K)");
    }

    /** Thermal emissivity of the usual outer surface [1]. */
    double emissivity() {
        return figure("emissivity", "1");
    }

    /** Specific heat at 293.15 K [J/(kg K)]. */
    double specificHeat_JPerKgK() {
        return figure("specific-heat", "J/(kg K)");
    }

    /** Its rise with temperature [J/(kg K2)]. */
    double specificHeatSlope_JPerKgK2() {
        return figure("specific-heat-slope", "J/(kg K2)");
    }
}
