package org.lowfirst.app.ahead;

import org.lowfirst.app.file.NumberReader;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.ahead.AheadRequest;

/**
 * A file about looking ahead.
 *
 * @param request what it asks
 * @param units the units it uses, in which the sheet answers
 * @param noted where things stand in the file
 */
record AheadFile(AheadRequest request, ShownUnits units, NumberReader noted) {}
