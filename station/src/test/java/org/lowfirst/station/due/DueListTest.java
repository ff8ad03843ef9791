package org.lowfirst.station.due;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;
import org.lowfirst.station.rules.BuiltInBooks;
import org.lowfirst.station.rules.CylinderFacts;
import org.lowfirst.station.rules.Nameplate;
import org.lowfirst.station.rules.Service;
import org.lowfirst.station.rules.TestMark;
import org.lowfirst.station.rules.Use;
import org.lowfirst.station.rules.WallMaterial;

class DueListTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 6, 14);

    private static CylinderFacts cylinder(String name, String code, YearMonth made, TestMark test) {
        Nameplate plate =
                new Nameplate(code, WallMaterial.STEEL, GaugePressure.ofPsi(1_850), null, Volume.ofLitres(4), made);
        return CylinderFacts.of(name, plate, test, Use.reading(GaugePressure.ofPsi(500)), Service.oxygen("CGA 540"));
    }

    private static final DueList LIST = DueList.of(
            List.of(
                    cylinder("B-21", "3AA", YearMonth.of(2006, 6), TestMark.of(2021, 6)),
                    cylinder("B-22", "3AA", YearMonth.of(2006, 5), TestMark.of(2021, 5)),
                    cylinder("B-28", "3HT", YearMonth.of(2002, 8), TestMark.of(2024, 2)),
                    CylinderFacts.of(
                            "B-27",
                            Nameplate.UNREADABLE,
                            null,
                            Use.reading(GaugePressure.ZERO),
                            Service.oxygen("CGA 540"))),
            BuiltInBooks.us(),
            List.of(
                    new Upkeep(DueKind.HOSE, "fill hose", LocalDate.of(2021, 7, 31), 60, "maker"),
                    new Upkeep(DueKind.GAUGE, "bank gauge", LocalDate.of(2025, 2, 28), 24, "bench")),
            List.of(new CheckOut("A. Moss", LocalDate.of(2026, 9, 12), "bench")),
            TODAY);

    @Test
    void everythingWithADayIsListedTheEarliestFirst() {
        assertThat(LIST.items())
                .extracting(item -> item.kind() + " " + item.subject() + " " + item.lastDay())
                .containsExactly(
                        "CYLINDER_TEST B-22 2026-05-31",
                        "CYLINDER_TEST B-21 2026-06-30",
                        "HOSE fill hose 2026-07-31",
                        "CYLINDER_LIFE B-28 2026-08-31",
                        "CHECK_OUT A. Moss 2026-09-12",
                        "CYLINDER_TEST B-28 2027-02-28",
                        "GAUGE bank gauge 2027-02-28");
    }

    @Test
    void theNextNinetyDaysHoldWhatIsPastAndWhatComes() {
        assertThat(LIST.within(90, TODAY))
                .extracting(DueItem::subject)
                .containsExactly("B-22", "B-21", "fill hose", "B-28", "A. Moss");
        assertThat(LIST.within(89, TODAY)).extracting(DueItem::subject).doesNotContain("A. Moss");
        assertThat(LIST.within(0, TODAY)).extracting(DueItem::subject).containsExactly("B-22");
        assertThat(LIST.items().get(0).past(TODAY)).isTrue();
        assertThat(LIST.items().get(1).daysLeft(TODAY)).isEqualTo(16);
    }

    @Test
    void itemsNameTheRuleTheyComeFrom() {
        assertThat(LIST.items().get(3).source()).contains("24 years");
    }

    @Test
    void onlyEquipmentHasAnInterval() {
        assertThatThrownBy(() -> new Upkeep(DueKind.CHECK_OUT, "A. Moss", TODAY, 12, "bench"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Upkeep(DueKind.HOSE, "fill hose", TODAY, 0, "bench"))
                .hasMessageContaining("0 months");
    }
}
