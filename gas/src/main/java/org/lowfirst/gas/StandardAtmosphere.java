package org.lowfirst.gas;

/** The standard atmosphere at sea level, the default surroundings of every gauge. */
public final class StandardAtmosphere {

    /** 1 atm = 101 325 Pa exactly (10th CGPM, 1954). */
    public static final AbsolutePressure PRESSURE = new AbsolutePressure(101_325.0);

    private StandardAtmosphere() {}
}
