package org.lowfirst.web.stand;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Delivery;
import org.lowfirst.web.form.Reader;

/** The fields for what came on paper with a supply. */
public final class DeliveryFields {

    private DeliveryFields() {}

    /** What was typed; a day that cannot be read is a fault. */
    public static Delivery read(Reader reader) {
        @Nullable LocalDate rentFrom = reader.dayIfTyped("rent");
        return new Delivery(typed(reader, "lot"), rentFrom, typed(reader, "supplier"));
    }

    /** What the fields hold for a delivery that is known. */
    public static Map<String, String> filled(Delivery delivery) {
        Map<String, String> fields = new HashMap<>();
        fields.put("lot", said(delivery.lot()));
        @Nullable LocalDate rentFrom = delivery.rentFrom();
        fields.put("rent", rentFrom == null ? "" : rentFrom.toString());
        fields.put("supplier", said(delivery.supplier()));
        return fields;
    }

    private static String said(@Nullable String text) {
        return text == null ? "" : text;
    }

    private static @Nullable String typed(Reader reader, String field) {
        return reader.empty(field) ? null : reader.text(field);
    }
}
