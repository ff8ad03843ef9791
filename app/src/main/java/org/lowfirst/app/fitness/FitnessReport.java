package org.lowfirst.app.fitness;

import java.time.LocalDate;
import java.util.List;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Refusal;

/**
 * What the gate says of one bottle on one day.
 *
 * @param name what people call it
 * @param headline the word and what is left, e.g. "Fit, 16 days left"
 * @param questions questions of the book nobody has answered that day, in order
 * @param toSetAside what a second person would take on; empty when nothing can be set aside
 */
public record FitnessReport(
        BottleId bottle,
        String name,
        LocalDate day,
        FitnessWord word,
        String headline,
        Lines lines,
        List<Question> questions,
        List<Refusal> toSetAside) {

    public FitnessReport {
        questions = List.copyOf(questions);
        toSetAside = List.copyOf(toSetAside);
    }

    /**
     * @param refusals what is against it, questions and readings still to come left out
     * @param caps what keeps the fill below what was wanted
     * @param notes what is to be known
     * @param setAside what a second person took on
     * @param inOrder rules that passed
     */
    public record Lines(
            List<FindingLine> refusals,
            List<FindingLine> caps,
            List<FindingLine> notes,
            List<FindingLine> setAside,
            List<FindingLine> inOrder) {

        public Lines {
            refusals = List.copyOf(refusals);
            caps = List.copyOf(caps);
            notes = List.copyOf(notes);
            setAside = List.copyOf(setAside);
            inOrder = List.copyOf(inOrder);
        }
    }

    /**
     * A question to ask before a fill; "yes" sends the bottle away.
     *
     * @param code its name in the book
     * @param text for people
     */
    public record Question(String code, String text) {}

    /** Whether a fill may begin. */
    public boolean mayBeFilled() {
        return word.mayBeFilled();
    }
}
