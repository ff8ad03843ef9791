package org.lowfirst.app.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.DefaultObjectDrawerFactory;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.Objects;
import java.util.TimeZone;
import java.util.logging.Level;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.lowfirst.app.words.FileName;

/** Prints papers as PDF. The same paper gives the same pages. Thread-safe. */
public final class Press {

    private static final String FACE = "Atkinson Hyperlegible";
    private static final String PROGRAM = "Lowfirst";
    private static final int REGULAR = 400;
    private static final int BOLD = 700;

    static {
        XRLog.listRegisteredLoggers().forEach(logger -> XRLog.setLevel(logger, Level.WARNING));
    }

    private final Lettering lettering;
    private final Layouts layouts;
    private final String style = new String(resource("paper.css"), StandardCharsets.UTF_8);

    /**
     * @param locale language of the papers
     * @param zone where the bench stands
     */
    public Press(Locale locale, ZoneId zone) {
        this.lettering = new Lettering(locale, zone);
        this.layouts = new Layouts(lettering);
    }

    public PrintedPaper print(Paper paper, PaperSize size) {
        Sheet sheet = layouts.of(paper);
        return new PrintedPaper(fileName(sheet, paper.heading()), pdf(page(sheet, paper.heading(), size), paper));
    }

    Lettering lettering() {
        return lettering;
    }

    private String fileName(Sheet sheet, Heading heading) {
        return FileName.of(
                lettering.of("file." + sheet.kind()), heading.bench(), lettering.date(heading.printedAt()), "pdf");
    }

    private String page(Sheet sheet, Heading heading, PaperSize size) {
        double width_mm = sheet.wide() ? size.height_mm() : size.width_mm();
        double height_mm = sheet.wide() ? size.width_mm() : size.height_mm();
        String pageSize = String.format(Locale.ROOT, "@page { size: %.1fmm %.1fmm }%n", width_mm, height_mm);
        String title = lettering.of("title." + sheet.kind());
        return Node.of("html")
                .with("lang", lettering.locale().toLanguageTag())
                .add(
                        Node.of("head")
                                .add(
                                        Node.saying("title", title + ", " + heading.bench()),
                                        Node.of("meta").with("name", "subject").with("content", title),
                                        Node.saying("style", style + pageSize)),
                        Node.of("body", sheet.kind()).add(foot(heading)).addAll(sheet.body()))
                .toString();
    }

    /** At the foot of every page: which bench, which journal, which page. */
    private Node foot(Heading heading) {
        return Node.of("div", "foot")
                .add(
                        Node.of("p")
                                .say(heading.bench() + ", "
                                        + lettering.of("printed", "time", lettering.full(heading.printedAt())) + ", ")
                                .say(lettering.of("page") + " ")
                                .add(Node.of("span", "page-number")),
                        Node.of("p", "hash")
                                .say(lettering.of(
                                                "head",
                                                "entry",
                                                Long.toString(heading.head().seq())) + " "
                                        + Lettering.grouped(heading.head().hash())));
    }

    private static byte[] pdf(String page, Paper paper) {
        DefaultObjectDrawerFactory drawers = new DefaultObjectDrawerFactory();
        drawers.registerDrawer(SquareCode.TYPE, new SquareCode());
        PdfRendererBuilder builder = new PdfRendererBuilder()
                .withHtmlContent(page, null)
                .withProducer(PROGRAM)
                .usePdfUaAccessibility(true)
                .useObjectDrawerFactory(drawers);
        face(builder, "atkinson-hyperlegible-regular.ttf", REGULAR);
        face(builder, "atkinson-hyperlegible-bold.ttf", BOLD);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            renderer.layout();
            renderer.createPDFWithoutClosing();
            try (PDDocument document = renderer.getPdfDocument()) {
                document.getDocumentInformation()
                        .setCreationDate(calendar(paper.heading().printedAt()));
                document.save(out);
            }
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void face(PdfRendererBuilder builder, String file, int weight) {
        builder.useFont(() -> stream(file), FACE, weight, FontStyle.NORMAL, true);
    }

    private static Calendar calendar(Instant at) {
        Calendar calendar = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        calendar.setTimeInMillis(at.toEpochMilli());
        return calendar;
    }

    private static byte[] resource(String name) {
        try (InputStream in = stream(name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream stream(String name) {
        return Objects.requireNonNull(Press.class.getResourceAsStream(name), name);
    }
}
