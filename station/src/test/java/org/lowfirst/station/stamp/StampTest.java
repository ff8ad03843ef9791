package org.lowfirst.station.stamp;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.lowfirst.gas.GaugePressure;

class StampTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 6, 14);

    @ParameterizedTest(name = "{1}")
    @CsvFileSource(resources = "stamps.csv", delimiter = ';', numLinesToSkip = 1)
    void eachPartIsReadForWhatItMeans(Convention convention, String line, String expected) {
        assertThat(Described.of(Stamp.read(line, convention, TODAY))).isEqualTo(expected);
    }

    @Test
    void whatIsNotUnderstoodIsKeptInItsPlace() {
        Stamp stamp = Stamp.read("DOT-3AL2015 A991 XYZ ~?! 05-19", Convention.US, TODAY);

        assertThat(stamp.unknown()).singleElement().satisfies(part -> {
            assertThat(part.text()).isEqualTo("~?!");
            assertThat(part.start()).isEqualTo(21);
            assertThat(part.end()).isEqualTo(24);
        });
    }

    @Test
    void cylinderMarkedByTwoCountriesGoesByTheLowerPressure() {
        Stamp stamp = Stamp.read("TC-3ALM 153/DOT-3AL2216", Convention.US, TODAY);

        assertThat(stamp.list(Meaning.Specification.class))
                .extracting(Meaning.Specification::code)
                .containsExactly("3ALM", "3AL");
        assertThat(stamp.list(Meaning.ServicePressure.class).get(0).pressure()).isEqualTo(GaugePressure.ofBar(153));
        assertThat(stamp.findLowestServicePressure()).contains(GaugePressure.ofPsi(2_216));
    }

    @Test
    void latestTestCountsWhateverTheOrder() {
        Stamp stamp = Stamp.read("DOT-3AA1800 4711 XYZ 06 A123 21+* 05-06 6 B456 16", Convention.US, TODAY);

        assertThat(stamp.findLatestTest().orElseThrow())
                .isEqualTo(new Meaning.TestDate(YearMonth.of(2021, 6), "A123", true, true, ""));
        assertThat(stamp.findFirstTest().orElseThrow().month()).isEqualTo(YearMonth.of(2006, 5));
    }

    @Test
    void aMonthToComeIsNotALatestTest() {
        Stamp stamp = Stamp.read("PH300BAR 2021/06 2031/06", Convention.EUROPEAN, TODAY);

        assertThat(stamp.findLatestTest().orElseThrow().month()).isEqualTo(YearMonth.of(2021, 6));
        assertThat(stamp.ambiguous()).extracting(Part::text).containsExactly("2031/06");
    }

    @Test
    void shortYearsAreTheLatestNotToCome() {
        assertThat(TestDates.year("26", TODAY)).isEqualTo(2026);
        assertThat(TestDates.year("27", TODAY)).isEqualTo(1927);
        assertThat(TestDates.year("46", TODAY)).isEqualTo(1946);
        assertThat(TestDates.year("46", LocalDate.of(2046, 1, 1))).isEqualTo(2046);
    }

    @Test
    void emptyLineHasNoParts() {
        assertThat(Stamp.read("  ", Convention.US, TODAY).parts()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("rubbish")
    void everyCharacterTypedIsInAPartOrASeparatorAndPartsDoNotOverlap(String line) {
        for (Convention convention : Convention.values()) {
            Stamp stamp = Stamp.read(line, convention, TODAY);
            int place = 0;
            for (Part part : stamp.parts()) {
                assertThat(line.substring(place, part.start())).matches("[\\s;,|/-]*");
                assertThat(part.text()).isEqualTo(line.substring(part.start(), part.end()));
                assertThat(part.end()).isGreaterThan(part.start());
                place = part.end();
            }
            assertThat(line.substring(place)).matches("[\\s;,|/-]*");
        }
    }

    static List<String> rubbish() {
        Random random = new Random(20260614);
        String alphabet = "0123456789ABDEHLMOPRSTVW-/+* .,;\u03c0\u2605\u00e4x";
        List<String> pieces = List.of("DOT-3AA", "2265", "PH300BAR", "06 A123 21", "KG", " L", "3AL", "TC-", "EN ISO ");
        return random.ints(400, 0, 40)
                .mapToObj(length -> {
                    StringBuilder line = new StringBuilder();
                    for (int i = 0; i < length; i++) {
                        line.append(
                                random.nextInt(12) == 0
                                        ? pieces.get(random.nextInt(pieces.size()))
                                        : alphabet.charAt(random.nextInt(alphabet.length())));
                    }
                    return line.toString();
                })
                .toList();
    }

    @ParameterizedTest
    @MethodSource("wellFormed")
    void aWellFormedStampGivesBackWhatWasPutIn(Written written) {
        Stamp stamp = Stamp.read(written.line(), Convention.US, TODAY);

        assertThat(stamp.find(Meaning.Specification.class).orElseThrow().code()).isEqualTo(written.code());
        assertThat(stamp.findLowestServicePressure()).contains(GaugePressure.ofPsi(written.psi()));
        assertThat(stamp.find(Meaning.SerialNumber.class)).contains(new Meaning.SerialNumber(written.serial()));
        assertThat(stamp.findLatestTest()).contains(written.test());
        assertThat(stamp.unknown()).isEmpty();
    }

    /** A stamp and what it was made from. */
    record Written(String line, String code, int psi, String serial, Meaning.TestDate test) {}

    static List<Written> wellFormed() {
        Random random = new Random(7);
        List<String> codes = MarkTable.builtIn().list(Convention.US).stream()
                .filter(mark -> mark.code().startsWith("3")
                        && !mark.code().endsWith("M")
                        && mark.code().length() > 1
                        && !mark.code().equals("39"))
                .map(SpecificationMark::code)
                .toList();
        return random.ints(300, 0, codes.size())
                .mapToObj(index -> written(codes.get(index), random))
                .toList();
    }

    private static Written written(String code, Random random) {
        int psi = 900 + random.nextInt(3_600);
        String serial = "K" + (10_000 + random.nextInt(90_000));
        int month = 1 + random.nextInt(12);
        int year = 2000 + random.nextInt(26);
        String tester = (char) ('A' + random.nextInt(26)) + String.format("%03d", random.nextInt(1_000));
        boolean plus = random.nextBoolean();
        boolean star = random.nextBoolean();
        String gap = random.nextBoolean() ? " " : "";
        String spec = (random.nextBoolean() ? "DOT-" : random.nextBoolean() ? "dot " : "") + code + gap + psi;
        String year2 = random.nextBoolean() ? String.format("%02d", year % 100) : Integer.toString(year);
        String date = String.format(random.nextBoolean() ? "%02d" : "%d", month) + " " + tester + " " + year2
                + (plus ? gap + "+" : "") + (star ? gap + "*" : "");
        Meaning.TestDate test = new Meaning.TestDate(YearMonth.of(year, month), tester, plus, star, "");
        return new Written(spec + " " + serial + " XYZ " + date, code, psi, serial, test);
    }
}
