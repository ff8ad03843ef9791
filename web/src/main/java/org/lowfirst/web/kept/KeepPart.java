package org.lowfirst.web.kept;

import java.math.BigDecimal;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.AheadFigure;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.workplace.BenchNow;

/**
 * The offer to keep what was typed for one look, so that it need not be typed again.
 *
 * @param address where it is sent
 * @param lines what is kept, name and number
 * @param fields hidden fields, by name
 * @param key of the form
 */
public record KeepPart(String address, List<String> lines, Map<String, String> fields, String key) {

    public KeepPart {
        lines = List.copyOf(lines);
        fields = new LinkedHashMap<>(fields);
    }

    /**
     * The offer, or null when nothing typed differs from what the bench keeps.
     *
     * @param typed the form of the page
     * @param figures which field holds which figure
     * @param back address below the bench's own to come back to
     */
    public static @Nullable KeepPart of(
            BenchNow now,
            Defaults defaults,
            Map<String, String> typed,
            Map<String, AheadFigure> figures,
            String back,
            String key) {
        Reader reader = new Reader(typed, now.bench().settings().units(), now.words());
        List<String> lines = new ArrayList<>();
        Map<String, String> fields = new LinkedHashMap<>();
        figures.forEach((field, figure) -> {
            @Nullable BigDecimal number = reader.numberIfTyped(field);
            if (number != null && !defaults.same(figure, number)) {
                fields.put(figure.key(), reader.text(field));
                lines.add(now.words()
                        .of(
                                "kept.line",
                                now.words().of("figure." + figure.key()),
                                now.figures().toType(number)));
            }
        });
        if (fields.isEmpty()) {
            return null;
        }
        fields.put("back", back + "?" + query(typed));
        return new KeepPart(now.place().path("/kept"), lines, fields, key);
    }

    private static String query(Map<String, String> typed) {
        return new TreeMap<>(typed)
                .entrySet().stream()
                        .filter(field -> !field.getKey().equals("saved")
                                && !field.getKey().equals("key")
                                && !field.getKey().equals("_csrf"))
                        .map(field -> URLEncoder.encode(field.getKey(), StandardCharsets.UTF_8) + "="
                                + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                        .collect(Collectors.joining("&"));
    }
}
