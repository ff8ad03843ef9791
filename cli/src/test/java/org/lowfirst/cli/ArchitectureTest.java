package org.lowfirst.cli;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.lowfirst.cli", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {

    @ArchTest
    static final ArchRule DEPENDS_ON_THE_USE_CASES_AND_THE_PAGES_ONLY = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java..",
                    "picocli..",
                    "org.jspecify.annotations",
                    "org.lowfirst.cli",
                    "org.lowfirst.app..",
                    "org.lowfirst.gas",
                    "org.lowfirst.web");

    /** A plan must not load web classes; see docs/performance.md for what that saves. */
    @ArchTest
    static final ArchRule ONLY_SERVING_TOUCHES_THE_PAGES = noClasses()
            .that()
            .haveSimpleNameNotStartingWith("Serv")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.lowfirst.web..");

    @ArchTest
    static final ArchRule ONLY_THE_EDGE_TOUCHES_THE_PROCESS = noClasses()
            .that()
            .doNotHaveSimpleName("Main")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .accessField(System.class, "in");
}
