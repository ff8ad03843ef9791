package org.lowfirst.station;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.lowfirst.station", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    @ArchTest
    static final ArchRule stationKnowsQuantitiesAndTheJdkOnly = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("org.lowfirst.station..", "org.lowfirst.gas", "org.jspecify.annotations", "java..");

    @ArchTest
    static final ArchRule stationCountsNoGas =
            noClasses().should().dependOnClassesThat().haveSimpleName("EquationOfState");
}
