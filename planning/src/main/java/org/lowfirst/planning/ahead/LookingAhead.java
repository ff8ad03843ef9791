package org.lowfirst.planning.ahead;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lowfirst.planning.study.Objection;
import org.lowfirst.planning.study.kernel.Draws;

/** Works out how long a bank lasts and when to order. */
public final class LookingAhead {

    private static final int USE = 1;
    private static final int DAYS = 2;

    private LookingAhead() {}

    /** The forecast, or what is wrong with the request. */
    public static AheadOutcome look(AheadRequest request) {
        return look(request, AheadAssumptions.fromFile());
    }

    static AheadOutcome look(AheadRequest request, AheadAssumptions assumptions) {
        Optional<Objection> objection =
                new AheadCheck(request, assumptions).look().first();
        if (objection.isPresent()) {
            return new AheadOutcome.Refused(objection.get());
        }
        Tally tally = new Tally(request.history(), request.today(), assumptions.longestHistory_d());
        UseGuess guess = request.guess();
        UseModel use = new UseModel(
                tally, guess == null ? assumptions.guess() : guess, assumptions, new Draws(request.seed(), USE));
        List<UsualFill> kinds = new ArrayList<>(request.usual());
        Tally.recent(request.history().fills(), request.today().minusDays(assumptions.longestHistory_d())).stream()
                .map(FilledOn::fill)
                .forEach(kinds::add);
        Urn urn = new Urn(request.usual().size(), kinds.size() - request.usual().size(), assumptions.usualFillsWeigh());
        Lives lives = new Lives(request, assumptions);
        lives.live(
                use,
                new BankAhead(request.conditions(), request.bank(), kinds),
                urn,
                new Draws(request.seed(), DAYS),
                assumptions);
        return new Forecast(
                lives.fillsLeft(),
                lives.daysLeft(),
                assumptions.longestAhead_d(),
                lives.fillsPerWeek(),
                order(request, lives, assumptions),
                new Knowledge(tally.days(), tally.fills(), use.shareOfHistory(), guess == null),
                lives.days());
    }

    private static OrderAdvice order(AheadRequest request, Lives lives, AheadAssumptions assumptions) {
        int lead = request.ordering().leadDays();
        int touched = lives.reserveTouched_d(1.0 - assumptions.orderChance());
        int left = touched - lead;
        Alert alert = left < 0
                ? Alert.LATE
                : left == 0 ? Alert.NOW : left <= assumptions.orderSoon_d() ? Alert.SOON : Alert.NONE;
        Optional<LocalDate> orderBy = touched >= assumptions.longestAhead_d()
                ? Optional.empty()
                : Optional.of(request.today().plusDays(left));
        return new OrderAdvice(alert, orderBy, lives.chanceReserveTouchedBefore(lead), lives.chanceEmptyBefore(lead));
    }
}
