package org.lowfirst.app.ahead;

import java.util.Locale;
import org.lowfirst.planning.ahead.Alert;

/** The words that JSON of forecasts uses. */
final class AheadWords {

    private AheadWords() {}

    static String alert(Alert alert) {
        return alert.name().toLowerCase(Locale.ROOT);
    }
}
