package org.lowfirst.station.stamp;

import java.time.YearMonth;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Mass;
import org.lowfirst.gas.Volume;

/** What one part of a stamp means. */
public sealed interface Meaning {

    /**
     * @param authority who stands behind the specification, e.g. "DOT", "TC", "EN"; empty when not stamped
     * @param code without the authority, e.g. "3AA", "ISO 9809-1"
     * @param number permit number, empty when none
     * @param known row of the table, null when the code is not in it
     */
    record Specification(
            String authority,
            String code,
            String number,
            @Nullable SpecificationMark known) implements Meaning {}

    record ServicePressure(GaugePressure pressure) implements Meaning {}

    record TestPressure(GaugePressure pressure) implements Meaning {}

    record SerialNumber(String serial) implements Meaning {}

    record Maker(String mark) implements Meaning {}

    /**
     * @param tester identification of who tested, empty when not stamped
     * @param suffix letters after the date, e.g. "E", "UE", "VE"; empty when none
     */
    record TestDate(YearMonth month, String tester, boolean plus, boolean star, String suffix) implements Meaning {}

    /** The month a test falls due in, as some countries stamp it. */
    record NextTest(YearMonth month) implements Meaning {}

    record WaterVolume(Volume volume) implements Meaning {}

    record EmptyMass(Mass mass) implements Meaning {}

    /** @param millimetres [mm] */
    record WallThickness(double millimetres) implements Meaning {}

    /** Highest elastic expansion allowed in the test, in cubic centimetres. */
    record ElasticExpansion(double cubicCentimetres) implements Meaning {}

    /** @param body four digits of the body that inspected, empty when not stamped */
    record ConformityMark(String mark, String body) implements Meaning {}

    /** Sign of the country of approval, test or manufacture. */
    record Country(String sign) implements Meaning {}

    /** Mark of the inspector or of the inspecting body. */
    record InspectionMark(String mark) implements Meaning {}

    /** Letter that says the steel may hold hydrogen and other embrittling gases. */
    record SteelForHydrogen() implements Meaning {}

    /** How the end was closed: "spun" or "plug". */
    record EndClosure(String word) implements Meaning {}

    record GasName(String gas) implements Meaning {}

    record Connection(String name) implements Meaning {}

    record NeckThread(String name) implements Meaning {}

    /** Not understood; kept as typed. */
    record Unknown(String text) implements Meaning {}
}
