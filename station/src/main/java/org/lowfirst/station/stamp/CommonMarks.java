package org.lowfirst.station.stamp;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import org.lowfirst.gas.Mass;
import org.lowfirst.gas.Volume;
import org.lowfirst.gas.VolumeUnit;

/** Marks both conventions share, and what is left for serial numbers and makers. */
final class CommonMarks {

    /** Water at the density used for marked water weights [kg/L], rounded as the trade does. */
    private static final double WATER_KG_PER_L = 1.0;

    /** Largest water volume of what ADR 1.2.1 calls a cylinder [L]; from memory. More may be gas, not water. */
    private static final double LARGEST_CYLINDER_L = 150.0;

    private static final String NUMBER = "(\\d{1,5}(?:[.,]\\d{1,3})?)";

    /** To be tried before the numbers of a convention. */
    static final List<Recogniser> LABELLED = List.of(
            Recogniser.of("(?:S/?N|SERIAL|NO\\.?|NR\\.?)\\s*[:#=]?\\s*([A-Z0-9][A-Z0-9-]*)", CommonMarks::serial),
            Recogniser.of("REE\\s*[:=]?\\s*" + NUMBER, CommonMarks::elasticExpansion),
            Recogniser.of("(?:TW|TARE|MASS|WT|M)?\\s*[:=]?\\s*" + NUMBER + "\\s*(KG|LBS?)", CommonMarks::emptyMass),
            Recogniser.of("(?:WC|W\\.C\\.)\\s*[:=]?\\s*" + NUMBER + "\\s*(KG|LBS?|L|CU\\s?IN)", CommonMarks::water),
            Recogniser.of("(?:V\\s*[:=]?\\s*)?" + NUMBER + "\\s*(L|LITRES?|LITERS?)", CommonMarks::water),
            Recogniser.of(NUMBER + "\\s*MM", CommonMarks::thickness),
            Recogniser.of("SPUN|PLUG", CommonMarks::endClosure),
            Recogniser.of("CGA[-\\s]*(\\d{3,4})", CommonMarks::outlet),
            Recogniser.of(
                    "(?:MED(?:ICAL)?\\s+)?(?:OXYGEN|OXYGENE|OXYG\u00c8NE|SAUERSTOFF|OXY|O2|UN\\s*1072)",
                    CommonMarks::oxygen));

    /** To be tried last. */
    static final List<Recogniser> LEFT_OVERS = List.of(
            Recogniser.of("M\\d{4}", CommonMarks::makerNumber),
            Recogniser.of("(?=[A-Z0-9/-]*\\d)([A-Z0-9][A-Z0-9/-]{1,24})", CommonMarks::bareSerial),
            Recogniser.of("\\p{L}[\\p{L}&.-]{1,24}", CommonMarks::maker));

    private CommonMarks() {}

    private static List<Part> serial(Matcher m, Seen seen) {
        return Parts.whole(m, new Meaning.SerialNumber(m.group(1)));
    }

    private static List<Part> elasticExpansion(Matcher m, Seen seen) {
        return Parts.whole(m, new Meaning.ElasticExpansion(Parts.number(m, 1)));
    }

    private static List<Part> emptyMass(Matcher m, Seen seen) {
        double value = Parts.number(m, 1);
        boolean metric = Parts.capitals(m, 2).equals("KG");
        return Parts.whole(m, new Meaning.EmptyMass(metric ? new Mass(value) : Mass.ofPounds(value)));
    }

    private static List<Part> water(Matcher m, Seen seen) {
        double value = Parts.number(m, 1);
        Volume volume = switch (Parts.capitals(m, 2).replace(" ", "")) {
            case "KG" -> Volume.ofLitres(value / WATER_KG_PER_L);
            case "LB", "LBS" -> Volume.ofLitres(Mass.ofPounds(value).kilograms() / WATER_KG_PER_L);
            case "CUIN" -> Volume.of(value, VolumeUnit.CUBIC_INCH);
            default -> Volume.ofLitres(value);
        };
        Meaning water = new Meaning.WaterVolume(volume);
        return volume.toLitres() > LARGEST_CYLINDER_L
                ? Parts.whole(m, water, new Ambiguity(Ambiguity.Kind.WATER_OR_GAS_VOLUME, null))
                : Parts.whole(m, water);
    }

    private static List<Part> thickness(Matcher m, Seen seen) {
        return Parts.whole(m, new Meaning.WallThickness(Parts.number(m, 1)));
    }

    private static List<Part> endClosure(Matcher m, Seen seen) {
        return Parts.whole(m, new Meaning.EndClosure(m.group().toLowerCase(Locale.ROOT)));
    }

    private static List<Part> outlet(Matcher m, Seen seen) {
        return Parts.whole(m, new Meaning.Connection("CGA " + m.group(1)));
    }

    private static List<Part> oxygen(Matcher m, Seen seen) {
        return Parts.whole(m, new Meaning.GasName("oxygen"));
    }

    private static List<Part> makerNumber(Matcher m, Seen seen) {
        boolean serialSeen = seen.has(Meaning.SerialNumber.class);
        return serialSeen && !seen.has(Meaning.Maker.class)
                ? Parts.whole(m, new Meaning.Maker(Parts.capitals(m, 0)))
                : List.of();
    }

    /** The first mark with a digit after the specification is the serial number; it may look like a tester's. */
    private static List<Part> bareSerial(Matcher m, Seen seen) {
        if (!seen.has(Meaning.Specification.class) || seen.has(Meaning.SerialNumber.class)) {
            return List.of();
        }
        Meaning serial = new Meaning.SerialNumber(m.group());
        return Parts.capitals(m, 0).matches("[A-Z]\\d{3}")
                ? Parts.whole(m, serial, new Ambiguity(Ambiguity.Kind.SERIAL_OR_TESTER, null))
                : Parts.whole(m, serial);
    }

    private static List<Part> maker(Matcher m, Seen seen) {
        return seen.has(Meaning.SerialNumber.class) && !seen.has(Meaning.Maker.class)
                ? Parts.whole(m, new Meaning.Maker(m.group()))
                : List.of();
    }

    /** Capitals with single spaces. */
    static String squeezed(String text) {
        return text.strip().replaceAll("\\s+", " ").toUpperCase(Locale.ROOT);
    }
}
