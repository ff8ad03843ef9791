package org.lowfirst.app.journal;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The members of a payload, read and written by name. Absent and null are the same and are not written. */
final class Payload {

    private final Map<String, @Nullable Object> members;

    Payload() {
        this(new TreeMap<>());
    }

    Payload(Map<String, @Nullable Object> members) {
        this.members = members;
    }

    Payload with(String name, @Nullable Object value) {
        if (value instanceof Payload part) {
            members.put(name, part.members);
        } else if (value != null) {
            members.put(name, value);
        }
        return this;
    }

    Payload withAll(String name, List<Payload> parts) {
        members.put(name, parts.stream().map(part -> part.members).toList());
        return this;
    }

    Map<String, @Nullable Object> members() {
        return members;
    }

    String text(String name) {
        return typed(name, String.class);
    }

    @Nullable
    String textOrNull(String name) {
        return members.get(name) == null ? null : text(name);
    }

    boolean truth(String name) {
        return typed(name, Boolean.class);
    }

    long number(String name) {
        return typed(name, Long.class);
    }

    <T> T part(String name, Function<Payload, T> read) {
        return read.apply(new Payload(object(typed(name, Map.class), name)));
    }

    <T extends @Nullable Object> @Nullable T partOrNull(String name, Function<Payload, T> read) {
        return members.get(name) == null ? null : part(name, read);
    }

    <T> List<T> parts(String name, Function<Payload, T> read) {
        return ((List<?>) typed(name, List.class))
                .stream()
                        .map(element -> read.apply(new Payload(object(element, name))))
                        .toList();
    }

    List<String> texts(String name) {
        return ((List<?>) typed(name, List.class))
                .stream().map(element -> of(String.class, element, name)).toList();
    }

    @SuppressWarnings("unchecked") // objects come from JsonText or from Payload, which make no other maps
    private static Map<String, @Nullable Object> object(@Nullable Object value, String name) {
        return (Map<String, @Nullable Object>) of(Map.class, value, name);
    }

    private <T> T typed(String name, Class<T> type) {
        return of(type, members.get(name), name);
    }

    private static <T> T of(Class<T> type, @Nullable Object value, String name) {
        if (!type.isInstance(value)) {
            throw new JsonFault(
                    (value == null
                            ? "the member " + name + " is missing"
                            : "the member " + name + " is of another type"),
                    0);
        }
        return type.cast(value);
    }
}
