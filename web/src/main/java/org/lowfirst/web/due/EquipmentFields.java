package org.lowfirst.web.due;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Rule;
import org.lowfirst.station.due.DueKind;
import org.lowfirst.station.due.Upkeep;
import org.lowfirst.web.due.EquipmentPage.Kind;
import org.lowfirst.web.form.Form;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.Sender;

/** The fields that describe a piece of equipment. */
final class EquipmentFields {

    /** Longest interval taken without a doubt: ten years between tests of a cylinder, and some more. */
    private static final BigDecimal LONGEST_MONTHS = BigDecimal.valueOf(180);

    private static final Map<Rule, String> FIELDS = Map.of(
            Rule.NAME_EMPTY, "name",
            Rule.SOURCE_EMPTY, "source",
            Rule.REASON_EMPTY, "reason");

    private EquipmentFields() {}

    /** @param day name of the field of the day it was done */
    static String field(Optional<Rule> rule, String day) {
        return rule.map(broken -> broken == Rule.DAY_TO_COME ? day : FIELDS.getOrDefault(broken, "form"))
                .orElse("form");
    }

    static List<Kind> kinds(Words words) {
        return Arrays.stream(DueKind.values())
                .filter(DueKind::equipment)
                .map(kind -> new Kind(word(kind), words.of("equipment.kind." + word(kind))))
                .toList();
    }

    static Form blank(LocalDate today) {
        return Form.with(Map.of("kind", word(DueKind.HOSE), "last", today.toString()));
    }

    static Form filled(Upkeep upkeep, LocalDate today) {
        Map<String, String> fields = new HashMap<>();
        fields.put("kind", word(upkeep.kind()));
        fields.put("name", upkeep.name());
        fields.put("last", upkeep.lastDone().toString());
        fields.put("months", Integer.toString(upkeep.months()));
        fields.put("source", upkeep.source());
        fields.put("day", today.toString());
        return Form.with(fields);
    }

    private static String word(DueKind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** @return null with faults in the reader when something is missing or cannot be */
    static @Nullable Upkeep read(Reader reader, Words words) {
        DueKind kind = Arrays.stream(DueKind.values())
                .filter(DueKind::equipment)
                .filter(known -> word(known).equals(reader.text("kind")))
                .findFirst()
                .orElse(DueKind.HOSE);
        String name = reader.required("name", "fault.name");
        reader.required("last", "fault.equipment.last");
        @Nullable LocalDate last = reader.dayIfTyped("last");
        reader.required("months", "fault.equipment.months");
        int months = months(reader, words);
        String source = reader.required("source", "fault.attest.by");
        reader.required(Sender.WHO, "fault.who");
        if (!Sender.of(reader.form().typed()).hasKey()) {
            reader.fault("form", words.of("fault.key"));
        }
        return last == null || !reader.form().sound() ? null : new Upkeep(kind, name, last, months, source);
    }

    private static int months(Reader reader, Words words) {
        @Nullable BigDecimal typed = reader.numberIfTyped("months");
        if (typed == null) {
            return 0;
        }
        boolean whole = typed.stripTrailingZeros().scale() <= 0;
        if (!whole || typed.signum() <= 0 || typed.compareTo(LONGEST_MONTHS) > 0) {
            reader.fault("months", words.of("fault.equipment.interval", typed.toPlainString(), LONGEST_MONTHS));
            return 0;
        }
        return typed.intValueExact();
    }
}
