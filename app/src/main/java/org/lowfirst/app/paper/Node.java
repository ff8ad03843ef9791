package org.lowfirst.app.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** An element of XHTML, built up and then written; whatever is text is escaped. Not thread-safe. */
final class Node {

    private final String name;
    private final Map<String, String> attributes = new LinkedHashMap<>();
    private final List<Object> inside = new ArrayList<>();

    private Node(String name) {
        this.name = name;
    }

    static Node of(String name) {
        return new Node(name);
    }

    /** @param looks value of the class attribute */
    static Node of(String name, String looks) {
        return new Node(name).with("class", looks);
    }

    static Node saying(String name, String text) {
        return new Node(name).say(text);
    }

    static Node saying(String name, String looks, String text) {
        return of(name, looks).say(text);
    }

    Node with(String attribute, String value) {
        attributes.put(attribute, value);
        return this;
    }

    Node say(String text) {
        inside.add(text);
        return this;
    }

    Node add(Node... nodes) {
        inside.addAll(List.of(nodes));
        return this;
    }

    Node addAll(List<Node> nodes) {
        inside.addAll(nodes);
        return this;
    }

    @Override
    public String toString() {
        StringBuilder out = new StringBuilder();
        write(out);
        return out.toString();
    }

    private void write(StringBuilder out) {
        out.append('<').append(name);
        attributes.forEach((attribute, value) -> out.append(' ')
                .append(attribute)
                .append("=\"")
                .append(escaped(value))
                .append('"'));
        out.append('>');
        for (Object one : inside) {
            if (one instanceof Node node) {
                node.write(out);
            } else {
                out.append(escaped((String) one));
            }
        }
        out.append("</").append(name).append('>');
    }

    /** Control characters that XML 1.0 does not know (section 2.2) are left out: nobody can print them. */
    private static String escaped(String text) {
        StringBuilder out = new StringBuilder(text.length() + 8);
        text.codePoints().filter(Node::printable).forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> out.appendCodePoint(c);
            }
        });
        return out.toString();
    }

    private static boolean printable(int c) {
        return c == '\t'
                || c == '\n'
                || c == '\r'
                || (c >= 0x20 && c <= 0xD7FF)
                || (c >= 0xE000 && c <= 0xFFFD)
                || c >= 0x10000;
    }
}
