package org.lowfirst.transfer.warm;

/** How the gas meets its wall. The first is the model; the others are its limits. */
public enum Contact {
    /** Heat passes by convection, at a finite difference of temperature. */
    CONVECTION,
    /** Gas and inner layer always have one temperature. */
    PERFECT,
    /** No heat passes. */
    NONE
}
