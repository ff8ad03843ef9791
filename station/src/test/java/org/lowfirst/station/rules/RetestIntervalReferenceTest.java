package org.lowfirst.station.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lowfirst.station.rules.Cylinders.cylinder;
import static org.lowfirst.station.rules.Cylinders.plate;
import static org.lowfirst.station.rules.Cylinders.reads;

import java.time.LocalDate;
import java.time.YearMonth;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The built-in US book against table 1 of 49 CFR 180.209 and the other texts named in the file. */
class RetestIntervalReferenceTest {

    private static final YearMonth TESTED = YearMonth.of(2015, 4);

    private final RuleBook us = BuiltInBooks.us();

    @ParameterizedTest(name = "{0}: {1} years")
    @CsvFileSource(resources = "/reference/retest-years-49cfr180.209.csv", numLinesToSkip = 1)
    void intervalIsTheOneOfTheTable(String specification, int years) {
        CylinderFacts facts = cylinder(
                "B-02",
                plate(specification, WallMaterial.STEEL, 1_800, YearMonth.of(2010, 4)),
                new TestMark(TESTED, false, false, ""),
                reads(500, 100));
        LocalDate lastDay = TESTED.plusYears(years).atEndOfMonth();

        assertThat(passes(facts, lastDay)).isTrue();
        assertThat(passes(facts, lastDay.plusDays(1))).isFalse();
    }

    private boolean passes(CylinderFacts facts, LocalDate day) {
        return us.judge(facts, day).refusals().stream()
                .noneMatch(f -> f.rule().id().equals("us.past-due"));
    }
}
