package org.lowfirst.app.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Every paper as it comes out of the press, looked at by readers of PDF, pictures and codes that are not ours. */
final class PressTest {

    private static final double POINTS_PER_MM = 72.0 / 25.4;
    private static final int DPI = 200;
    private static final double MARGIN_MM = 13.0;
    private static final double TAG_HEIGHT_MM = 48.0;

    private final Press press = Papers.press(Locale.ENGLISH);

    @TempDir
    Path directory;

    @Test
    void everyKindOfPaperIsTried() {
        assertThat(Papers.all().stream().<Class<?>>map(Object::getClass))
                .containsExactlyInAnyOrder(Paper.class.getPermittedSubclasses());
    }

    /** Sides by ISO 216 and ANSI/ASME Y14.1, from memory. */
    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void everyPageHasTheSizeAskedFor(PaperSize size) throws IOException {
        double shortSide_mm = size == PaperSize.A4 ? 210.0 : 215.9;
        double longSide_mm = size == PaperSize.A4 ? 297.0 : 279.4;
        for (Paper paper : Papers.all()) {
            try (PDDocument document = document(paper, size)) {
                for (PDPage page : document.getPages()) {
                    boolean wide = paper instanceof BlankLog;
                    assertThat(page.getMediaBox().getWidth() / POINTS_PER_MM)
                            .as(paper.getClass().getSimpleName())
                            .isCloseTo(wide ? longSide_mm : shortSide_mm, within(0.3));
                    assertThat(page.getMediaBox().getHeight() / POINTS_PER_MM)
                            .isCloseTo(wide ? shortSide_mm : longSide_mm, within(0.3));
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"A4, en", "LETTER, en", "A4, de", "LETTER, de"})
    void everyPaperFitsOneSheet(PaperSize size, String language) throws IOException {
        Press inLanguage = Papers.press(Locale.forLanguageTag(language));
        for (Paper paper : Papers.all()) {
            byte[] pdf = inLanguage.print(paper, size).pdf();
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertThat(document.getNumberOfPages())
                        .as(paper.getClass().getSimpleName() + " on " + size)
                        .isEqualTo(1);
            }
            String keep = System.getProperty("papers.keep");
            if (keep != null) {
                Files.write(
                        Path.of(keep, language + "-" + paper.getClass().getSimpleName() + "-" + size + ".pdf"), pdf);
            }
        }
    }

    @Test
    void aSupplyThatMustNotBeOpenedSaysSoOnLabelAndSheet() throws IOException {
        assertThat(text(Papers.labels(3)).replaceAll("\\s+", " "))
                .contains("TAGGED OUT, NOT TO BE OPENED: valve leaks");
        assertThat(text(Papers.sheet(1)).replaceAll("\\s+", " ")).contains("HELD BACK: for the squad");
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void eightLabelsAndTenTagsFitASheetAndTheNextOneBeginsAnother(PaperSize size) throws IOException {
        assertThat(pages(Papers.labels(8), size)).isEqualTo(1);
        assertThat(pages(Papers.labels(9), size)).isEqualTo(2);
        assertThat(pages(Papers.tags(10), size)).isEqualTo(1);
        assertThat(pages(Papers.tags(11), size)).isEqualTo(2);
    }

    @Test
    void aLongBenchSheetGoesOnWithItsHeadings() throws IOException {
        try (PDDocument document = document(Papers.sheet(40), PaperSize.A4)) {
            assertThat(document.getNumberOfPages()).isGreaterThan(1);
            PDFTextStripper second = new PDFTextStripper();
            second.setStartPage(2);
            assertThat(second.getText(document)).contains("If it is filled next", "page 2 / ");
        }
    }

    @Test
    void nothingOnAnyPaperHasAColour() throws IOException {
        for (Paper paper : Papers.all()) {
            BufferedImage picture = picture(paper, PaperSize.A4, 72, ImageType.RGB);
            for (int y = 0; y < picture.getHeight(); y++) {
                for (int x = 0; x < picture.getWidth(); x++) {
                    int rgb = picture.getRGB(x, y);
                    assertThat((rgb >> 16 & 0xFF) == (rgb & 0xFF) && (rgb >> 8 & 0xFF) == (rgb & 0xFF))
                            .as("%s at %d, %d", paper.getClass().getSimpleName(), x, y)
                            .isTrue();
                }
            }
        }
    }

    /** Each tag is cut out where it is to be cut and its code is read. */
    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void theCodesOnTheTagsReadBackAsTheAddresses(PaperSize size) throws IOException, ReaderException {
        BottleTags tags = Papers.tags(4);
        BufferedImage picture = picture(tags, size, DPI, ImageType.RGB);
        int width = (int) ((size.width_mm() - 2 * MARGIN_MM) / 2 / 25.4 * DPI);
        int height = (int) (TAG_HEIGHT_MM / 25.4 * DPI);
        int margin = (int) (MARGIN_MM / 25.4 * DPI);
        for (int i = 0; i < 4; i++) {
            BufferedImage cut = picture.getSubimage(margin + i % 2 * width, margin + i / 2 * height, width, height);
            assertThat(code(cut)).isEqualTo(tags.tags().get(i).address());
        }
    }

    @Test
    void everyPaperNamesItsBenchItsTimeAndTheHeadOfTheJournal() throws IOException {
        for (Paper paper : Papers.all()) {
            assertThat(text(paper))
                    .as(paper.getClass().getSimpleName())
                    .contains("Larkmoor Gliders", "25 Nov 2026 09:30", "entry 412", "01234567 89abcdef");
        }
    }

    @Test
    void theBenchSheetShowsBankBottlesStepsAndThatItIsVoidAfterTheNextFill() throws IOException {
        assertThat(text(Papers.sheet(4)))
                .contains("Void after the next fill.")
                .contains("62 bar", "61 bar", "25 Nov 2026 08:00", "18 C assumed")
                .contains("A to 58, B to 111, C to 150")
                .contains("comes to 131 bar, not to 150 bar")
                .contains("Read its gauge first.")
                .contains("200 bar")
                .contains("Local rules, what is marked on the cylinders and licensed practice come before");
    }

    @Test
    void theFillRecordShowsWhatWasReadAndWhatWasNot() throws IOException {
        assertThat(text(Papers.fill()))
                .contains("M-03", "Nora Vale", "62 bar", "59 bar", "58 bar", "151 bar", "not read", "409", "Iris Holm");
    }

    @Test
    void aTagSaysWhenTheBottleIsToBeTested() throws IOException {
        assertThat(text(Papers.tags(2))).containsOnlyOnce("Next test by 30 Jun 2028");
    }

    @Test
    void theStatementAddsUpExactly() throws IOException {
        assertThat(text(Papers.statement()))
                .contains("November 2026", "8.40 EUR", "-8.40 EUR", "7.73 EUR")
                .containsPattern("Total\\s+7\\.73 EUR");
    }

    @Test
    void theHeadsOfAStatementStandOverTheirColumns() throws IOException {
        Map<String, Float> left = new HashMap<>();
        Map<String, Float> right = new HashMap<>();
        try (PDDocument document = document(Papers.statement(), PaperSize.A4)) {
            new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> positions) {
                    TextPosition last = positions.get(positions.size() - 1);
                    left.putIfAbsent(text.strip(), positions.get(0).getX());
                    right.putIfAbsent(text.strip(), last.getX() + last.getWidth());
                }
            }.getText(document);
        }
        assertThat(left.get("Day")).isCloseTo(left.get("3 Nov 2026"), within(1f));
        assertThat(left.get("For")).isCloseTo(left.get("M-03"), within(1f));
        assertThat(right.get("Gas")).isCloseTo(right.get("560 L"), within(1f));
        assertThat(right.get("Amount")).isCloseTo(right.get("8.40 EUR"), within(1f));
    }

    @Test
    void theEmergencyCardShowsTheNumbersAndLeavesRoomForMissingOnes() throws IOException {
        assertThat(text(Papers.card())).contains("000 555 0100", "Wind sock by the gate", "hangar 2");
        assertThat(text(new EmergencyCard(Papers.HEADING, "", "", List.of()))).contains("Local numbers");
    }

    @Test
    void whatLooksLikeMarkupIsPrintedAsTyped() throws IOException {
        MonthStatement statement = Papers.statement();
        MonthStatement odd = new MonthStatement(
                statement.heading(),
                "<b>&\"A\u0007",
                statement.month(),
                statement.currency(),
                statement.gasUnit(),
                statement.lines());
        assertThat(text(odd)).contains("<b>&\"A");
    }

    @Test
    void onlyTheFaceOfTheProgramIsUsedAndItIsEmbedded() throws IOException {
        try (PDDocument document = document(Papers.sheet(4), PaperSize.A4)) {
            for (PDPage page : document.getPages()) {
                for (var name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.getName()).contains("AtkinsonHyperlegible");
                    assertThat(font.isEmbedded()).isTrue();
                }
            }
        }
    }

    @Test
    void theNameOfTheFileSaysWhatItIs() {
        assertThat(press.print(Papers.sheet(1), PaperSize.A4).fileName())
                .isEqualTo("bench-sheet-larkmoor-gliders-2026-11-25.pdf");
    }

    private static String code(BufferedImage picture) throws ReaderException {
        int[] pixels = picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth());
        RGBLuminanceSource light = new RGBLuminanceSource(picture.getWidth(), picture.getHeight(), pixels);
        return new QRCodeReader()
                .decode(new BinaryBitmap(new HybridBinarizer(light)), Map.of(DecodeHintType.TRY_HARDER, true))
                .getText();
    }

    private String text(Paper paper) throws IOException {
        try (PDDocument document = document(paper, PaperSize.A4)) {
            return new PDFTextStripper().getText(document);
        }
    }

    private int pages(Paper paper, PaperSize size) throws IOException {
        try (PDDocument document = document(paper, size)) {
            return document.getNumberOfPages();
        }
    }

    private PDDocument document(Paper paper, PaperSize size) throws IOException {
        return Loader.loadPDF(press.print(paper, size).pdf());
    }

    /** The first page as a PNG, written to a file and read again. */
    private BufferedImage picture(Paper paper, PaperSize size, int dpi, ImageType type) throws IOException {
        try (PDDocument document = document(paper, size)) {
            File png = directory.resolve("page.png").toFile();
            ImageIO.write(new PDFRenderer(document).renderImageWithDPI(0, dpi, type), "png", png);
            return ImageIO.read(png);
        }
    }
}
