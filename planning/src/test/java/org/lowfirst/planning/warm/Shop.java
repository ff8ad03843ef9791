package org.lowfirst.planning.warm;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.transfer.warm.Answer;
import org.lowfirst.transfer.warm.RiseRate;
import org.lowfirst.transfer.warm.WallMaterial;
import org.lowfirst.transfer.warm.WarmRefusal;

/** What the tests of warm plans share: invented benches, bottles and banks. */
final class Shop {

    private Shop() {}

    static WarmBench bench(double celsius) {
        return WarmBench.oxygen(Temperature.ofCelsius(celsius), ReferenceRule.EU);
    }

    static WarmBench usBench(double fahrenheit) {
        return WarmBench.oxygen(Temperature.ofFahrenheit(fahrenheit), ReferenceRule.US);
    }

    static RatedBottle bottle(double litres, double bar) {
        return RatedBottle.of("W-7", Volume.ofLitres(litres), GaugePressure.ofBar(bar), WallMaterial.ALUMINIUM, null)
                .orElseThrow();
    }

    static List<TimedSupply> bank(double... bars) {
        List<TimedSupply> bank = new ArrayList<>();
        for (double bar : bars) {
            bank.add(TimedSupply.of("S" + (bank.size() + 1), Volume.ofLitres(50), GaugePressure.ofBar(bar), null, null)
                    .orElseThrow());
        }
        return bank;
    }

    static FillInTimeRequest fill(double barPerMinute, double readingBar, double... bank) {
        return new FillInTimeRequest(
                bank(bank),
                bottle(5, 200),
                GaugePressure.ofBar(readingBar),
                bench(18),
                Pace.steady(RiseRate.ofBarPerMinute(barPerMinute)));
    }

    static WarmRefusal refusal(Answer<?> answer) {
        return ((Answer.Refused<?>) answer).refusal();
    }

    static List<List<String>> rows(String file) throws IOException {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(Shop.class.getResourceAsStream("/reference/" + file)),
                StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> List.of(line.split(",")))
                    .toList();
        }
    }
}
