package org.lowfirst.planning.warm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.transfer.warm.Answer;
import org.lowfirst.transfer.warm.RiseRate;
import org.lowfirst.transfer.warm.WallMaterial;

/** What holds for every cascade on a clock, on 200 seeded random ones from -50 to 60 C. */
class FillInTimeConsistencyTest {

    static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    private static FillInTimeRequest request(Random random) {
        WarmBench bench = WarmBench.oxygen(
                Temperature.ofCelsius(-50 + 110 * random.nextDouble()),
                random.nextBoolean() ? ReferenceRule.EU : ReferenceRule.US);
        WallMaterial[] materials = WallMaterial.values();
        List<TimedSupply> bank = new ArrayList<>();
        int supplies = 1 + random.nextInt(5);
        for (int i = 0; i < supplies; i++) {
            bank.add(TimedSupply.of(
                            "S" + i,
                            Volume.ofLitres(10 + 60 * random.nextDouble()),
                            GaugePressure.ofBar(250 * random.nextDouble()),
                            null,
                            materials[random.nextInt(3)])
                    .orElseThrow());
        }
        RatedBottle bottle = RatedBottle.of(
                        "B",
                        Volume.ofLitres(0.5 + 11 * random.nextDouble()),
                        GaugePressure.ofBar(120 + 180 * random.nextDouble()),
                        materials[random.nextInt(3)],
                        null)
                .orElseThrow();
        FillInTimeRequest request = new FillInTimeRequest(
                        bank,
                        bottle,
                        GaugePressure.ofBar(120 * random.nextDouble()),
                        bench,
                        Pace.steady(RiseRate.ofBarPerMinute(3 + 100 * random.nextDouble()))
                                .toppedUp(random.nextInt(3), 600 * random.nextDouble()))
                .withHose(Volume.ofLitres(0.1 * random.nextInt(3)));
        return random.nextInt(4) == 0 ? request.with(new Compensation.On("table", "R. Hollin")) : request;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void amountIsClosedAndNoLimitIsPassed(int seed) {
        FillInTimeRequest request = request(new Random(seed));
        Answer<FillSchedule> answer = FillInTime.plan(request);
        if (!(answer instanceof Answer.Given<FillSchedule> given)) {
            assertThat(Shop.refusal(answer).code()).isIn("must-rise", "pressure-out-of-range");
            return;
        }
        FillSchedule schedule = given.value();
        double service = request.bottle().servicePressure().toBar();
        assertThat(schedule.settled().atReference().toBar()).isLessThanOrEqualTo(service + 1e-5);
        if (request.compensation() instanceof Compensation.Off) {
            for (SchedulePoint point : schedule.series()) {
                assertThat(point.bottle().toBar()).isLessThanOrEqualTo(service + 1e-5);
            }
        }
        assertThat(after_mol(schedule) / before_mol(request)).isCloseTo(1.0, within(1e-8));
        assertThat(schedule.legs().stream()
                        .mapToDouble(leg -> leg.to_s() - leg.from_s())
                        .sum())
                .isCloseTo(schedule.total_s(), within(1e-6));
    }

    private static double before_mol(FillInTimeRequest request) {
        double sum = amount_mol(request, request.bottle().waterVolume(), request.reading())
                + amount_mol(request, request.hose(), GaugePressure.ZERO);
        for (TimedSupply supply : request.bank()) {
            sum += amount_mol(request, supply.waterVolume(), supply.reading());
        }
        return sum;
    }

    private static double after_mol(FillSchedule schedule) {
        FillInTimeRequest request = schedule.request();
        double sum = schedule.settled().contents().moles()
                + schedule.vented().moles()
                + amount_mol(request, request.hose(), GaugePressure.ZERO);
        for (int i = 0; i < request.bank().size(); i++) {
            sum += amount_mol(
                    request,
                    request.bank().get(i).waterVolume(),
                    schedule.bankAfter().get(i).settled());
        }
        return sum;
    }

    private static double amount_mol(FillInTimeRequest request, Volume volume, GaugePressure reading) {
        return request.bench()
                .model()
                .equation()
                .density(
                        reading.toAbsolute(request.bench().ambient()),
                        request.bench().temperature())
                .orElseThrow()
                .amountIn(volume)
                .moles();
    }
}
