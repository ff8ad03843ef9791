package org.lowfirst.web.picture;

import gg.jte.Content;
import gg.jte.TemplateOutput;
import java.util.Locale;

/**
 * Writes one SVG picture. Looks come from the stylesheet by class names, so that no inline style is needed; text is escaped.
 * Coordinates are in the units of the view box, with at most one decimal.
 */
final class Svg implements Content {

    private final StringBuilder markup = new StringBuilder(2048);

    /** A picture that says {@code description} to whoever cannot see it. */
    static Svg described(double width, double height, String description) {
        return new Svg(width, height, "role=\"img\" aria-label=\"" + escaped(description) + '"');
    }

    /** A picture that repeats what text beside it says. */
    static Svg decorative(double width, double height) {
        return new Svg(width, height, "aria-hidden=\"true\" focusable=\"false\"");
    }

    private Svg(double width, double height, String attributes) {
        markup.append("<svg class=\"picture\" viewBox=\"0 0 ")
                .append(number(width))
                .append(' ')
                .append(number(height))
                .append("\" ")
                .append(attributes)
                .append('>');
    }

    Svg rect(String looks, double x, double y, double width, double height) {
        return rounded(looks, x, y, width, height, 0);
    }

    Svg rounded(String looks, double x, double y, double width, double height, double radius) {
        markup.append("<rect class=\"").append(looks).append('"');
        attribute("x", x);
        attribute("y", y);
        attribute("width", Math.max(0, width));
        attribute("height", Math.max(0, height));
        if (radius > 0) {
            attribute("rx", radius);
        }
        markup.append("/>");
        return this;
    }

    Svg line(String looks, double x1, double y1, double x2, double y2) {
        markup.append("<line class=\"").append(looks).append('"');
        attribute("x1", x1);
        attribute("y1", y1);
        attribute("x2", x2);
        attribute("y2", y2);
        markup.append("/>");
        return this;
    }

    /** @param path path commands, made by the program and not typed by anybody */
    Svg path(String looks, String path) {
        markup.append("<path class=\"")
                .append(looks)
                .append("\" d=\"")
                .append(path)
                .append("\"/>");
        return this;
    }

    /** @param anchor start, middle or end */
    Svg text(String looks, double x, double y, int size, String anchor, String text) {
        markup.append("<text class=\"")
                .append(looks)
                .append("\" font-size=\"")
                .append(size)
                .append('"');
        markup.append(" text-anchor=\"").append(anchor).append('"');
        attribute("x", x);
        attribute("y", y);
        markup.append('>').append(escaped(text)).append("</text>");
        return this;
    }

    Svg end() {
        markup.append("</svg>");
        return this;
    }

    @Override
    public void writeTo(TemplateOutput output) {
        output.writeContent(markup.toString());
    }

    @Override
    public String toString() {
        return markup.toString();
    }

    private void attribute(String name, double value) {
        markup.append(' ').append(name).append("=\"").append(number(value)).append('"');
    }

    static String number(double value) {
        double tenths = Math.rint(value * 10) / 10;
        return tenths == Math.rint(tenths) ? Long.toString((long) tenths) : String.format(Locale.ROOT, "%.1f", tenths);
    }

    static String escaped(String text) {
        StringBuilder safe = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                default -> safe.append(c);
            }
        }
        return safe.toString();
    }
}
