package org.lowfirst.app.journal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;

/** Reads JSON text of the journal into maps, lists, strings, whole numbers and booleans. */
final class JsonText {

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private JsonText() {}

    /** @throws JsonFault when the text is not one JSON object of the journal's kind */
    static Map<String, @Nullable Object> parseObject(String text) {
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), text)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                throw new JsonFault("a { was expected", 1);
            }
            Map<String, @Nullable Object> object = readObject(parser);
            if (parser.nextToken() != null) {
                throw new JsonFault("more text after the end", column(parser));
            }
            return object;
        } catch (JacksonException e) {
            throw new JsonFault(e.getOriginalMessage(), e.getLocation().getColumnNr(), e);
        }
    }

    private static Map<String, @Nullable Object> readObject(JsonParser parser) {
        Map<String, @Nullable Object> object = new TreeMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            parser.nextToken();
            object.put(name, readValue(parser));
        }
        return object;
    }

    private static List<@Nullable Object> readArray(JsonParser parser) {
        List<@Nullable Object> array = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            array.add(readValue(parser));
        }
        return array;
    }

    private static @Nullable Object readValue(JsonParser parser) {
        JsonToken token = parser.currentToken();
        if (token == null) {
            throw new JsonFault("the text ends too early", column(parser));
        }
        return switch (token) {
            case START_OBJECT -> readObject(parser);
            case START_ARRAY -> readArray(parser);
            case VALUE_STRING -> parser.getString();
            case VALUE_NUMBER_INT -> parser.getLongValue();
            case VALUE_TRUE -> true;
            case VALUE_FALSE -> false;
            case VALUE_NULL -> null;
            default -> throw new JsonFault("decimals are written as strings here", column(parser));
        };
    }

    private static int column(JsonParser parser) {
        return parser.currentTokenLocation().getColumnNr();
    }
}
