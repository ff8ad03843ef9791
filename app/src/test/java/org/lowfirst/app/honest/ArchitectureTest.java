package org.lowfirst.app.honest;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.lowfirst.app.honest", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {

    @ArchTest
    static final ArchRule ASKS_A_BENCH_ONLY_THROUGH_ITS_SOURCE = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java.lang..",
                    "java.util..",
                    "java.io",
                    "java.math",
                    "java.nio.charset",
                    "java.time..",
                    "org.jspecify.annotations",
                    "org.lowfirst.app.honest",
                    "org.lowfirst.app.journal",
                    "org.lowfirst.app.words",
                    "org.lowfirst.gas",
                    "org.lowfirst.transfer.warm",
                    "org.lowfirst.planning",
                    "org.lowfirst.planning.contents",
                    "org.lowfirst.planning.warm",
                    "org.lowfirst.station");
}
