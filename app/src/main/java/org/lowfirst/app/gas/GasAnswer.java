package org.lowfirst.app.gas;

/** What came of a question about gas. */
public sealed interface GasAnswer permits ReadingAnswer, SnapAnswer, RefusedQuestion {}
