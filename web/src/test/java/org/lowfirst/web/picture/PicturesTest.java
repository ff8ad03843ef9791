package org.lowfirst.web.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lowfirst.web.picture.StaircasePicture.Tread;
import org.lowfirst.web.picture.StaircasePicture.When;
import org.lowfirst.web.picture.StaircasePicture.Wording;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

final class PicturesTest {

    private static final Wording WORDING = new Wording("A <fill> & \"more\"", "stop at 150 bar", "now");

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 3, 8})
    void aStaircaseIsSoundMarkupWithoutStyles(int stages) throws Exception {
        String svg = staircase(stages).draw().toString();
        Element root = parsed(svg);
        assertThat(root.getAttribute("aria-label")).isEqualTo(WORDING.description());
        assertThat(svg).doesNotContain("style=");
    }

    @Test
    void everyBarStandsOnTheFloorAndInsideThePicture() throws Exception {
        NodeList bars = parsed(staircase(3).draw().toString()).getElementsByTagName("rect");
        assertThat(bars.getLength()).isGreaterThanOrEqualTo(12);
        for (int i = 0; i < bars.getLength(); i++) {
            Element bar = (Element) bars.item(i);
            double x = Double.parseDouble(bar.getAttribute("x"));
            double y = Double.parseDouble(bar.getAttribute("y"));
            assertThat(x).isBetween(0.0, 340.0);
            assertThat(x + Double.parseDouble(bar.getAttribute("width"))).isLessThanOrEqualTo(340.0);
            assertThat(y).isBetween(0.0, 292.0);
            assertThat(y + Double.parseDouble(bar.getAttribute("height"))).isLessThanOrEqualTo(292.0);
        }
    }

    @Test
    void theNumbersAreThoseOfThePlan() {
        assertThat(staircase(3).draw().toString()).contains(">60<", ">113<", ">150<", ">186<", ">stop at 150 bar<");
    }

    @Test
    void aFillAgainstTimeIsSoundMarkupInsideThePicture() throws Exception {
        List<HeatPicture.Moment> moments = new ArrayList<>();
        for (int i = 0; i <= 24; i++) {
            moments.add(new HeatPicture.Moment(i / 2.0, 40 + 4.6 * i, 18 + Math.sqrt(i)));
        }
        HeatPicture picture = new HeatPicture(
                moments,
                List.of(new HeatPicture.Band("A", 0, 3), new HeatPicture.Band("A very long name", 3.5, 12)),
                150,
                new HeatPicture.Wording("A <fill>", "bottle gauge, bar", "gas, C", "stop at 150 bar", "minutes"));
        String svg = picture.draw().toString();
        assertThat(parsed(svg).getAttribute("aria-label")).isEqualTo("A <fill>");
        assertThat(svg).doesNotContain("NaN").doesNotContain("style=").contains("stop at 150 bar");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new HeatPicture(moments.subList(0, 1), List.of(), 150, picture.words()));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 8})
    void anArrangementHasAValveForEachSupplyAndOneInterconnectFewer(int supplies) throws Exception {
        List<ArrangementPicture.Place> places = new ArrayList<>();
        for (int i = 1; i <= supplies; i++) {
            places.add(new ArrangementPicture.Place(i, "S" + i + " <&>", i / 8.0 - 0.2, i == 2));
        }
        ArrangementPicture picture = new ArrangementPicture(
                places, new ArrangementPicture.Wording("A <row>", "interconnect", "transfer valve", "bottle", "out"));
        String svg = picture.draw().toString();
        Element root = parsed(svg);
        assertThat(root.getAttribute("aria-label")).isEqualTo("A <row>");
        assertThat(svg).doesNotContain("NaN").doesNotContain("style=");
        assertThat(countOf("class=\"valve\"", svg)).isEqualTo(supplies == 0 ? 0 : supplies + 1);
        assertThat(countOf(">interconnect ", svg)).isEqualTo(Math.max(0, supplies - 1));
        assertThat(countOf(">out<", svg)).isEqualTo(supplies >= 2 ? 1 : 0);
        String[] box = root.getAttribute("viewBox").split(" ");
        NodeList shapes = root.getElementsByTagName("rect");
        for (int i = 0; i < shapes.getLength(); i++) {
            Element shape = (Element) shapes.item(i);
            double bottom =
                    Double.parseDouble(shape.getAttribute("y")) + Double.parseDouble(shape.getAttribute("height"));
            assertThat(bottom).isLessThanOrEqualTo(Double.parseDouble(box[3]));
        }
    }

    private static int countOf(String part, String text) {
        return text.split(Pattern.quote(part), -1).length - 1;
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 0, 0.004, 0.3, 0.6, 0.85, 0.99, 1, 1.3})
    void aCylinderIsSoundMarkupAtAnyLevel(double part) throws Exception {
        String svg = CylinderPicture.of(part).toString();
        assertThat(parsed(svg).getAttribute("aria-hidden")).isEqualTo("true");
        assertThat(svg).doesNotContain("NaN").doesNotContain("style=");
        assertThat(svg.contains("class=\"level\"")).isEqualTo(part > 0.006);
    }

    @ParameterizedTest
    @CsvSource({"190, 50", "200, 50", "201, 50", "2300, 500", "1, 0.2", "260, 100", "0.9, 0.2"})
    void scalesHaveRoundStepsAndAtMostFiveLines(double highest, double step) {
        assertThat(Ticks.step(highest)).isCloseTo(step, org.assertj.core.api.Assertions.within(step * 1e-9));
    }

    private static StaircasePicture staircase(int stages) {
        List<Tread> three = List.of(
                new Tread(1, "A", 40, 60.0, 62, 60.0, When.PAST),
                new Tread(2, "B", 60.0, 112.8, 118, 112.8, When.NOW),
                new Tread(3, "C & <D>", 112.8, 150, 190, 186.1, When.LATER));
        List<Tread> treads = new ArrayList<>();
        for (int i = 0; i < stages; i++) {
            treads.add(three.get(i % 3));
        }
        return new StaircasePicture("bar", treads, 150, WORDING);
    }

    private static Element parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(svg)))
                .getDocumentElement();
    }
}
