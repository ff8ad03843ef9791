package org.lowfirst.app.fitness;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.lowfirst.app.fitness", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {

    @ArchTest
    static final ArchRule SAYS_WHAT_THE_STATION_JUDGES_AND_KNOWS_NO_JOURNAL = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java.lang..",
                    "java.time..",
                    "java.util..",
                    "org.jspecify.annotations",
                    "org.lowfirst.app.fitness",
                    "org.lowfirst.app.words",
                    "org.lowfirst.gas",
                    "org.lowfirst.station",
                    "org.lowfirst.station.rules",
                    "org.lowfirst.station.stamp");
}
