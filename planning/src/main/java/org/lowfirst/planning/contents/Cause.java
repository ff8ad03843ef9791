package org.lowfirst.planning.contents;

/** The explanation that fits a surprise best. */
public enum Cause {
    /** Noise alone. */
    NOISE,
    /** Gas is lost over time. */
    LEAK,
    /** Gas left all at once with no stage recorded for it. */
    UNRECORDED_FILL,
    /** The supply of the record gave too little and another gave that much too much. */
    WRONG_VALVE,
    /** The supply of the record gave too little, and no other explains it. */
    OTHER_SOURCE,
    /** The cylinder holds far more than before, with nothing put in. */
    UNRECORDED_EXCHANGE,
    /** It reads higher than it can, by no more than a gauge may err. */
    READS_HIGH,
    /** One reading stands apart from those before and after. */
    MISREAD,
    /** Every stage into this bottle is off in proportion. */
    BOTTLE_VOLUME,
    /** Every stage out of this supply is off in proportion. */
    SUPPLY_VOLUME,
    /** Two gauges on one pressure differ by more than both classes allow. */
    GAUGE_PAIR
}
