package org.lowfirst.station.rules;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * All that is known of one cylinder that asks to be filled.
 *
 * @param name how people call it
 * @param lastTest latest test marked, null when none can be read
 * @param answers answers to the condition questions by their code, see {@link RuleBook#questions}
 * @param plusEntry plus-rating entered with its source, null when none
 * @param permitTerms terms of its permit, null when none were entered
 * @param wanted the contents wanted, stated as settled pressures at the temperatures of
 *     {@link RuleBook#temperatures}; empty when only the cylinder is judged
 */
public record CylinderFacts(
        String name,
        Nameplate nameplate,
        @Nullable TestMark lastTest,
        Use use,
        Service service,
        Map<String, Answer> answers,
        @Nullable PlusEntry plusEntry,
        @Nullable PermitTerms permitTerms,
        List<PressureAt> wanted) {

    public CylinderFacts {
        answers = Map.copyOf(answers);
        wanted = List.copyOf(wanted);
    }

    /** Facts of a cylinder nothing else is known of: no questions answered, nothing entered, nothing wanted. */
    public static CylinderFacts of(
            String name, Nameplate nameplate, @Nullable TestMark lastTest, Use use, Service service) {
        return new CylinderFacts(name, nameplate, lastTest, use, service, Map.of(), null, null, List.of());
    }

    public CylinderFacts wanting(List<PressureAt> contents) {
        return new CylinderFacts(name, nameplate, lastTest, use, service, answers, plusEntry, permitTerms, contents);
    }

    public CylinderFacts answering(Map<String, Answer> given) {
        return new CylinderFacts(name, nameplate, lastTest, use, service, given, plusEntry, permitTerms, wanted);
    }

    public CylinderFacts withPlus(PlusEntry entry) {
        return new CylinderFacts(name, nameplate, lastTest, use, service, answers, entry, permitTerms, wanted);
    }

    public CylinderFacts withPermit(PermitTerms terms) {
        return new CylinderFacts(name, nameplate, lastTest, use, service, answers, plusEntry, terms, wanted);
    }
}
