package org.lowfirst.web.ahead;

import gg.jte.Content;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.kept.KeepPart;
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
 * @param standing what the bench has said already
 * @param keep the offer to keep what was typed; null when there is nothing to keep
 */
public record ForecastPage(
        Place place,
        Form form,
        @Nullable ForecastSheet sheet,
        Standing standing,
        @Nullable KeepPart keep) implements Page {

    /**
     * What the bench has said already.
     *
     * @param planned the events planned
     * @param ordered that supplies are on their way; empty when none are
     * @param expected day to begin with when supplies are ordered now
     * @param key of the form that says so
     */
    public record Standing(List<String> planned, String ordered, String expected, String key) {
        public Standing {
            planned = List.copyOf(planned);
        }
    }

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
