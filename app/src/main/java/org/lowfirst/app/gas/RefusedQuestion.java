package org.lowfirst.app.gas;

import java.util.List;

/**
 * The question has no answer as it was typed.
 *
 * @param objections everything that is wrong with it, at least one
 */
public record RefusedQuestion(List<Objection> objections) implements GasAnswer {

    public RefusedQuestion {
        objections = List.copyOf(objections);
    }

    /**
     * One thing that is wrong.
     *
     * @param option where it was typed, e.g. "--at 70"; empty when it is about several
     * @param sentence what is wrong and what to do
     */
    public record Objection(String option, String sentence) {}
}
