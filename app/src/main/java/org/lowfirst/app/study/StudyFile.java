package org.lowfirst.app.study;

import org.lowfirst.app.file.NumberReader;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.study.StudyRequest;

/**
 * A study file that can be run.
 *
 * @param request what it asks
 * @param rules at which temperature marked pressures and delivered readings count
 * @param units the units it uses, in which the sheet answers
 * @param noted where things stand in the file
 */
record StudyFile(StudyRequest request, ReferenceRule rules, ShownUnits units, NumberReader noted) {

    /** The condition at which an amount of gas is stated as litres. */
    ReferenceCondition standard() {
        return rules == ReferenceRule.US ? ReferenceCondition.US_70F_1ATM : ReferenceCondition.ISO_15C_1ATM;
    }
}
