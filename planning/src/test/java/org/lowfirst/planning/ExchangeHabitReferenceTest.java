package org.lowfirst.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lowfirst.gas.PressureUnit.PSI;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

/**
 * The same bottle for ever, the lowest supply exchanged just before a fill that would fail.
 *
 * <p>Source: computed outside this project with the oxygen equation of Schmidt and Wagner (1985) in an open general-purpose
 * property library (CoolProp 8.0.0), 294.26 K, supplies 49.0 L at 2200 psi, bottle 2.9 L from 200 to 2015 psi. Tolerance: half a
 * unit of the last digit given.
 */
final class ExchangeHabitReferenceTest {

    private static final Temperature T = new Temperature(294.26);
    private static final Bench BENCH = bench();
    private static final int WARM_UP = 200;
    private static final int COUNTED = 1_200;

    @ParameterizedTest
    @CsvSource({"2, 7.600, 1395.9", "3, 12.500, 874.6", "4, 15.000, 603.5", "6, 17.000, 383.0"})
    void moreSuppliesGiveMoreFillsPerCylinderAndSendLessBack(int size, double fills, double sentBack_psi) {
        LongRun run = new LongRun(size);
        for (int i = 0; i < WARM_UP; i++) {
            run.untilExchange();
        }
        run.startCounting();
        for (int i = 0; i < COUNTED; i++) {
            run.untilExchange();
        }
        assertThat(run.fills / (double) COUNTED).isEqualTo(fills, within(0.0005));
        assertThat(run.sentBack_psi / COUNTED).isEqualTo(sentBack_psi, within(0.05));
        double received = COUNTED * run.full.contents().moles();
        double left = run.bank_mol() - run.bankAtStart_mol;
        assertThat(run.delivered_mol + run.sentBack_mol + left).isEqualTo(received, within(1e-12 * received));
    }

    private static Bench bench() {
        Bench bench = BenchOutcome.under(
                        new Conditions(Oxygen.schmidtWagner(), T, T, StandardAtmosphere.PRESSURE, new Volume(0)))
                .bench();
        if (bench == null) {
            throw new AssertionError("294.26 K is in range");
        }
        return bench;
    }

    private static final class LongRun {
        final RankedSupply full;
        final Charge charge;
        BankState bank;
        double bankAtStart_mol;
        double delivered_mol;
        double sentBack_mol;
        double sentBack_psi;
        int fills;

        LongRun(int size) {
            bank = BankState.of(Planned.bank(49.0, PSI, new double[size]), BENCH.now());
            for (int i = 0; i < size; i++) {
                bank = bank.exchanged(0, org.lowfirst.gas.GaugePressure.ofPsi(2200), BENCH.now());
            }
            full = bank.supplies().get(0);
            BottleToFill bottle = Planned.bottle("R1", 2.9, 200, 2015, 2015, PSI);
            charge = Charge.of(bottle, BENCH.stop(bottle.target(), bottle.target()), BENCH.now());
        }

        void startCounting() {
            bankAtStart_mol = bank_mol();
            fills = 0;
            delivered_mol = 0;
            sentBack_mol = 0;
            sentBack_psi = 0;
        }

        /** Fills until one would fail, then exchanges the lowest. */
        void untilExchange() {
            while (true) {
                Cascade cascade = new Cascade(bank, BENCH);
                double end_mol = cascade.fill(charge, Habit.LOWEST_FIRST);
                if (!cascade.reached()) {
                    break;
                }
                fills++;
                delivered_mol += end_mol - charge.start_mol();
                List<RankedSupply> after = new ArrayList<>();
                for (RankedSupply supply : bank.supplies()) {
                    double mol = cascade.contents_mol(supply.rank() - 1);
                    after.add(supply.holding(
                            BENCH.now().reading(mol / supply.waterVolume().cubicMetres()),
                            new org.lowfirst.gas.Amount(mol)));
                }
                bank = BankState.ranked(after);
            }
            RankedSupply lowest = bank.supplies().get(0);
            sentBack_mol += lowest.contents().moles();
            sentBack_psi += lowest.reading().toPsi();
            bank = bank.exchanged(0, full.reading(), BENCH.now());
        }

        double bank_mol() {
            return bank.supplies().stream()
                    .mapToDouble(s -> s.contents().moles())
                    .sum();
        }
    }
}
