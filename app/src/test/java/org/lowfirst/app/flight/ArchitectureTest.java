package org.lowfirst.app.flight;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.lowfirst.app.flight", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {

    @ArchTest
    static final ArchRule KNOWS_FLIGHT_PLANS_AND_FILES_ONLY = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java.lang..",
                    "java.util..",
                    "java.io",
                    "java.math",
                    "java.nio..",
                    "java.time",
                    "org.jspecify.annotations",
                    "org.lowfirst.app.file",
                    "org.lowfirst.app.sheet",
                    "org.lowfirst.app.flight",
                    "org.lowfirst.gas",
                    "org.lowfirst.transfer.warm",
                    "org.lowfirst.planning",
                    "org.lowfirst.planning.warm",
                    "org.lowfirst.planning.flight");
}
