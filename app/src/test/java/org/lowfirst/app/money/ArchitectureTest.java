package org.lowfirst.app.money;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.lowfirst.app.money", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    @ArchTest
    static final ArchRule accountsAreWorkedOutFromEntriesAlone = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java.lang..",
                    "java.math",
                    "java.time..",
                    "java.util..",
                    "org.jspecify.annotations",
                    "org.lowfirst.app.journal",
                    "org.lowfirst.app.money",
                    "org.lowfirst.app.sheet",
                    "org.lowfirst.app.words",
                    "org.lowfirst.gas",
                    "org.lowfirst.station",
                    "org.lowfirst.station.charges");
}
