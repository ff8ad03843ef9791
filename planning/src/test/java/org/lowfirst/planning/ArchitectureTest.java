package org.lowfirst.planning;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.lowfirst.planning", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {

    @ArchTest
    static final ArchRule DEPENDS_ON_TRANSFER_AND_GAS_ONLY = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java.lang..",
                    "java.util..",
                    "org.lowfirst.planning..",
                    "org.lowfirst.transfer..",
                    "org.lowfirst.gas",
                    // contents: times of readings, its two resource files, the error function
                    "java.time",
                    "java.io",
                    "java.net",
                    "java.nio.charset",
                    "org.hipparchus.special",
                    "org.jspecify.annotations");

    @ArchTest
    static final ArchRule PACKAGES_HAVE_NO_CYCLES =
            slices().matching("org.lowfirst.(planning..)").should().beFreeOfCycles();
}
