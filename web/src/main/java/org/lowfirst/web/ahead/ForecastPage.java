package org.lowfirst.web.ahead;

import gg.jte.Content;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * How long the bank lasts and when to order.
 *
 * @param place the bench
 * @param form what was typed
 * @param sheet the forecast; null when there is none
 */
public record ForecastPage(Place place, Form form, @Nullable ForecastSheet sheet) implements Page {

    /**
     * @param fills fills left, the middle
     * @param fillsBand its bands
     * @param days days left, the middle
     * @param daysBand its bands
     * @param order when to order
     * @param pressing whether that is today or soon
     * @param today what ordering today would risk
     * @param week fills a week to come
     * @param knowledge how much is known
     * @param picture fills left over the coming weeks; {@code weeks} say the same
     * @param weeks fills left by day
     * @param calendar address of the calendar file; empty when there is nothing to put into it
     */
    public record ForecastSheet(
            String fills,
            String fillsBand,
            String days,
            String daysBand,
            String order,
            boolean pressing,
            String today,
            String week,
            String knowledge,
            Content picture,
            List<WeekLine> weeks,
            String calendar) {

        public ForecastSheet {
            weeks = List.copyOf(weeks);
        }
    }

    /** Fills left on the morning of a day. */
    public record WeekLine(String day, String middle, String half, String most) {}

    @Override
    public String template() {
        return "forecast";
    }

    @Override
    public String title(Words words) {
        return words.of("forecast.title");
    }

    @Override
    public Section section() {
        return Section.AHEAD;
    }

    @Override
    public Place at() {
        return place;
    }
}
