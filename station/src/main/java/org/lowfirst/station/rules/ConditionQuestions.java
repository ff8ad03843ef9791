package org.lowfirst.station.rules;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Questions about what can be seen before each fill. "Yes" to any sends the cylinder away; "not sure" lets a second person
 * look.
 *
 * @param questions codes; the words for people are in the message file
 */
public record ConditionQuestions(RuleHeading heading, List<String> questions) implements FillRule {

    public ConditionQuestions {
        questions = List.copyOf(questions);
    }

    static ConditionQuestions of(RuleHeading heading, RuleSettings settings) {
        return new ConditionQuestions(heading, settings.names("questions"));
    }

    @Override
    public RuleKind kind() {
        return RuleKind.CONDITION;
    }

    @Override
    public Map<String, String> settings() {
        return RuleWords.none().with("questions", String.join(", ", questions)).asMap();
    }

    @Override
    public List<Finding> judge(CylinderFacts facts, Setting setting) {
        return questions.stream()
                .map(question -> judge(question, facts.answers().get(question)))
                .toList();
    }

    private Finding judge(String question, @Nullable Answer answer) {
        Measure measured = new Measure.OfWord(question);
        if (answer == null) {
            return Finding.refuse(heading, Advice.ANSWER_QUESTION, measured, Measure.NOTHING)
                    .withoutOverride();
        }
        Measure given = new Measure.OfWord(RuleSettings.word(answer));
        return switch (answer) {
            case NO -> Finding.allow(heading, measured, given);
            case YES ->
                Finding.refuse(heading, Advice.SEND_TO_INSPECTION, measured, given)
                        .withoutOverride();
            case NOT_SURE -> Finding.refuse(heading, Advice.LET_SECOND_PERSON_LOOK, measured, given);
        };
    }
}
