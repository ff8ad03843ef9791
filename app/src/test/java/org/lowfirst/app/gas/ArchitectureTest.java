package org.lowfirst.app.gas;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.lowfirst.app.gas", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {

    @ArchTest
    static final ArchRule KNOWS_GAS_AND_WARM_PLANS_ONLY = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java.lang..",
                    "java.util..",
                    "java.io",
                    "java.math",
                    "java.nio..",
                    "org.jspecify.annotations",
                    "org.lowfirst.app.file",
                    "org.lowfirst.app.sheet",
                    "org.lowfirst.app.gas",
                    "org.lowfirst.gas",
                    "org.lowfirst.transfer.warm",
                    "org.lowfirst.planning",
                    "org.lowfirst.planning.warm");
}
