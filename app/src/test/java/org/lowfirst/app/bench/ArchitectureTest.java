package org.lowfirst.app.bench;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(
        packages = {"org.lowfirst.app.bench", "org.lowfirst.app.journal"},
        importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    @ArchTest
    static final ArchRule benchKnowsTheModulesBelowAndTheJournal = classes()
            .that()
            .resideInAPackage("org.lowfirst.app.bench")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "org.lowfirst.app.bench",
                    "org.lowfirst.app.fitness",
                    "org.lowfirst.app.honest",
                    "org.lowfirst.app.journal",
                    "org.lowfirst.app.outlook",
                    "org.lowfirst.app.money",
                    "org.lowfirst.app.words",
                    "org.lowfirst.station..",
                    "org.lowfirst.planning..",
                    "org.lowfirst.transfer..",
                    "org.lowfirst.gas",
                    "org.jspecify.annotations",
                    "java..");

    @ArchTest
    static final ArchRule journalKnowsFactsAndStorageOnly = classes()
            .that()
            .resideInAPackage("org.lowfirst.app.journal")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "org.lowfirst.app.journal",
                    "org.lowfirst.station..",
                    "org.lowfirst.gas",
                    "org.sqlite..",
                    "com.zaxxer.hikari..",
                    "org.jdbi.v3.core..",
                    "org.flywaydb.core..",
                    "tools.jackson.core..",
                    "org.jspecify.annotations",
                    "java..",
                    "javax.sql");

    @ArchTest
    static final ArchRule onlyTheJournalTouchesADatabase = noClasses()
            .that()
            .resideInAPackage("org.lowfirst.app.bench")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.sql", "javax.sql");
}
