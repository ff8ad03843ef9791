package org.lowfirst.app.paper;

/** A paper as a PDF file. Immutable. */
public final class PrintedPaper {

    private final String fileName;
    private final byte[] pdf;

    PrintedPaper(String fileName, byte[] pdf) {
        this.fileName = fileName;
        this.pdf = pdf.clone();
    }

    /** Name to save it under: small letters, digits and hyphens, with its ending. */
    public String fileName() {
        return fileName;
    }

    /** A copy of the file. */
    public byte[] pdf() {
        return pdf.clone();
    }
}
