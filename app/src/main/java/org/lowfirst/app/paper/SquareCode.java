package org.lowfirst.app.paper;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/** Draws QR codes (ISO/IEC 18004) as shapes, so that they stay sharp at every size. */
final class SquareCode implements FSObjectDrawer {

    /** What stands in the type of an object that is such a code. */
    static final String TYPE = "application/x-square-code";

    /** Name of the attribute with the text. */
    static final String TEXT = "data-text";

    /** White around the code, in modules: four, as the standard asks. */
    private static final int QUIET_ZONE = 4;

    /** An object that shows a text as a code. */
    static Node of(String text) {
        return Node.of("object", "code").with("type", TYPE).with(TEXT, text).with("alt", text);
    }

    @Override
    public @Nullable Map<Shape, String> drawObject(
            Element element,
            double x,
            double y,
            double width,
            double height,
            OutputDevice device,
            RenderingContext context,
            int dotsPerPixel) {
        BitMatrix modules = modules(element.getAttribute(TEXT));
        double side = Math.min(width, height) / dotsPerPixel / modules.getWidth();
        Path2D.Double black = new Path2D.Double();
        for (int row = 0; row < modules.getHeight(); row++) {
            run(modules, row, black);
        }
        black.transform(AffineTransform.getScaleInstance(side, side));
        device.drawWithGraphics(
                (float) x, (float) y, (float) width / dotsPerPixel, (float) height / dotsPerPixel, graphics -> {
                    graphics.setColor(Color.BLACK);
                    graphics.fill(black);
                });
        return null;
    }

    /** Black modules beside each other become one oblong, without hairlines between them. */
    private static void run(BitMatrix modules, int row, Path2D.Double black) {
        int from = 0;
        while (from < modules.getWidth()) {
            int to = from;
            while (to < modules.getWidth() && modules.get(to, row)) {
                to++;
            }
            if (to > from) {
                black.moveTo(from, row);
                black.lineTo(to, row);
                black.lineTo(to, row + 1.0);
                black.lineTo(from, row + 1.0);
                black.closePath();
            }
            from = to + 1;
        }
    }

    private static BitMatrix modules(String text) {
        try {
            return new QRCodeWriter()
                    .encode(
                            text,
                            BarcodeFormat.QR_CODE,
                            0,
                            0,
                            Map.of(
                                    EncodeHintType.MARGIN,
                                    QUIET_ZONE,
                                    EncodeHintType.CHARACTER_SET,
                                    StandardCharsets.UTF_8.name(),
                                    EncodeHintType.ERROR_CORRECTION,
                                    ErrorCorrectionLevel.M));
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException(
                    "The text of a code (" + text.length() + " characters) must be at most about 2,000 characters.\n"
                            + "Maybe use a shorter base address.",
                    tooLong);
        }
    }
}
