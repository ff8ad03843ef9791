/**
 * Oxygen for a flight: who needs it when, how much gas the devices use, and what the bottles on board can give.
 *
 * <p>It knows altitudes, stated flows and gas. It does not know a person's physiology or how a device behaves, and nothing it
 * answers means that a flight may be made.
 */
@NullMarked
package org.lowfirst.planning.flight;

import org.jspecify.annotations.NullMarked;
