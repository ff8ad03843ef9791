package org.lowfirst.app.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.PlanOutcome;
import org.lowfirst.planning.PlanRefused;
import org.lowfirst.planning.Step;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.OpenFill;
import org.lowfirst.station.OpenSession;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Supply;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.Turn;

/**
 * The order of work of one fill, as a state machine: what to do at a position, how every valve stands after it, and where to go
 * next. Pure. The order is common practice, no source: bottle open, transfer shut, supply opened slowly, transfer cracked; then
 * transfer shut, supply shut, next; only one supply is open at a time.
 */
final class GuideBook {

    private final BenchState state;
    private final OpenFill fill;
    private final ValveBoard board;
    private final PlanOutcome rest;
    private final Function<SupplyId, PlanOutcome> planFrom;
    private final PermittedPressure permitted;
    private final GasCount count;

    /**
     * @param board the valves of the bench
     * @param rest the rest of the fill, planned from the latest reading
     * @param planFrom the plan from one supply alone, for a supply that is not in {@code rest}
     * @param permitted how much the bottle may hold
     */
    GuideBook(
            BenchState state,
            OpenFill fill,
            ValveBoard board,
            PlanOutcome rest,
            Function<SupplyId, PlanOutcome> planFrom,
            PermittedPressure permitted,
            GasCount count) {
        this.state = state;
        this.fill = fill;
        this.board = board;
        this.rest = rest;
        this.planFrom = planFrom;
        this.permitted = permitted;
        this.count = count;
    }

    Guide guide(@Nullable Position position) {
        Position resolved = position == null ? null : resolve(position);
        return resolved == null ? new Guide.AskValves(fill, choices()) : step(resolved);
    }

    /** The position in today's terms; null when it makes no sense any more. */
    private @Nullable Position resolve(Position position) {
        int stage = fill.stages().size() + 1;
        if (position.stage() > stage) {
            return null;
        }
        boolean stageWork = needsSupply(position.phase());
        if (position.stage() < stage && stageWork) {
            return next(stage);
        }
        if (position.phase() == Phase.OPEN_SUPPLY && position.supply() == null) {
            return next(stage);
        }
        SupplyId supply = position.supply();
        if (!stageWork) {
            return new Position(stage, position.phase(), null);
        }
        if (supply == null || !inBank(supply)) {
            return null;
        }
        return state.bench().stand().turn(supply) == Turn.TAGGED_OUT
                ? shutting(stage, position.phase(), supply)
                : new Position(stage, position.phase(), supply);
    }

    private boolean inBank(SupplyId supply) {
        return state.bench().findSupply(supply).isPresent()
                && state.bench().stand().bankName(supply).equals(state.bench().bankOf(fill.id()));
    }

    /** A supply that was tagged out is not opened; one that is open is shut. */
    private Position shutting(int stage, Phase phase, SupplyId supply) {
        return switch (phase) {
            case OPEN_SUPPLY -> next(stage);
            case CRACK_TRANSFER -> new Position(stage, Phase.SHUT_SUPPLY, supply);
            case WATCH -> new Position(stage, Phase.SHUT_TRANSFER, supply);
            default -> new Position(stage, phase, supply);
        };
    }

    private static boolean needsSupply(Phase phase) {
        return switch (phase) {
            case OPEN_SUPPLY, CRACK_TRANSFER, WATCH, SHUT_TRANSFER, SHUT_SUPPLY, ENTER_READING -> true;
            case CONNECT, OPEN_BOTTLE, SHUT_BOTTLE, VENT_HOSE, FINISH -> false;
        };
    }

    /** The supply that the plan has next, or the end of the fill. */
    private Position next(int stage) {
        return plannedSupply()
                .map(supply -> new Position(stage, Phase.OPEN_SUPPLY, supply))
                .orElse(new Position(stage, Phase.SHUT_BOTTLE, null));
    }

    private Optional<SupplyId> plannedSupply() {
        OpenSession session = session();
        if (session != null) {
            return GuidingASession.turn(session, fill.id());
        }
        if (!(rest instanceof FillPlan plan)) {
            return Optional.empty();
        }
        return plan.fill().steps().stream()
                .filter(this::worthOpening)
                .map(Step::supply)
                .flatMap(name -> state.bench().bank().stream()
                        .filter(supply -> supply.details().name().equals(name)))
                .map(Supply::id)
                .findFirst();
    }

    /**
     * A supply just shut is not opened again for less than a gauge can tell: its reading was rounded, the rest is not there.
     */
    private boolean worthOpening(Step step) {
        int stages = fill.stages().size();
        if (stages == 0) {
            return true;
        }
        SupplyId latest = fill.stages().get(stages - 1).supply();
        boolean again = state.bench()
                .findSupply(latest)
                .map(supply -> supply.details().name().equals(step.supply()))
                .orElse(false);
        double rise_Pa =
                step.bottle().after().pascals() - step.bottle().before().pascals();
        return !again
                || rise_Pa
                        > state.bench()
                                .settings()
                                .rules()
                                .figures()
                                .repeatability()
                                .gauge()
                                .pascals();
    }

    private @Nullable OpenSession session() {
        return state.bench().sessions().findOpen(fill.id()).orElse(null);
    }

    /** Whether this bottle goes on later and another takes its place on the hose. */
    private boolean setAside() {
        OpenSession session = session();
        return session != null
                && !session.remaining(fill.id()).isEmpty()
                && GuidingASession.turn(session, fill.id()).isEmpty();
    }

    private Guide.Step step(Position at) {
        SupplyId id = at.supply();
        Supply supply = id == null ? null : state.bench().getSupply(id);
        return new Guide.Step(
                fill,
                at,
                supply,
                board.after(at.phase(), id),
                supply == null ? null : expected(supply).orElse(null),
                neverAbove(),
                cautions(at.phase()),
                following(at),
                rest);
    }

    private @Nullable Position following(Position at) {
        int stage = at.stage();
        SupplyId supply = at.supply();
        return switch (at.phase()) {
            case CONNECT -> new Position(stage, Phase.OPEN_BOTTLE, null);
            case OPEN_BOTTLE -> next(stage);
            case OPEN_SUPPLY -> new Position(stage, Phase.CRACK_TRANSFER, supply);
            case CRACK_TRANSFER -> new Position(stage, Phase.WATCH, supply);
            case WATCH -> new Position(stage, Phase.SHUT_TRANSFER, supply);
            case SHUT_TRANSFER -> new Position(stage, Phase.SHUT_SUPPLY, supply);
            case SHUT_SUPPLY -> new Position(stage, Phase.ENTER_READING, supply);
            case SHUT_BOTTLE -> new Position(stage, Phase.VENT_HOSE, null);
            case VENT_HOSE -> setAside() ? null : new Position(stage, Phase.FINISH, null);
            case ENTER_READING, FINISH -> null;
        };
    }

    /** What the bottle should show when this supply has given what it can. */
    private Optional<GaugePressure> expected(Supply supply) {
        String name = supply.details().name();
        Optional<GaugePressure> planned = endOf(rest, name);
        return planned.isPresent() ? planned : endOf(planFrom.apply(supply.id()), name);
    }

    private static Optional<GaugePressure> endOf(PlanOutcome outcome, String supply) {
        if (!(outcome instanceof FillPlan plan)) {
            return Optional.empty();
        }
        return plan.fill().steps().stream()
                .filter(step -> step.supply().equals(supply))
                .map(step -> step.bottle().after())
                .findFirst();
    }

    private GaugePressure neverAbove() {
        if (rest instanceof FillPlan plan) {
            return plan.stop().neverAbove();
        } else if (rest instanceof PlanRefused.BottleAboveLimit above) {
            return above.limit();
        }
        Reading latest = fill.bottleNow();
        return permitted.onTheBench(
                state.bench(), fill.bottle(), latest.at(), latest.temperature().temperature());
    }

    private BottleDetails bottle() {
        return state.bench().getBottle(fill.bottle()).details();
    }

    private List<Caution> cautions(Phase phase) {
        List<Caution> cautions = new ArrayList<>();
        if (fill.bottleNow().pressure().compareTo(bottle().servicePressure()) > 0) {
            cautions.add(Caution.ABOVE_SERVICE_PRESSURE);
        }
        boolean fresh = phase == Phase.OPEN_SUPPLY || phase == Phase.SHUT_BOTTLE;
        if (fresh && new StageSurprise(state, fill, count).isThere()) {
            cautions.add(Caution.READING_UNLIKE_EXPECTED);
        }
        if (phase == Phase.CONNECT && fill.before().pressure().value().signum() == 0) {
            cautions.add(Caution.BOTTLE_EMPTY);
        }
        cautions.addAll(usual(phase));
        return cautions;
    }

    private static List<Caution> usual(Phase phase) {
        return switch (phase) {
            case CONNECT ->
                List.of(
                        Caution.CHECK_THE_MARKING,
                        Caution.NO_OIL_OR_GREASE,
                        Caution.VENTILATE,
                        Caution.NO_IGNITION,
                        Caution.SECOND_PERSON_FOR_NEW_FILLERS);
            case OPEN_BOTTLE -> List.of(Caution.OPEN_SLOWLY);
            case OPEN_SUPPLY -> List.of(Caution.OPEN_SLOWLY, Caution.ONE_SUPPLY_AT_A_TIME);
            case CRACK_TRANSFER -> List.of(Caution.OPEN_SLOWLY, Caution.HEAT_OF_FILLING);
            case WATCH -> List.of(Caution.HEAT_OF_FILLING);
            case SHUT_TRANSFER, ENTER_READING, SHUT_BOTTLE, FINISH -> List.of();
            case SHUT_SUPPLY -> List.of(Caution.ONE_SUPPLY_AT_A_TIME);
            case VENT_HOSE -> List.of(Caution.VENT_BEFORE_DISCONNECTING);
        };
    }

    /**
     * How the bench can stand after an interruption. With only the bottle open a stage may just have ended, so its gauge is asked
     * for; with gas flowing the guide goes on watching.
     */
    private List<Guide.AskValves.Choice> choices() {
        int stage = fill.stages().size() + 1;
        List<Guide.AskValves.Choice> choices = new ArrayList<>();
        Phase start = stage == 1 ? Phase.CONNECT : Phase.OPEN_BOTTLE;
        choices.add(choice(Phase.CONNECT, null, new Position(stage, start, null)));
        SupplyId planned = plannedSupply().orElse(null);
        choices.add(choice(
                Phase.OPEN_BOTTLE,
                null,
                planned == null
                        ? new Position(stage, Phase.SHUT_BOTTLE, null)
                        : new Position(stage, Phase.ENTER_READING, planned)));
        for (BankNow.Shown shown : board.bank().supplies()) {
            SupplyId id = shown.supply().id();
            if (shown.standing().turn() == Turn.TAGGED_OUT) {
                continue;
            }
            choices.add(choice(Phase.OPEN_SUPPLY, id, new Position(stage, Phase.CRACK_TRANSFER, id)));
            choices.add(choice(Phase.WATCH, id, new Position(stage, Phase.WATCH, id)));
        }
        return choices;
    }

    private Guide.AskValves.Choice choice(Phase asAfter, @Nullable SupplyId supply, Position goOn) {
        List<ValveState> valves =
                board.after(asAfter, supply).stream().map(ValveState::atRest).toList();
        return new Guide.AskValves.Choice(valves, goOn);
    }
}
