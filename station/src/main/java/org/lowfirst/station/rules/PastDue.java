package org.lowfirst.station.rules;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lowfirst.gas.GaugePressure;

/**
 * A cylinder past its test is neither filled nor topped off.
 *
 * @param mayUseUp what it holds may still be used
 */
public record PastDue(RuleHeading heading, boolean mayUseUp) implements FillRule {

    static PastDue of(RuleHeading heading, RuleSettings settings) {
        return new PastDue(heading, settings.choice("may-use-up", Answer.class) == Answer.YES);
    }

    @Override
    public RuleKind kind() {
        return RuleKind.PAST_DUE;
    }

    @Override
    public Map<String, String> settings() {
        return RuleWords.none().with("may-use-up", mayUseUp ? "yes" : "no").asMap();
    }

    @Override
    public List<Finding> judge(CylinderFacts facts, Setting setting) {
        List<Finding> findings = new ArrayList<>();
        TestMark mark = facts.lastTest();
        if (mark != null && mark.star() && setting.rules(StarInterval.class).noneMatch(star -> star.counts(facts))) {
            findings.add(Finding.warn(heading, Advice.STAR_DOES_NOT_COUNT, new Measure.OfWord("*"), Measure.NOTHING));
        }
        if (setting.testTerm(facts) instanceof TestTerm.Every every) {
            findings.add(testFinding(facts, every, setting).basedOn(every.rule()));
        }
        return findings;
    }

    private Finding testFinding(CylinderFacts facts, TestTerm.Every every, Setting setting) {
        YearMonth tested = setting.lastTest(facts);
        if (tested == null) {
            return Finding.refuse(heading, Advice.ENTER_LAST_TEST, Measure.NOTHING, Measure.NOTHING)
                    .withoutOverride();
        }
        LocalDate today = setting.today();
        YearMonth made = facts.nameplate().made();
        if (tested.isAfter(YearMonth.from(today)) || (made != null && tested.isBefore(made))) {
            return Finding.refuse(
                            heading,
                            Advice.CHECK_TEST_DATE,
                            new Measure.OfDate(tested.atEndOfMonth()),
                            new Measure.OfDate(today))
                    .withoutOverride();
        }
        LocalDate lastDay = setting.lastDay(tested, every.years());
        Measure measured = new Measure.OfDate(today);
        Measure limit = new Measure.OfDate(lastDay);
        if (today.isAfter(lastDay)) {
            return Finding.refuse(heading, pastDueAdvice(facts), measured, limit);
        }
        if (ChronoUnit.DAYS.between(today, lastDay) <= setting.notice().days()) {
            return Finding.warn(heading, Advice.RETEST_SOON, measured, limit);
        }
        return Finding.allow(heading, measured, limit);
    }

    private Advice pastDueAdvice(CylinderFacts facts) {
        GaugePressure holds = facts.use().reading();
        boolean holdsGas = holds != null && holds.compareTo(GaugePressure.ZERO) > 0;
        return mayUseUp && holdsGas ? Advice.USE_UP_THEN_RETEST : Advice.RETEST_BEFORE_FILLING;
    }
}
