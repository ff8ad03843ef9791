package org.lowfirst.app.paper;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.lowfirst.app.paper", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    @ArchTest
    static final ArchRule papersKnowTheBenchAndThePressOnly = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "org.lowfirst.app.paper",
                    "org.lowfirst.app.bench",
                    "org.lowfirst.app.journal",
                    "org.lowfirst.app.words",
                    "org.lowfirst.station..",
                    "org.lowfirst.planning",
                    "org.lowfirst.gas",
                    "com.openhtmltopdf..",
                    "org.apache.pdfbox.pdmodel",
                    "com.google.zxing..",
                    "org.w3c.dom",
                    "org.jspecify.annotations",
                    "java..");
}
