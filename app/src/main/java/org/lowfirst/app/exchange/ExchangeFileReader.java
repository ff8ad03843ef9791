package org.lowfirst.app.exchange;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.lowfirst.app.file.Kind;
import org.lowfirst.app.file.Measure;
import org.lowfirst.app.file.MeasureReader;
import org.lowfirst.app.file.NumberReader;
import org.lowfirst.app.file.PlausibleRange;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.QuestionFile.Shape;
import org.lowfirst.app.file.Section;
import org.lowfirst.app.plan.BankReader;
import org.lowfirst.app.plan.FileBank;
import org.lowfirst.app.plan.UsedBottles;
import org.lowfirst.app.plan.UsedBottles.UseLine;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.exchange.ExchangeRequest;
import org.lowfirst.planning.exchange.Rate;
import org.lowfirst.planning.exchange.Terms;

/** Reads an exchange file and collects everything that is wrong with it. */
final class ExchangeFileReader {

    static final Shape SHAPE = new Shape(
            "the exchange file",
            Stream.concat(
                            BankReader.KEYS.stream(),
                            Stream.of(
                                    "full_supply",
                                    "content",
                                    "delivery",
                                    "lead_days",
                                    "missed_fill",
                                    "fills_per_year",
                                    "rate_spread",
                                    "bottles",
                                    "seed"))
                    .toList(),
            "an exchange file has one line for each supply and bottle",
            "examples/exchange.yaml");

    private static final double DAYS_A_YEAR = 365.0;

    private final EquationOfState gas;
    private final Problems problems;
    private final NumberReader numbers;

    ExchangeFileReader(EquationOfState gas, Problems problems) {
        this.gas = gas;
        this.problems = problems;
        this.numbers = new NumberReader(problems);
    }

    /** @param noted where things stand in the file */
    record ExchangeFile(FileBank bank, ExchangeRequest request, NumberReader noted) {}

    /** What the file asks; empty when it cannot be told, and then there is at least one error. */
    Optional<ExchangeFile> read(Section section) {
        Optional<FileBank> bank = new BankReader(gas, "an exchange", problems).read(section);
        Optional<GaugePressure> full = new MeasureReader(section, problems)
                .required("full_supply", "reading of a full supply", PlausibleRange.of("full_supply", Kind.PRESSURE))
                .map(Measure::value);
        Optional<Double> content = numbers.required(section, "content", "price of a supply", "60");
        double delivery = numbers.optional(section, "delivery", "price of a delivery", "35")
                .orElse(0.0);
        double lead = numbers.optional(section, "lead_days", "days from order to delivery", "3")
                .orElse(0.0);
        double missed = numbers.optional(section, "missed_fill", "price of a missed fill", "15")
                .orElse(0.0);
        Optional<Double> fills = numbers.required(section, "fills_per_year", "fills a day", "150");
        double spread = numbers.optional(section, "rate_spread", "spread of the fills a day", "0.3")
                .orElse(0.0);
        List<UseLine> bottles = new UsedBottles("an exchange", numbers, problems).read(section);
        long seed = numbers.optionalWhole(section, "seed", "seed", "1").orElse(1L);
        section.reportStrangers();
        if (problems.haveErrors() || bank.isEmpty() || full.isEmpty() || content.isEmpty() || fills.isEmpty()) {
            return Optional.empty();
        }
        bank.get().warnOfMixedUnits(List.of(), problems);
        return Optional.of(new ExchangeFile(
                bank.get(),
                new ExchangeRequest(
                        bank.get().conditions(),
                        bank.get().supplies(),
                        bottles.stream().map(UseLine::use).toList(),
                        new Terms(full.get(), content.get(), delivery, lead, missed),
                        new Rate(fills.get() / DAYS_A_YEAR, spread),
                        seed),
                numbers));
    }
}
