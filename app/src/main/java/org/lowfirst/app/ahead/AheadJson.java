package org.lowfirst.app.ahead;

import org.lowfirst.app.sheet.JsonLine;
import org.lowfirst.planning.ahead.Band;
import org.lowfirst.planning.ahead.DayAhead;
import org.lowfirst.planning.ahead.Forecast;

/** A forecast as one JSON object on one line, see docs/schema/ahead-result.schema.json. */
public final class AheadJson {

    private final LookedAhead looked;
    private final JsonLine json = new JsonLine();

    private AheadJson(LookedAhead looked) {
        this.looked = looked;
    }

    /** The object, with a new line at its end. */
    public static String of(LookedAhead looked) {
        return new AheadJson(looked).text();
    }

    private String text() {
        Forecast forecast = looked.forecast();
        json.openObject();
        json.key("today").value(looked.request().today().toString());
        json.key("temperature_K").value(looked.request().conditions().bench().kelvin());
        json.key("lead_days").value(looked.request().ordering().leadDays());
        json.key("reserve_fills").value(looked.request().ordering().reserveFills());
        band("fills_left", forecast.fillsLeft());
        band("days_left", forecast.daysLeft());
        json.key("longest_days").value(forecast.longestDays());
        json.key("fills_per_week").value(forecast.fillsPerWeek());
        json.key("order").openObject();
        json.key("alert").value(AheadWords.alert(forecast.order().alert()));
        json.key("order_by");
        forecast.order().orderBy().ifPresentOrElse(day -> json.value(day.toString()), json::nothing);
        json.key("chance_reserve_touched").value(forecast.order().chanceTooLate());
        json.key("chance_not_finished").value(forecast.order().chanceEmpty());
        json.closeObject();
        json.key("knowledge").openObject();
        json.key("days").value(forecast.knowledge().days());
        json.key("fills").value(forecast.knowledge().fills());
        json.key("share_of_history").value(forecast.knowledge().shareOfHistory());
        json.key("guessed").value(forecast.knowledge().guessed());
        json.closeObject();
        json.key("days").openList();
        forecast.days().forEach(this::day);
        json.closeList();
        json.key("notes").openList();
        looked.notes().forEach(json::value);
        json.closeList();
        return json.closeObject() + "\n";
    }

    private void day(DayAhead day) {
        json.openObject();
        json.key("date").value(day.date().toString());
        band("fills_left", day.fillsLeft());
        json.closeObject();
    }

    private void band(String key, Band band) {
        json.key(key).openObject();
        json.key("low90").value(band.low90());
        json.key("low50").value(band.low50());
        json.key("middle").value(band.middle());
        json.key("high50").value(band.high50());
        json.key("high90").value(band.high90());
        json.closeObject();
    }
}
