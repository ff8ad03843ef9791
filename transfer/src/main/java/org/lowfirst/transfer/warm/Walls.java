package org.lowfirst.transfer.warm;

import java.util.List;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Mass;
import org.lowfirst.gas.Volume;

/** Makes walls from what is known of a cylinder. */
public final class Walls {

    private Walls() {}

    /**
     * A wall of known empty mass.
     *
     * @param origin {@link WallOrigin#STATED} or {@link WallOrigin#CATALOGUE}
     */
    public static Wall ofMass(WallMaterial material, Volume waterVolume, Mass empty, WallOrigin origin) {
        if (!(empty.kilograms() > 0.0) || !(waterVolume.cubicMetres() > 0.0)) {
            throw new IllegalArgumentException("The empty mass (" + empty.kilograms() + " kg) and the water volume ("
                    + waterVolume.cubicMetres() + " m3) must be above 0.");
        }
        Shape inside = Shape.of(waterVolume);
        if (material == WallMaterial.COMPOSITE) {
            return composite(inside, empty.kilograms(), origin);
        }
        Shape outside = outside(inside, empty.kilograms(), material);
        return wall(inside, outside, List.of(layer(material, empty.kilograms(), inside, outside)), material, origin);
    }

    /**
     * A wall sized from service pressure and water volume, marked as assumed.
     *
     * <p>A metal shell has the least thickness at which the wall stress of 49 CFR 178.46 at the test pressure,
     * {@code S = P (1.3 D^2 + 0.4 d^2) / (D^2 - d^2)}, is the design stress; heads and neck come in by a factor fitted to the
     * catalogue of sizes. A composite wall follows pressure times volume.
     *
     * @see "[Cfr178-46] paragraph on wall thickness; [SizeCatalogue]"
     */
    public static Wall assumed(WallMaterial material, Volume waterVolume, GaugePressure servicePressure) {
        return ofMass(material, waterVolume, assumedMass(material, waterVolume, servicePressure), WallOrigin.ASSUMED);
    }

    /** Empty mass sized from service pressure and water volume; see {@link #assumed}. */
    public static Mass assumedMass(WallMaterial material, Volume waterVolume, GaugePressure servicePressure) {
        if (!(servicePressure.pascals() > 0.0)) {
            throw new IllegalArgumentException(
                    "The service pressure (" + servicePressure.pascals() + " Pa) must be above 0.");
        }
        if (material == WallMaterial.COMPOSITE) {
            double perMPaL = material.figure("mass-per-pressure-volume", "kg/(MPa L)");
            return new Mass(perMPaL * servicePressure.pascals() * 1e-6 * waterVolume.toLitres());
        }
        double test_Pa = WallMaterial.figures().value("test.to-service", "1") * servicePressure.pascals();
        double stress_Pa = material.figure("design-stress", "Pa");
        if (!(stress_Pa > 1.3 * test_Pa)) {
            throw new IllegalArgumentException("The service pressure (" + servicePressure.pascals()
                    + " Pa) must be below what the wall stress formula can carry.");
        }
        double areaRatio = (stress_Pa + 0.4 * test_Pa) / (stress_Pa - 1.3 * test_Pa);
        double shell_m3 = waterVolume.cubicMetres() * (areaRatio - 1.0);
        return new Mass(material.figure("heads-factor", "1") * material.density_kgPerM3() * shell_m3);
    }

    private static Wall composite(Shape inside, double mass_kg, WallOrigin origin) {
        double liner_kg = WallMaterial.COMPOSITE.figure("liner-share", "1") * mass_kg;
        double winding_kg = mass_kg - liner_kg;
        Shape between = outside(inside, liner_kg, WallMaterial.ALUMINIUM);
        Shape outside = outside(between, winding_kg, WallMaterial.COMPOSITE);
        return wall(
                inside,
                outside,
                List.of(
                        layer(WallMaterial.ALUMINIUM, liner_kg, inside, between),
                        layer(WallMaterial.COMPOSITE, winding_kg, between, outside)),
                WallMaterial.COMPOSITE,
                origin);
    }

    private static Shape outside(Shape inside, double mass_kg, WallMaterial material) {
        return inside.grown(inside.thickness_m(mass_kg / material.density_kgPerM3()));
    }

    private static WallLayer layer(WallMaterial material, double mass_kg, Shape inside, Shape outside) {
        double half_m = 0.25 * (outside.diameter_m() - inside.diameter_m());
        double area_m2 = 0.5 * (inside.area_m2() + outside.area_m2());
        return new WallLayer(
                new Mass(mass_kg),
                material.specificHeat_JPerKgK(),
                material.specificHeatSlope_JPerKgK2(),
                half_m / (material.conductivity_WPerMK() * area_m2));
    }

    private static Wall wall(
            Shape inside, Shape outside, List<WallLayer> layers, WallMaterial surface, WallOrigin origin) {
        return new Wall(
                layers,
                inside.area_m2(),
                outside.area_m2(),
                inside.diameter_m(),
                outside.length_m(),
                surface.emissivity(),
                origin);
    }
}
