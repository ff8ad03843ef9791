package org.lowfirst.station;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What the bench looks ahead with. */
class OutlookTest {

    private static final LocalDate TODAY = MoneyRulesTest.DAY;
    static final Happening CAMP = new Happening("Wave week", TODAY.plusDays(20), 7, new BigDecimal("30"));

    @Test
    void figuresStayUntilTheyAreKeptAnew() {
        Outlook outlook = Journal.given(
                        kept(AheadFigure.LEAD_DAYS, "4"),
                        kept(AheadFigure.RESERVE_FILLS, "2"),
                        kept(AheadFigure.LEAD_DAYS, "6"))
                .bench()
                .areas()
                .outlook();
        assertThat(outlook.findFigure(AheadFigure.LEAD_DAYS)).hasValue(new BigDecimal("6"));
        assertThat(outlook.findFigure(AheadFigure.RESERVE_FILLS)).hasValue(new BigDecimal("2"));
        assertThat(outlook.findFigure(AheadFigure.RENT_PER_DAY)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "LEAD_DAYS, -1",
        "LEAD_DAYS, 366",
        "LEAD_DAYS, 2.5",
        "RESERVE_FILLS, 1001",
        "CONTENT_PRICE, -0.01",
        "RENT_PER_DAY, -3",
        "FLYABLE_PERCENT, 0",
        "CHANCE_PERCENT, 100",
        "FILLS_PER_PILOT, 11"
    })
    void aFigureThatCannotBeMeantIsRefusedWithItsLimits(AheadFigure figure, String value) {
        Refused refused = refused(Journal.given(), kept(figure, value));
        assertThat(refused.rule()).isEqualTo(Rule.FIGURE_OUT_OF_RANGE);
        assertThat(refused.subject())
                .isEqualTo(value + " (" + figure.lowest().toPlainString() + "–"
                        + figure.highest().toPlainString() + ")");
    }

    @ParameterizedTest
    @EnumSource(AheadFigure.class)
    void bothLimitsThemselvesAreTaken(AheadFigure figure) {
        assertThat(enter(Journal.given(), kept(figure, figure.lowest().toPlainString())))
                .isInstanceOf(Accepted.class);
        assertThat(enter(Journal.given(), kept(figure, figure.highest().toPlainString())))
                .isInstanceOf(Accepted.class);
    }

    @Test
    void keepingNothingIsRefused() {
        assertThat(refused(Journal.given(), new OutlookFact.FiguresKept(Map.of()))
                        .rule())
                .isEqualTo(Rule.NO_FIGURES);
    }

    @Test
    void whatIsPlannedIsListedUntilItsLastDayAndReplacedByItsNameAndDay() {
        Happening exercise = new Happening("Exercise", TODAY.plusDays(3), 1, new BigDecimal("6"));
        Happening larger = new Happening("Wave week", CAMP.from(), 9, new BigDecimal("44"));
        Journal journal = Journal.given(planned(CAMP), planned(exercise), planned(larger));
        Outlook outlook = journal.bench().areas().outlook();
        assertThat(outlook.happenings()).containsExactly(exercise, larger);
        assertThat(outlook.listFrom(exercise.from())).containsExactly(exercise, larger);
        assertThat(outlook.listFrom(exercise.from().plusDays(1))).containsExactly(larger);
        assertThat(outlook.listFrom(larger.until())).containsExactly(larger);
        assertThat(outlook.listFrom(larger.until().plusDays(1))).isEmpty();
        OutlookFact dropped = new OutlookFact.HappeningDropped("Exercise", exercise.from());
        assertThat(enter(journal, dropped)).isInstanceOf(Accepted.class);
        journal.add(dropped);
        assertThat(journal.bench().areas().outlook().happenings()).containsExactly(larger);
        assertThat(refused(journal, dropped).rule()).isEqualTo(Rule.HAPPENING_UNKNOWN);
    }

    @Test
    void whatCannotBePlannedIsRefused() {
        assertThat(rule(new Happening(" ", CAMP.from(), 7, BigDecimal.ONE))).isEqualTo(Rule.NAME_EMPTY);
        assertThat(rule(new Happening("x", TODAY.minusDays(7), 7, BigDecimal.ONE)))
                .isEqualTo(Rule.DAY_OUT_OF_RANGE);
        assertThat(rule(new Happening("x", TODAY.plusYears(4), 7, BigDecimal.ONE)))
                .isEqualTo(Rule.DAY_OUT_OF_RANGE);
        assertThat(rule(new Happening("x", CAMP.from(), 0, BigDecimal.ONE))).isEqualTo(Rule.FIGURE_OUT_OF_RANGE);
        assertThat(rule(new Happening("x", CAMP.from(), 101, BigDecimal.ONE))).isEqualTo(Rule.FIGURE_OUT_OF_RANGE);
        assertThat(rule(new Happening("x", CAMP.from(), 7, new BigDecimal("-1"))))
                .isEqualTo(Rule.FIGURE_OUT_OF_RANGE);
        assertThat(rule(new Happening("x", CAMP.from(), 7, new BigDecimal("1001"))))
                .isEqualTo(Rule.FIGURE_OUT_OF_RANGE);
        assertThat(enter(
                        Journal.given(),
                        planned(new Happening("began yesterday", TODAY.minusDays(1), 2, BigDecimal.ONE))))
                .isInstanceOf(Accepted.class);
    }

    @Test
    void anOrderIsOnItsWayUntilASupplyComesOrItsDayHasPassed() {
        Journal journal = Journal.given(new OutlookFact.SuppliesOrdered(TODAY.plusDays(4)));
        Outlook ordered = journal.bench().areas().outlook();
        assertThat(ordered.findOrdered(TODAY.plusDays(4))).hasValue(TODAY.plusDays(4));
        assertThat(ordered.findOrdered(TODAY.plusDays(5))).isEmpty();
        journal.add(new Fact.SupplyConnected(new SupplyId("e"), Larkmoor.supply("E"), Larkmoor.reads("200", 9)));
        assertThat(journal.bench().areas().outlook().findOrdered(TODAY)).isEmpty();
        assertThat(refused(Journal.given(), new OutlookFact.SuppliesOrdered(TODAY.minusDays(1)))
                        .rule())
                .isEqualTo(Rule.DAY_OUT_OF_RANGE);
    }

    private static Rule rule(Happening happening) {
        return refused(Journal.given(), planned(happening)).rule();
    }

    private static OutlookFact kept(AheadFigure figure, String value) {
        return new OutlookFact.FiguresKept(Map.of(figure, new BigDecimal(value)));
    }

    private static OutlookFact planned(Happening happening) {
        return new OutlookFact.HappeningPlanned(happening);
    }

    private static Decision enter(Journal journal, OutlookFact fact) {
        return journal.when(new Command.Enter(fact));
    }

    private static Refused refused(Journal journal, OutlookFact fact) {
        Decision decision = enter(journal, fact);
        assertThat(decision).isInstanceOf(Refused.class);
        return (Refused) decision;
    }
}
