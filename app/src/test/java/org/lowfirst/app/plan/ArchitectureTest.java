package org.lowfirst.app.plan;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.lowfirst.app.plan", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {

    /** No journal, no database: a plan from a file needs neither, and starts the faster for it. */
    @ArchTest
    static final ArchRule KNOWS_PLANNING_AND_YAML_ONLY = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java.lang..",
                    "java.util..",
                    "java.io",
                    "java.math",
                    "java.nio..",
                    "org.jspecify.annotations",
                    "org.snakeyaml.engine..",
                    "org.lowfirst.app.file",
                    "org.lowfirst.app.sheet",
                    "org.lowfirst.app.plan",
                    "org.lowfirst.gas",
                    "org.lowfirst.transfer",
                    "org.lowfirst.planning",
                    "org.lowfirst.planning.study");
}
