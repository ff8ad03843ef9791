package org.lowfirst.transfer.warm;

import org.lowfirst.gas.Amount;

/**
 * The books of a warm stage.
 *
 * @param moved what the bottle gained
 * @param heatToAir_J heat that went to the surroundings, negative when it came from them [J]
 * @param energyGap what the energies of gas, walls and surroundings, from amounts and temperatures before and after, differ by,
 *     as part of 7/2 R T of what was moved
 */
public record Balance(Amount moved, double heatToAir_J, double energyGap) {}
