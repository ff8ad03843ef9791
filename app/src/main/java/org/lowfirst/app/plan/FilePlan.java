package org.lowfirst.app.plan;

/** What came of planning from a file. */
public sealed interface FilePlan permits PlannedFile, RefusedFile {}
