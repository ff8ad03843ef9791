package org.lowfirst.station.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lowfirst.station.rules.Cylinders.TODAY;
import static org.lowfirst.station.rules.Cylinders.cylinder;
import static org.lowfirst.station.rules.Cylinders.finding;
import static org.lowfirst.station.rules.Cylinders.plate;
import static org.lowfirst.station.rules.Cylinders.reads;

import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

/**
 * Oxygen filled to the marked pressure at the reference temperature, made hot. The hot pressures were computed outside the
 * project with the oxygen equation of Schmidt and Wagner (CoolProp 8.0.0); limits: 49 CFR 173.301a(c), (d), read, and P200,
 * from memory.
 */
class DevelopedPressureReferenceTest {

    @ParameterizedTest(name = "{0} psi at 70 F is {1} psi at 131 F")
    @CsvSource({"1800, 2080", "1850, 2140", "2015, 2337", "2216, 2580", "3000, 3536"})
    void atTheMarkedPressureTheReferenceTemperatureGovernsInTheUnitedStates(double at70, double at131) {
        CylinderFacts filled = cylinder(
                        "B-03",
                        plate("3AA", WallMaterial.STEEL, at70, YearMonth.of(2015, 1)),
                        TestMark.of(2025, 1),
                        reads(300))
                .wanting(Cylinders.contents(at70, at131));
        RuleBook us = BuiltInBooks.us();

        assertThat(us.judge(filled, TODAY).fitness()).isInstanceOf(Fitness.Fit.class);
        Judgement tooMuch = us.judge(filled.wanting(Cylinders.contents(at70 + 1, at70 * 5 / 4 + 1)), TODAY);
        assertThat(tooMuch.refusals())
                .extracting(f -> f.rule().id())
                .containsExactly("us.service-pressure", "us.developed-pressure");
    }

    @ParameterizedTest(name = "{0} bar at 15 C is {1} bar at 65 C")
    @CsvSource({"150, 187.5, 225", "200, 254.5, 300", "300, 391.7, 450"})
    void developedPressureStaysWithinTheTestPressureInEurope(double at15, double at65, double test) {
        RuleBook eu = BuiltInBooks.eu();
        Nameplate unmarked = new Nameplate(
                "ISO 9809-1",
                WallMaterial.STEEL,
                null,
                GaugePressure.ofBar(test),
                Volume.ofLitres(5),
                YearMonth.of(2018, 4));
        CylinderFacts facts = CylinderFacts.of(
                        "B-04",
                        unmarked,
                        TestMark.of(2018, 4),
                        Use.reading(GaugePressure.ofBar(40)),
                        Service.oxygen("DIN 477-9"))
                .answering(Cylinders.allNo(eu));

        Judgement full = eu.judge(facts.wanting(contents(at15, at65)), TODAY);
        Judgement over = eu.judge(facts.wanting(contents(at15 + 0.1, test + 0.1)), TODAY);

        // 2/3 of the test pressure stands in for the service pressure that is not marked: RID P200 (3)(f), read.
        assertThat(full.refusals()).isEmpty();
        assertThat(finding(full, "eu.service-pressure.unmarked").advice())
                .isEqualTo(Advice.CHECK_ASSUMED_SERVICE_PRESSURE);
        assertThat(over.refusals())
                .extracting(f -> f.rule().id())
                .containsExactly("eu.service-pressure", "eu.developed-pressure");
    }

    private static List<PressureAt> contents(double at15, double at65) {
        return List.of(
                new PressureAt(GaugePressure.ofBar(at15), Temperature.ofCelsius(15)),
                new PressureAt(GaugePressure.ofBar(at65), Temperature.ofCelsius(65)));
    }
}
