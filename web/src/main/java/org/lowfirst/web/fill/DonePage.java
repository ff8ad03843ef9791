package org.lowfirst.web.fill;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.web.money.PayerPart;
import org.lowfirst.web.verdict.VerdictBadge;
import org.lowfirst.web.view.Page;
import org.lowfirst.web.view.Place;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.words.Words;

/**
 * What became of a fill.
 *
 * @param place the bench
 * @param bottle name of the bottle
 * @param finished false when it was broken off
 * @param unit symbol of the unit of pressure
 * @param before what the bottle read at the start
 * @param after what it read last
 * @param stages what was done, in words
 * @param balance what left the supplies against what entered the bottle
 * @param payer who pays; null when the bench charges nothing
 * @param link page of the bottle
 * @param record address of its record on paper
 */
public record DonePage(
        Place place,
        String bottle,
        boolean finished,
        String unit,
        String before,
        String after,
        List<String> stages,
        BalanceLine balance,
        @Nullable PayerPart payer,
        String link,
        String record)
        implements Page {

    public DonePage {
        stages = List.copyOf(stages);
    }

    /** Where to ask what the bottle settles to. */
    public String settle() {
        return place.path("/settle?bottle=" + link.replaceFirst(".*/", ""));
    }

    /**
     * @param badge the verdict; null when there is nothing to compare
     * @param sentence the numbers, or what is missing to compare
     * @param possible what can be behind a difference, likeliest first
     */
    public record BalanceLine(@Nullable VerdictBadge badge, String sentence, List<String> possible) {

        public BalanceLine {
            possible = List.copyOf(possible);
        }
    }

    @Override
    public String template() {
        return "done";
    }

    @Override
    public String title(Words words) {
        return words.of(finished ? "done.title" : "done.broken", bottle);
    }

    @Override
    public Section section() {
        return Section.FILL;
    }

    @Override
    public Place at() {
        return place;
    }
}
