package org.lowfirst.app.exchange;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.lowfirst.app.exchange", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {

    /** No journal, no database: an answer from a file needs neither. */
    @ArchTest
    static final ArchRule KNOWS_PLANNING_AND_FILES_ONLY = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java..",
                    "org.jspecify.annotations",
                    "org.lowfirst.app.file",
                    "org.lowfirst.app.sheet",
                    "org.lowfirst.app.exchange",
                    "org.lowfirst.gas",
                    "org.lowfirst.app.plan",
                    "org.lowfirst.planning",
                    "org.lowfirst.planning.exchange",
                    "org.lowfirst.planning.study");
}
