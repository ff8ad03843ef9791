package org.lowfirst.web.flight;

import gg.jte.Content;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * The oxygen of a flight.
 *
 * @param place the bench
 * @param form what was typed
 * @param unit unit of pressure
 * @param temperatureUnit unit of temperature
 * @param bottles of the bench, to choose from
 * @param track what is to be said of the track that was sent; empty when none was
 * @param key of the form
 * @param sheet what came of it; null when there is nothing
 */
public record FlightPage(
        Place place,
        Form form,
        String unit,
        String temperatureUnit,
        List<Choice> bottles,
        List<String> track,
        String key,
        @Nullable FlightSheet sheet)
        implements Page {

    public FlightPage {
        bottles = List.copyOf(bottles);
        track = List.copyOf(track);
    }

    /** A bottle to choose. */
    public record Choice(String id, String name) {}

    /**
     * @param covered whether the bottles hold what flight, margin and reserve need
     * @param headline that in words, with the litres
     * @param gaps where a rule text asks for oxygen and a device is off
     * @param picture altitude against time with what the rule texts ask; {@code legs} and {@code needs} say the same
     * @param legs litres by leg
     * @param sums margin, reserve and what is needed
     * @param people litres by person
     * @param bottles what each bottle gives, and what it must read
     * @param times how long it lasts
     * @param needs what the rule texts ask
     * @param unknown what nobody can read off the numbers
     * @param condition at which litres count
     */
    public record FlightSheet(
            boolean covered,
            String headline,
            List<String> gaps,
            Content picture,
            List<LegLine> legs,
            List<SumLine> sums,
            List<SumLine> people,
            List<BottleLine> bottles,
            List<String> times,
            List<String> needs,
            List<String> unknown,
            String condition) {

        public FlightSheet {
            gaps = List.copyOf(gaps);
            legs = List.copyOf(legs);
            sums = List.copyOf(sums);
            people = List.copyOf(people);
            bottles = List.copyOf(bottles);
            times = List.copyOf(times);
            needs = List.copyOf(needs);
            unknown = List.copyOf(unknown);
        }
    }

    /** One leg: until when, to which altitude, how much it takes. */
    public record LegLine(String name, String until, String altitude, String litres) {}

    /** A number with its name. */
    public record SumLine(String name, String litres) {}

    /**
     * A bottle on board.
     *
     * @param gives what it gives, and what it reads when full
     * @param needed what it must read; empty when it reads enough
     * @param bank whether the bank can bring it there; empty when that is not asked
     * @param link starts that fill; empty when there is none
     */
    public record BottleLine(String name, String gives, String needed, String bank, String link) {}

    @Override
    public String template() {
        return "flight";
    }

    @Override
    public String title(Words words) {
        return words.of("flight.title");
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
