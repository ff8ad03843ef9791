package org.lowfirst.gas;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.lowfirst.gas", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    @ArchTest
    static final ArchRule dependsOnTheJdkOnly = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("org.lowfirst.gas..", "java..", "org.jspecify..");

    @ArchTest
    static final ArchRule readsNoClockNoNetworkNoDatabase = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.time..", "java.net.http..", "java.sql..", "java.nio.file..");
}
