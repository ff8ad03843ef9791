package org.lowfirst.station.rules;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/**
 * A day in the life of a cylinder that a book knows of.
 *
 * @param rule the rule it comes from
 * @param lastDay last day it is good for
 */
public record CylinderDate(Kind kind, RuleHeading rule, LocalDate lastDay) {

    /** What ends. */
    public enum Kind {
        TEST,
        LIFE
    }

    /** Days known from the facts; a cylinder whose months are not known has none. */
    public static List<CylinderDate> list(CylinderFacts facts, RuleBook book, LocalDate today) {
        Setting setting = new Setting(book, today);
        List<CylinderDate> dates = new ArrayList<>();
        YearMonth tested = setting.lastTest(facts);
        if (tested != null && setting.testTerm(facts) instanceof TestTerm.Every every) {
            dates.add(new CylinderDate(Kind.TEST, every.rule(), setting.lastDay(tested, every.years())));
        }
        YearMonth made = facts.nameplate().made();
        if (made != null) {
            setting.rules(LifeLimit.class)
                    .filter(rule -> rule.cylinders().matches(facts.nameplate()))
                    .forEach(rule -> dates.add(
                            new CylinderDate(Kind.LIFE, rule.heading(), setting.lastDay(made, rule.years()))));
            PermitTerms terms = facts.permitTerms();
            if (terms != null) {
                setting.rules(PermitRule.class)
                        .filter(rule -> rule.cylinders().matches(facts.nameplate()))
                        .forEach(rule -> dates.add(
                                new CylinderDate(Kind.LIFE, rule.heading(), setting.lastDay(made, terms.lifeYears()))));
            }
        }
        return dates;
    }
}
