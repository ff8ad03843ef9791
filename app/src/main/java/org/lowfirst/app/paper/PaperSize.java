package org.lowfirst.app.paper;

/** Sizes of paper. A4 by ISO 216:2007 table 2; Letter by ANSI/ASME Y14.1, size A (both figures from memory). */
public enum PaperSize {
    A4("A4", 210.0, 297.0),
    LETTER("Letter", 215.9, 279.4);

    private final String label;
    private final double width_mm;
    private final double height_mm;

    PaperSize(String label, double width_mm, double height_mm) {
        this.label = label;
        this.width_mm = width_mm;
        this.height_mm = height_mm;
    }

    /** Name people know it by; the same in every language. */
    public String label() {
        return label;
    }

    /** Short side [mm]. */
    public double width_mm() {
        return width_mm;
    }

    /** Long side [mm]. */
    public double height_mm() {
        return height_mm;
    }
}
