package org.lowfirst.web;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import org.lowfirst.gas.Digits;

@AnalyzeClasses(packages = "org.lowfirst.web", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {

    @ArchTest
    static final ArchRule WEB_DEPENDS_ON_THE_USE_CASES_AND_A_WEB_FRAMEWORK = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java..",
                    "org.lowfirst.web..",
                    "org.lowfirst.app..",
                    "org.lowfirst.planning",
                    "org.lowfirst.planning.ahead",
                    "org.lowfirst.planning.camp",
                    "org.lowfirst.planning.contents",
                    "org.lowfirst.planning.exchange",
                    "org.lowfirst.planning.flight",
                    "org.lowfirst.planning.session",
                    "org.lowfirst.planning.study",
                    "org.lowfirst.planning.warm",
                    "org.lowfirst.station..",
                    "org.lowfirst.transfer",
                    "org.lowfirst.transfer.warm",
                    "org.lowfirst.gas",
                    "org.springframework..",
                    "jakarta.servlet..",
                    "gg.jte..",
                    "org.apache.catalina..",
                    "org.slf4j",
                    "org.jspecify.annotations");

    @ArchTest
    static final ArchRule PICTURES_KNOW_NUMBERS_AND_WORDS_ONLY = classes()
            .that()
            .resideInAPackage("org.lowfirst.web.picture")
            .should()
            .onlyDependOnClassesThat(
                    resideInAnyPackage("java..", "org.lowfirst.web.picture", "gg.jte", "org.jspecify.annotations")
                            .or(belongToAnyOf(Digits.class)));

    @ArchTest
    static final ArchRule PAGES_DO_NOT_COMPUTE_GAS = noClasses()
            .that()
            .resideInAPackage("org.lowfirst.web.fill")
            .should()
            .dependOnClassesThat()
            .haveSimpleName("EquationOfState");

    @ArchTest
    static final ArchRule NOBODY_READS_THE_SYSTEM_CLOCK = noClasses()
            .should()
            .callMethod(java.time.Clock.class, "systemUTC")
            .orShould()
            .callMethod(java.time.Clock.class, "systemDefaultZone");

    @ArchTest
    static final ArchRule PACKAGES_HAVE_NO_CYCLES =
            slices().matching("org.lowfirst.web.(*)..").should().beFreeOfCycles();
}
