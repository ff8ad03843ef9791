/**
 * A bench that exists only as numbers: hidden true volumes, walls, gauge errors, leaks and weather, driven by the warm model, and
 * a person who follows the guide at it. Everything in it is invented. Start at {@link VirtualBench} and {@link VirtualPerson}.
 */
@NullMarked
package org.lowfirst.app.virtual;

import org.jspecify.annotations.NullMarked;
