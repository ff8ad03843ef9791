package org.lowfirst.station.rules;

import java.util.List;
import java.util.Map;

/** One rule of a {@link RuleBook}. Immutable; what it says is in its settings, so it can be edited as data. */
public sealed interface FillRule
        permits AlloyInspection,
                AssumedServicePressure,
                ConditionQuestions,
                ConnectionAccepted,
                CycleLimit,
                DevelopedPressureLimit,
                DueMonth,
                GasAccepted,
                KnownSpecification,
                LegibleMarkings,
                LifeLimit,
                MaterialPressureLimit,
                NoRetest,
                NoticePeriod,
                OtherService,
                OwnerConsent,
                OxygenCleaning,
                PastDue,
                PermitRule,
                PlusRating,
                Remark,
                ResidualFloor,
                RetestInterval,
                ServicePressureLimit,
                StarInterval {

    RuleHeading heading();

    /** Name of the kind of rule, as written in rule files. */
    RuleKind kind();

    /** What the rule says, by key, in the order it is written. */
    Map<String, String> settings();

    /** What the rule finds; empty when it has nothing to say about this cylinder. */
    default List<Finding> judge(CylinderFacts facts, Setting setting) {
        return List.of();
    }

    /** Pressures it does not let the contents of this cylinder exceed. */
    default List<PressureLimit> limits(CylinderFacts facts, Setting setting) {
        return List.of();
    }

    /** A rule of this kind can never be set aside. */
    static void requireNeverOverridden(RuleHeading heading) {
        if (heading.override() != OverridePolicy.NEVER) {
            throw new IllegalArgumentException("The override of rule " + heading.id()
                    + " must be \"never\": rules of its kind cannot be set aside.");
        }
    }
}
