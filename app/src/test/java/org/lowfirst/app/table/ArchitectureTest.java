package org.lowfirst.app.table;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.lowfirst.app.table", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    @ArchTest
    static final ArchRule tablesKnowTheBenchAndCsvOnly = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "org.lowfirst.app.table",
                    "org.lowfirst.app.bench",
                    "org.lowfirst.app.journal",
                    "org.lowfirst.app.words",
                    "org.lowfirst.station",
                    "org.lowfirst.gas",
                    "tools.jackson..",
                    "org.jspecify.annotations",
                    "java..");
}
