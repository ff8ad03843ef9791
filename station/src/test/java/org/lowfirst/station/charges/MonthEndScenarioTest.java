package org.lowfirst.station.charges;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Currency;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

/**
 * A month end at an invented club: four fills at 17 C, 0.011 per standard litre, minimum 1.50, guests 20 % more, each fill
 * rounded half-up to the cent. The money was worked out outside the project, from litres computed with another program's real
 * gas (CoolProp 8.0.0) at 15 C and 1.01325 bar.
 */
class MonthEndScenarioTest {

    private static final Currency EUR = Currency.getInstance("EUR");
    private static final YearMonth JUNE = YearMonth.of(2026, 6);
    private static final EquationOfState OXYGEN = Oxygen.schmidtWagner();
    private static final Tariff TARIFF = new Tariff(
            EUR,
            GasUnit.STANDARD_LITRE,
            ReferenceCondition.ISO_15C_1ATM,
            new Prices(new BigDecimal("0.011"), BigDecimal.ZERO, new BigDecimal("1.50"), new BigDecimal("20")),
            RoundingRule.halfUp("0.01"),
            1);

    @Test
    void fourFillsAreChargedToTheCentAndAddUp() {
        ChargeBook book = ChargeBook.empty(EUR);
        book = charged(book, fill("F-1", "M-03", false, litres(5, 62, 150)));
        book = charged(book, fill("F-2", "M-11", false, litres(2, 30, 180)));
        book = charged(book, fill("F-3", "M-19", false, litres(3, 95, 150)));
        book = charged(book, fill("F-4", "V-02", true, litres(5, 20, 150)));

        assertThat(book.lines())
                .extracting(line -> line.amount().amount().toPlainString())
                .containsExactly("5.19", "3.50", "1.95", "9.10");
        assertThat(book.total(JUNE)).isEqualTo(Money.of("19.74", "EUR"));
        assertThat(book.lines())
                .extracting(line ->
                        line.quantity().setScale(0, RoundingMode.HALF_UP).intValue())
                .containsExactly(472, 318, 178, 689);
        assertThat(book.listStatements(JUNE))
                .extracting(Statement::person)
                .containsExactly("M-03", "M-11", "M-19", "V-02");
    }

    /**
     * From litres rounded to the whole litre two of the four amounts are a cent off, though the sum is the same: this is why a
     * tariff says how many digits its quantities have.
     */
    @Test
    void wholeLitresGiveOtherCentsThanTenths() {
        assertThat(amount("472", false)).isEqualTo("5.19");
        assertThat(amount("318", false)).isEqualTo("3.50");
        assertThat(amount("178", false)).isEqualTo("1.96");
        assertThat(amount("689", true)).isEqualTo("9.09");
        assertThat(new BigDecimal("5.19")
                        .add(new BigDecimal("3.50"))
                        .add(new BigDecimal("1.96"))
                        .add(new BigDecimal("9.09")))
                .isEqualByComparingTo("19.74");
    }

    @Test
    void aTypingSlipIsCorrectedByThreeVisibleLines() {
        ChargeBook slip = charged(ChargeBook.empty(EUR), fill("F-2", "M-11", false, litres(2, 130, 180)));
        assertThat(slip.lines().get(0).quantity().setScale(0, RoundingMode.HALF_UP))
                .isEqualByComparingTo("106");

        Booking booking = slip.correct(fill("F-2", "M-11", false, litres(2, 30, 180)), TARIFF, "start was 30, not 130");
        Statement statement = ((Booking.Booked) booking).book().statement("M-11", JUNE);

        assertThat(statement.lines())
                .extracting(line -> line.kind() + " " + line.amount().amount().toPlainString())
                .containsExactly("FILL 1.50", "REVERSAL -1.50", "CORRECTION 3.50");
        assertThat(statement.total()).isEqualTo(Money.of("3.50", "EUR"));
        assertThat(statement.lines().get(1).corrects()).isEqualTo("F-2.1");
    }

    private static String amount(String litres, boolean guest) {
        return TARIFF.charge(new BigDecimal(litres), guest).amount().amount().toPlainString();
    }

    private static ChargeBook charged(ChargeBook book, ChargedFill fill) {
        return ((Booking.Booked) book.charge(fill, TARIFF)).book();
    }

    private static ChargedFill fill(String id, String person, boolean guest, Volume free) {
        return new ChargedFill(id, LocalDate.of(2026, 6, 20), person, guest, "bottle", TARIFF.quantity(free));
    }

    /** Free volume of the gas that takes a bottle from one settled gauge pressure to another at 17 C. */
    private static Volume litres(double waterLitres, double fromBar, double toBar) {
        Volume water = Volume.ofLitres(waterLitres);
        double moles = amountIn(water, toBar) - amountIn(water, fromBar);
        return OXYGEN.freeVolume(new Amount(moles), ReferenceCondition.ISO_15C_1ATM);
    }

    private static double amountIn(Volume water, double bar) {
        AbsolutePressure pressure = GaugePressure.ofBar(bar).toAbsolute(AbsolutePressure.ofBar(1.013));
        return OXYGEN.density(pressure, Temperature.ofCelsius(17))
                .orElseThrow()
                .amountIn(water)
                .moles();
    }
}
