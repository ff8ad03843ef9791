package org.lowfirst.transfer;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.lowfirst.transfer", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {

    @ArchTest
    static final ArchRule DEPENDS_ON_GAS_AND_A_NUMERICS_LIBRARY_ONLY = classes()
            .that()
            .doNotHaveSimpleName("Datasheet")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java.lang..",
                    "java.util..",
                    "org.lowfirst.transfer..",
                    "org.lowfirst.gas",
                    "org.hipparchus..",
                    "org.jspecify.annotations");

    /** The one class that reads files: those beside the classes. */
    @ArchTest
    static final ArchRule DATASHEETS_READ_RESOURCES = classes()
            .that()
            .haveSimpleName("Datasheet")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java.lang..",
                    "java.util..",
                    "java.io",
                    "java.nio.charset",
                    "org.lowfirst.transfer..",
                    "org.jspecify.annotations");

    @ArchTest
    static final ArchRule PACKAGES_HAVE_NO_CYCLES =
            slices().matching("org.lowfirst.(transfer..)").should().beFreeOfCycles();
}
