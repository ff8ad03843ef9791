package org.lowfirst.station.rules;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import org.lowfirst.gas.Volume;

/**
 * The longer interval of a cylinder with a star after its test date, with its conditions: made from a month on, of at most a
 * water volume, and hammer-tested before every refill. A condition that is not known does not count as met.
 *
 * @param years [a], above 0
 */
public record StarInterval(
        RuleHeading heading, AppliesTo cylinders, int years, YearMonth madeFrom, Volume waterVolumeAtMost)
        implements FillRule {

    static StarInterval of(RuleHeading heading, RuleSettings settings) {
        return new StarInterval(
                heading,
                settings.appliesTo(),
                settings.countAboveZero("years"),
                settings.month("made-from"),
                settings.volume("water-volume-at-most"));
    }

    @Override
    public RuleKind kind() {
        return RuleKind.STAR;
    }

    @Override
    public Map<String, String> settings() {
        return RuleWords.none()
                .with(cylinders)
                .with("years", years)
                .with("made-from", madeFrom.toString())
                .with("water-volume-at-most", WrittenQuantity.write(waterVolumeAtMost))
                .asMap();
    }

    boolean counts(CylinderFacts facts) {
        TestMark mark = facts.lastTest();
        YearMonth made = facts.nameplate().made();
        Volume water = facts.nameplate().waterVolume();
        return mark != null
                && mark.star()
                && cylinders.matches(facts.nameplate())
                && made != null
                && !made.isBefore(madeFrom)
                && water != null
                && water.compareTo(waterVolumeAtMost) <= 0;
    }

    @Override
    public List<Finding> judge(CylinderFacts facts, Setting setting) {
        if (!counts(facts)) {
            return List.of();
        }
        LocalDate tested = facts.use().hammerTested();
        Measure limit = new Measure.OfDate(setting.today());
        Measure measured = tested == null ? Measure.NOTHING : new Measure.OfDate(tested);
        return List.of(
                setting.today().equals(tested)
                        ? Finding.allow(heading, measured, limit)
                        : Finding.refuse(heading, Advice.HAMMER_TEST_FIRST, measured, limit));
    }
}
