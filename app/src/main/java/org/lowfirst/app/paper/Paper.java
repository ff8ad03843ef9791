package org.lowfirst.app.paper;

/** Everything one paper shows; a {@link Press} makes a PDF of it. */
public sealed interface Paper
        permits SupplyLabels, BottleTags, BenchSheet, BlankLog, FillRecord, MonthStatement, EmergencyCard {

    Heading heading();
}
