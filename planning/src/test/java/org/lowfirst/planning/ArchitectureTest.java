package org.lowfirst.planning;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.lowfirst.planning", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {

    @ArchTest
    static final ArchRule A_FILL_DEPENDS_ON_TRANSFER_AND_GAS_ONLY = classes()
            .that()
            .resideInAPackage("org.lowfirst.planning")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java.lang..",
                    "java.text",
                    "java.util",
                    "java.util.function",
                    "java.util.stream",
                    "org.lowfirst.planning",
                    "org.lowfirst.planning.words",
                    "org.lowfirst.transfer",
                    "org.lowfirst.gas",
                    "org.jspecify.annotations");

    /** java.text only for how a language writes numbers; java.io and URL only to read the module's own resource files. */
    @ArchTest
    static final ArchRule ALL_OF_PLANNING_DEPENDS_ON_TRANSFER_AND_GAS_AND_A_NUMERICS_LIBRARY = classes()
            .should()
            .onlyDependOnClassesThat(resideInAnyPackage(
                            "java.lang..",
                            "java.text",
                            "java.util..",
                            "java.time..",
                            "java.io",
                            "java.nio.charset",
                            "org.lowfirst.planning..",
                            "org.lowfirst.transfer..",
                            "org.lowfirst.gas",
                            "org.hipparchus..",
                            "org.jspecify.annotations")
                    .or(belongToAnyOf(java.net.URL.class)));

    @ArchTest
    static final ArchRule NOBODY_READS_THE_CLOCK = noClasses()
            .should()
            .dependOnClassesThat()
            .belongToAnyOf(java.time.Clock.class, java.util.UUID.class, java.util.Timer.class);

    @ArchTest
    static final ArchRule ONE_FILL_KNOWS_NOTHING_OF_THE_LARGER_QUESTIONS = classes()
            .that()
            .resideInAPackage("org.lowfirst.planning")
            .should()
            .onlyDependOnClassesThat(not(resideInAPackage("org.lowfirst.planning.*.."))
                    .or(resideInAPackage("org.lowfirst.planning.words")));

    @ArchTest
    static final ArchRule PACKAGES_HAVE_NO_CYCLES =
            slices().matching("org.lowfirst.(planning..)").should().beFreeOfCycles();
}
