package org.lowfirst.web.picture;

import static org.assertj.core.api.Assertions.assertThat;

import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.lowfirst.web.picture.CurvesPicture.Curve;
import org.lowfirst.web.picture.CurvesPicture.Point;

final class CurvesPictureTest {

    private static final List<Curve> FOUR_TO_SIXTEEN =
            List.of(new Curve("one", 0, List.of(new Point(1, 4, 4, 4), new Point(2, 16, 16, 16))));

    @Test
    void aWholeScaleReachesToTheLargestNumber() {
        assertThat(drawn(FOUR_TO_SIXTEEN, true)).contains(">15<").doesNotContain("\u2191");
    }

    @Test
    void aCutScaleSaysTheNumberThatIsBeyondIt() {
        assertThat(drawn(FOUR_TO_SIXTEEN, false)).contains("\u2191 16").doesNotContain(">15<");
    }

    @Test
    void nothingIsCutWhereTheLeastIsNothing() {
        List<Curve> free = List.of(new Curve("one", 0, List.of(new Point(1, 0, 0, 0), new Point(2, 16, 16, 16))));
        assertThat(drawn(free, false)).contains(">15<").doesNotContain("\u2191");
    }

    private static String drawn(List<Curve> curves, boolean whole) {
        StringOutput out = new StringOutput();
        new CurvesPicture(curves, whole, new CurvesPicture.Wording("said", "title", "count", Locale.ENGLISH))
                .draw()
                .writeTo(new OwaspHtmlTemplateOutput(out));
        return out.toString();
    }
}
