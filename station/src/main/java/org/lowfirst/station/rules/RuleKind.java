package org.lowfirst.station.rules;

import java.util.function.BiFunction;

/** The kinds of rule there are. The words are written to rule files and to the journal; they are for ever. */
public enum RuleKind {
    DUE_MONTH("due-month", true, DueMonth::of),
    NOTICE("notice", true, NoticePeriod::of),
    PAST_DUE("past-due", true, PastDue::of),
    SERVICE_PRESSURE("service-pressure", true, ServicePressureLimit::of),
    KNOWN_SPECIFICATION("known-specification", true, KnownSpecification::of),
    RETEST("retest", false, RetestInterval::of),
    NO_RETEST("no-retest", false, NoRetest::of),
    STAR("star", false, StarInterval::of),
    PERMIT("permit", false, PermitRule::of),
    LIFE("life", false, LifeLimit::of),
    CYCLES("cycles", false, CycleLimit::of),
    ASSUMED_SERVICE_PRESSURE("assumed-service-pressure", false, AssumedServicePressure::of),
    PLUS_RATING("plus-rating", false, PlusRating::of),
    MATERIAL_PRESSURE("material-pressure", false, MaterialPressureLimit::of),
    DEVELOPED_PRESSURE("developed-pressure", false, DevelopedPressureLimit::of),
    LEGIBLE("legible", false, LegibleMarkings::of),
    RESIDUAL_FLOOR("residual-floor", false, ResidualFloor::of),
    GAS("gas", false, GasAccepted::of),
    CONNECTION("connection", false, ConnectionAccepted::of),
    OTHER_SERVICE("other-service", false, OtherService::of),
    OXYGEN_CLEAN("oxygen-clean", false, OxygenCleaning::of),
    CONDITION("condition", false, ConditionQuestions::of),
    CONSENT("consent", false, OwnerConsent::of),
    ALLOY("alloy", false, AlloyInspection::of),
    REMARK("remark", false, Remark::of);

    private final String word;
    private final boolean required;
    /** A method reference without state. */
    @SuppressWarnings("ImmutableEnumChecker")
    private final Maker maker;

    RuleKind(String word, boolean required, Maker maker) {
        this.word = word;
        this.required = required;
        this.maker = maker;
    }

    /** As written in a rule file. */
    public String word() {
        return word;
    }

    /** Whether every book must have one in force. */
    public boolean required() {
        return required;
    }

    FillRule make(RuleHeading heading, RuleSettings settings) {
        return maker.apply(heading, settings);
    }

    /** Makes a rule of one kind from its settings. */
    private interface Maker extends BiFunction<RuleHeading, RuleSettings, FillRule> {}
}
