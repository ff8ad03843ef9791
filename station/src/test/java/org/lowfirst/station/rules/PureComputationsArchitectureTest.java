package org.lowfirst.station.rules;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.file.Path;
import java.time.Clock;

/** Rules, stamps, charges, dues and readiness are computed from values alone; the bench maps to them, not they to it. */
@AnalyzeClasses(packages = "org.lowfirst.station", importOptions = ImportOption.DoNotIncludeTests.class)
class PureComputationsArchitectureTest {

    private static final String[] PURE = {
        "org.lowfirst.station.rules",
        "org.lowfirst.station.stamp",
        "org.lowfirst.station.charges",
        "org.lowfirst.station.due",
        "org.lowfirst.station.readiness"
    };

    @ArchTest
    static final ArchRule theyDoNotKnowTheBench = noClasses()
            .that()
            .resideInAnyPackage(PURE)
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.lowfirst.station");

    @ArchTest
    static final ArchRule theyHaveNoClockAndNoFiles = noClasses()
            .that()
            .resideInAnyPackage(PURE)
            .should()
            .dependOnClassesThat()
            .areAssignableTo(Clock.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Path.class);

    @ArchTest
    static final ArchRule theyDoNotGoInCircles =
            slices().matching("org.lowfirst.station.(*)..").should().beFreeOfCycles();
}
