package org.lowfirst.station.rules;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

/** Invented cylinders for the tests: all is well with them unless the test says otherwise. */
final class Cylinders {

    static final LocalDate TODAY = LocalDate.of(2026, 6, 14);
    static final Temperature AT_70_F = Temperature.ofFahrenheit(70);
    static final Temperature AT_131_F = Temperature.ofFahrenheit(131);

    private Cylinders() {}

    static Nameplate plate(String specification, WallMaterial wall, double servicePsi, @Nullable YearMonth made) {
        GaugePressure service = GaugePressure.ofPsi(servicePsi);
        GaugePressure test = GaugePressure.ofPsi(servicePsi * 5 / 3);
        return new Nameplate(specification, wall, service, test, Volume.ofLitres(4.6), made);
    }

    static CylinderFacts cylinder(String name, Nameplate plate, @Nullable TestMark test, Use use) {
        return CylinderFacts.of(name, plate, test, use, Service.oxygen("CGA 870"))
                .answering(allNo(BuiltInBooks.us()));
    }

    static Map<String, Answer> allNo(RuleBook book) {
        return book.questions(TODAY).stream().collect(Collectors.toMap(q -> q, q -> Answer.NO));
    }

    static Use reads(double psi) {
        return Use.reading(GaugePressure.ofPsi(psi));
    }

    static Use reads(double psi, int fills) {
        return new Use(fills, GaugePressure.ofPsi(psi), false, null, null);
    }

    static List<PressureAt> contents(double psiAt70, double psiAt131) {
        return List.of(
                new PressureAt(GaugePressure.ofPsi(psiAt70), AT_70_F),
                new PressureAt(GaugePressure.ofPsi(psiAt131), AT_131_F));
    }

    /** A steel cylinder tested two years ago, with nothing wrong. */
    static CylinderFacts sound() {
        return cylinder(
                "B-01",
                plate("3AA", WallMaterial.STEEL, 1_800, YearMonth.of(2004, 3)),
                TestMark.of(2024, 5),
                reads(400));
    }

    static Finding finding(Judgement judgement, String ruleId) {
        return judgement.findings().stream()
                .filter(f -> f.rule().id().equals(ruleId))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no finding of " + ruleId + " in " + judgement.findings()));
    }
}
