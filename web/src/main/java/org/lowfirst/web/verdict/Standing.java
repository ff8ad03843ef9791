package org.lowfirst.web.verdict;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.honest.CylinderNow;
import org.lowfirst.app.honest.ReadingHistory;
import org.lowfirst.app.honest.StandingVerdict;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.contents.VerdictCode;
import org.lowfirst.station.CylinderId;
import org.lowfirst.web.workplace.BenchNow;

/**
 * A cylinder as its readings leave it, in words.
 *
 * @param shows what its gauge should show, e.g. "76 bar, within 3"; empty when that cannot be computed
 * @param contents free gas inside, e.g. "3,800 L, within 160 L"
 * @param badge the verdict that stands; null before there is anything to compare
 * @param sentence the numbers behind it; empty without one
 * @param chance how often noise alone would look like this; empty where the sentence says so
 * @param advice what to do; empty when nothing
 */
public record Standing(
        String shows, String contents, @Nullable VerdictBadge badge, String sentence, String chance, String advice) {

    public static Optional<Standing> find(BenchNow now, ReadingHistory history, CylinderId id) {
        return history.find(id).map(cylinder -> of(now, cylinder));
    }

    private static Standing of(BenchNow now, CylinderNow cylinder) {
        @Nullable GaugePressure shows = cylinder.shows();
        @Nullable GaugePressure within = cylinder.showsWithin();
        @Nullable StandingVerdict verdict = cylinder.verdict();
        return new Standing(
                shows == null || within == null ? "" : spread(now, now.figures().pressureWithUnit(shows), within),
                now.words()
                        .of(
                                "spread.within",
                                now.figures().gas(cylinder.freeVolume()),
                                now.figures().gas(cylinder.freeVolumeWithin())),
                verdict == null ? null : VerdictBadge.of(verdict),
                verdict == null ? "" : verdict.sentence(),
                verdict != null && verdict.code() == VerdictCode.INSIDE_GAUGE_UNCERTAINTY
                        ? now.words().of("verdict.chance", verdict.chance())
                        : "",
                verdict == null ? "" : verdict.advice());
    }

    /** A reading with its spread, e.g. "76 bar, within 3". */
    public static String spread(BenchNow now, String reading, GaugePressure within) {
        return now.words().of("spread.within", reading, now.figures().within(within));
    }

    /** The spread alone, e.g. "within 3"; empty when it is not known. */
    public static String within(BenchNow now, ReadingHistory history, CylinderId id) {
        return history.find(id)
                .map(CylinderNow::showsWithin)
                .map(within -> now.words().of("spread.only", now.figures().within(within)))
                .orElse("");
    }

    /** The verdict that stands for a cylinder; null before there is anything to compare. */
    public static @Nullable VerdictBadge badge(ReadingHistory history, CylinderId id) {
        return history.find(id).map(CylinderNow::verdict).map(VerdictBadge::of).orElse(null);
    }
}
