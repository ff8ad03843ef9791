package org.lowfirst.web.stamp;

import java.math.BigDecimal;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.Marking;
import org.lowfirst.station.StampLine;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.rules.Nameplate;
import org.lowfirst.station.rules.PermitTerms;
import org.lowfirst.station.rules.Service;
import org.lowfirst.station.rules.StampedNameplate;
import org.lowfirst.station.rules.TestMark;
import org.lowfirst.station.rules.WallMaterial;
import org.lowfirst.station.stamp.Convention;
import org.lowfirst.station.stamp.Meaning;
import org.lowfirst.station.stamp.Stamp;
import org.lowfirst.web.figures.Figures;

/** Fills the fields of the form: from the marking entered, and over it from a line just read. */
final class StampFields {

    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MM/yyyy", Locale.ROOT);

    private StampFields() {}

    /** What the bottle is registered with. */
    static Map<String, String> of(BottleDetails details, Figures figures) {
        Map<String, String> fields = new HashMap<>();
        fields.put("marked", figures.toType(details.servicePressure()));
        fields.put("volume", figures.asTyped(details.waterVolume().stated()));
        fields.put("material", details.material() == null ? "unknown" : word(details.material()));
        return fields;
    }

    static void put(Marking marking, Map<String, String> fields, Figures figures) {
        StampLine stamp = marking.stamp();
        if (stamp != null) {
            fields.put("line", stamp.line());
            fields.put("convention", word(stamp.convention()));
        }
        put(fields, "specification", marking.plate().specification());
        fields.put("material", word(marking.plate().material()));
        StatedPressure test = marking.plate().testPressure();
        put(fields, "test", test == null ? null : figures.toType(test));
        put(fields, "made", month(marking.plate().made()));
        put(marking.lastTest(), fields);
        Service service = marking.service();
        put(fields, "gas", service.gas());
        put(fields, "connection", service.connection());
        fields.put("other-service", word(service.otherService()));
        fields.put("oxygen-clean", word(service.oxygenClean()));
        fields.put("consent", word(service.ownerConsents()));
        Integer fills = marking.fillsBefore();
        put(fields, "fills", fills == null ? null : fills.toString());
        PermitTerms permit = marking.permit();
        if (permit != null) {
            fields.put("permit-test", Integer.toString(permit.testYears()));
            fields.put("permit-life", Integer.toString(permit.lifeYears()));
            fields.put("permit", permit.source());
        }
    }

    /** What a line says goes over what stood there; what it does not say stays. */
    static void put(Stamp stamp, Map<String, String> fields, Figures figures) {
        StampedNameplate read = StampedNameplate.of(stamp);
        Nameplate plate = read.nameplate();
        put(fields, "specification", plate.specification());
        if (plate.material() != WallMaterial.UNKNOWN) {
            fields.put("material", word(plate.material()));
        }
        put(fields, "marked", typed(plate.servicePressure(), figures));
        put(fields, "test", typed(plate.testPressure(), figures));
        put(fields, "made", month(plate.made()));
        put(read.lastTest(), fields);
        stamp.find(Meaning.WaterVolume.class)
                .ifPresent(water -> fields.put(
                        "volume",
                        figures.toType(BigDecimal.valueOf(
                                        Math.round(water.volume().toLitres() * 100.0), 2)) + " L"));
        stamp.find(Meaning.GasName.class).ifPresent(gas -> fields.put("gas", gas.gas()));
        stamp.find(Meaning.Connection.class).ifPresent(outlet -> fields.put("connection", outlet.name()));
    }

    private static void put(@Nullable TestMark test, Map<String, String> fields) {
        if (test != null) {
            put(fields, "tested", month(test.month()));
            fields.put("plus", test.plus() ? "yes" : "");
            fields.put("star", test.star() ? "yes" : "");
            fields.put("suffix", test.suffix());
        }
    }

    private static void put(Map<String, String> fields, String field, @Nullable String value) {
        if (value != null) {
            fields.put(field, value);
        }
    }

    /** No coarser than it is stamped. */
    private static @Nullable String typed(@Nullable GaugePressure pressure, Figures figures) {
        return pressure == null ? null : Long.toString(Math.round(pressure.to(figures.pressureUnitOf())));
    }

    private static @Nullable String month(@Nullable YearMonth month) {
        return month == null ? null : MONTH.format(month);
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Convention convention(String word) {
        return word.equals("us") ? Convention.US : Convention.EUROPEAN;
    }
}
