package org.lowfirst.app.file;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.lowfirst.app.file", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {

    @ArchTest
    static final ArchRule KNOWS_QUANTITIES_ONLY = classes()
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
                    "tools.jackson.core..",
                    "tools.jackson.dataformat.csv",
                    "org.lowfirst.app.file",
                    "org.lowfirst.app.sheet",
                    "org.lowfirst.app.words",
                    "org.lowfirst.gas");
}
