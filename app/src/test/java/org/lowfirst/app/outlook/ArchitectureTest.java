package org.lowfirst.app.outlook;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.lowfirst.app.outlook", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {

    /** It asks for the bench and its entries; where they are kept is not its business. */
    @ArchTest
    static final ArchRule KNOWS_BENCHES_AND_PLANNING_ONLY = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java..",
                    "org.jspecify.annotations",
                    "org.lowfirst.app.ahead",
                    "org.lowfirst.app.honest",
                    "org.lowfirst.app.outlook",
                    "org.lowfirst.station..",
                    "org.lowfirst.planning..",
                    "org.lowfirst.gas");
}
