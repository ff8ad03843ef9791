package org.lowfirst.station.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lowfirst.station.rules.Cylinders.TODAY;
import static org.lowfirst.station.rules.Cylinders.sound;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class OverrideTest {

    private static final OverrideRequest REQUEST =
            new OverrideRequest("A. Moss", "R. Fern", true, "surface rust only, wiped off");

    private static Judgement notSureAbout(String question, Answer answer) {
        Map<String, Answer> answers = new HashMap<>(sound().answers());
        answers.put(question, answer);
        return BuiltInBooks.us().judge(sound().answering(answers), TODAY);
    }

    private static OverrideOutcome.Problem problem(Judgement judgement, OverrideRequest request) {
        return ((OverrideOutcome.NotOverridden) OverrideOutcome.decide(judgement, request)).problem();
    }

    @Test
    void aSecondPersonWithTheRightAndAReasonMaySetADoubtAside() {
        Judgement doubt = notSureAbout("corroded", Answer.NOT_SURE);
        OverrideOutcome outcome = OverrideOutcome.decide(doubt, REQUEST);

        assertThat(outcome).isEqualTo(new OverrideOutcome.Overridden(doubt, REQUEST, doubt.refusals()));
    }

    @Test
    void aDefectIsNeverSetAside() {
        Judgement defect = notSureAbout("corroded", Answer.YES);

        assertThat(problem(defect, REQUEST)).isEqualTo(OverrideOutcome.Problem.NEVER_OVERRIDDEN);
        assertThat(((OverrideOutcome.NotOverridden) OverrideOutcome.decide(defect, REQUEST)).blocking())
                .extracting(Finding::advice)
                .containsExactly(Advice.SEND_TO_INSPECTION);
    }

    @Test
    void theSecondPersonIsAnotherOneWithTheRightAndSaysWhy() {
        Judgement doubt = notSureAbout("corroded", Answer.NOT_SURE);

        assertThat(problem(doubt, new OverrideRequest("A. Moss", " a. moss", true, "x")))
                .isEqualTo(OverrideOutcome.Problem.SAME_PERSON);
        assertThat(problem(doubt, new OverrideRequest("A. Moss", "R. Fern", false, "x")))
                .isEqualTo(OverrideOutcome.Problem.SECOND_HAS_NO_RIGHT);
        assertThat(problem(doubt, new OverrideRequest("A. Moss", "R. Fern", true, "  ")))
                .isEqualTo(OverrideOutcome.Problem.REASON_EMPTY);
        assertThat(problem(BuiltInBooks.us().judge(sound(), TODAY), REQUEST))
                .isEqualTo(OverrideOutcome.Problem.NOTHING_REFUSED);
    }
}
