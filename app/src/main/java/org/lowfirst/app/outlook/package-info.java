/**
 * The larger questions about one bench: its bank, bottles and journal put into the words of the planner. Enters nothing, and
 * computes nothing that planning does not.
 */
@NullMarked
package org.lowfirst.app.outlook;

import org.jspecify.annotations.NullMarked;
