package org.lowfirst.app.honest;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.contents.ContentsAssumptions;
import org.lowfirst.planning.contents.ContentsMeasurement;
import org.lowfirst.planning.contents.LeakCheckLimits;
import org.lowfirst.planning.contents.MeteredCylinder;
import org.lowfirst.planning.contents.TimedLeakCheck;
import org.lowfirst.planning.contents.TimedLeakCheck.SpoiledBy;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.Reading;

/** Judges a timed leak check: read, hold, read again, the temperature taken out. Records nothing. */
public final class CheckingForLeaks {

    private final BenchSource source;
    private final JudgingReadings judging;
    private final Wording wording;

    public CheckingForLeaks(BenchSource source, JudgingReadings judging, Locale locale) {
        this.source = source;
        this.judging = judging;
        this.wording = Wording.of(CheckingForLeaks.class, locale);
    }

    /**
     * @param check the numbers
     * @param sentences outcome, drop against its limit, and what spoils it
     * @param source where the limits are from
     */
    public record LeakCheck(TimedLeakCheck check, List<String> sentences, String source) {

        public LeakCheck {
            sentences = List.copyOf(sentences);
        }
    }

    /** What a check must keep to, with the source. */
    public LeakCheckLimits limits() {
        return LeakCheckLimits.published();
    }

    /**
     * @param cylinder the cylinder, valve open to what is tested
     * @param settledSince when it was last filled, opened or moved
     * @throws java.util.NoSuchElementException when there is no such bench or cylinder
     */
    public Outcome<LeakCheck> check(
            BenchId id, CylinderId cylinder, Instant settledSince, Reading first, Reading second) {
        ReadingDesk desk = new ReadingDesk(source.getStanding(id).bench(), source, judging.history(id), wording);
        if (!second.at().isAfter(first.at())) {
            return Outcome.declined(new Problems(wording)
                    .stated(
                            "second-not-later",
                            new TreeMap<>(Map.of(
                                    "measured",
                                    second.at().toString(),
                                    "limit",
                                    first.at().toString()))));
        }
        MeteredCylinder metered = desk.cylinder(cylinder);
        return desk.measure(cylinder, first)
                .then(before ->
                        desk.measure(cylinder, second).map(after -> judge(metered, settledSince, before, after, desk)));
    }

    private LeakCheck judge(
            MeteredCylinder cylinder,
            Instant settledSince,
            ContentsMeasurement first,
            ContentsMeasurement second,
            ReadingDesk desk) {
        TimedLeakCheck check = TimedLeakCheck.judge(
                cylinder,
                settledSince,
                first,
                second,
                limits(),
                desk.surroundings(),
                ContentsAssumptions.standard().verdicts());
        return new LeakCheck(check, sentences(check, desk), check.limits().source());
    }

    private List<String> sentences(TimedLeakCheck check, ReadingDesk desk) {
        ShownUnits units = desk.units();
        List<String> sentences = new ArrayList<>();
        Map<String, String> values = new TreeMap<>();
        values.put("drop", desk.fine(check.drop()));
        values.put(
                "within",
                desk.fine(new GaugePressure(2.0 * check.standardDeviation().pascals())));
        values.put("limit", desk.fine(check.limits().mostDrop()));
        values.put("asRead", units.show(check.dropAsRead()));
        values.put("held", Long.toString(check.held().toMinutes()));
        values.put("hold", Long.toString(check.limits().hold().toMinutes()));
        values.put("settle", Long.toString(check.limits().settle().toMinutes()));
        values.put("chance", VerdictSentences.chance(check.chanceOfNoise(), wording));
        sentences.add(wording.text(
                "leak-check." + VerdictSentences.key(check.outcome().name()), values));
        for (SpoiledBy spoiled : check.spoiledBy()) {
            sentences.add(wording.text("spoiled." + VerdictSentences.key(spoiled.name()), values));
        }
        return sentences;
    }
}
