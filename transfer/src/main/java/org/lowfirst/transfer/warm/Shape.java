package org.lowfirst.transfer.warm;

import org.lowfirst.gas.Volume;

/**
 * The inside of a cylinder, as a right cylinder with flat ends of the same volume.
 *
 * @param diameter_m [m]
 * @param length_m [m]
 */
record Shape(double diameter_m, double length_m) {

    /** The shape of a water volume when nothing else is known. */
    static Shape of(Volume waterVolume) {
        double slenderness = WallMaterial.figures().value("shape.length-to-diameter", "1");
        double diameter = Math.cbrt(4.0 * waterVolume.cubicMetres() / (Math.PI * slenderness));
        return new Shape(diameter, slenderness * diameter);
    }

    double area_m2() {
        return Math.PI * diameter_m * (length_m + 0.5 * diameter_m);
    }

    double volume_m3() {
        return Math.PI / 4.0 * diameter_m * diameter_m * length_m;
    }

    /** This shape with a shell of this thickness all around. */
    Shape grown(double thickness_m) {
        return new Shape(diameter_m + 2.0 * thickness_m, length_m + 2.0 * thickness_m);
    }

    /** Thickness of a shell of this volume all around [m]. */
    double thickness_m(double shell_m3) {
        double t = shell_m3 / area_m2();
        // Newton: the volume is a cubic in the thickness, convex and rising, so it converges from above.
        for (int i = 0; i < 50; i++) {
            Shape outside = grown(t);
            double step = (outside.volume_m3() - volume_m3() - shell_m3) / outside.area_m2();
            t -= step;
            if (Math.abs(step) <= 1e-12 * t) {
                break;
            }
        }
        return t;
    }
}
