package org.lowfirst.planning.session;

import java.util.ArrayList;
import java.util.List;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.planning.BenchGas;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.PlanRefused;

/**
 * Plans sessions at one bench under today's conditions. Immutable and thread-safe; making one evaluates the equation of state.
 *
 * <p>With up to six bottles with floors, or eight without, and six supplies every choice of bottles is tried and what the search
 * has gone through to the end is proven; beyond, a good plan and a proven bound are given.
 */
public final class SessionPlanner {

    private final EquationOfState gas;
    private final BenchGas bench;

    private SessionPlanner(EquationOfState gas, BenchGas bench) {
        this.gas = gas;
        this.bench = bench;
    }

    public static SessionPlanner under(Conditions conditions) {
        return new SessionPlanner(conditions.gas(), BenchGas.under(conditions));
    }

    public SessionOutcome plan(SessionRequest request) {
        return plan(request, Effort.USUAL, SessionWatch.PATIENT);
    }

    /**
     * Plans a session.
     *
     * @param effort how hard to look
     * @param watch sees how it gets on and may stop it
     */
    public SessionOutcome plan(SessionRequest request, Effort effort, SessionWatch watch) {
        PlanRefused wrong = Setting.wrongWith(bench, request);
        if (wrong != null) {
            return new SessionRefused(wrong);
        }
        Setting setting = Setting.of(bench, request);
        Problem problem = setting.problem();
        double step_mol = Math.max(setting.gasStep_mol(), 1e-9);
        Budget budget = new Budget(effort.nodes(), watch, new SessionWatch.SoFar(0, problem.bottles, Amount.NONE, 0));
        Found found = SmallSession.suits(problem)
                ? new SmallSession(problem, budget)
                        .solve(Choice.all(problem), new ChoiceOrder(problem, request.order()), 0.5 * step_mol)
                : new LargeSession(problem, budget, effort.rounds()).solve(0.5 * step_mol);
        Scored best = best(setting, problem, found, step_mol);
        SessionPlan plan = write(setting, problem, found, best, budget, step_mol);
        budget.report(problem, found.candidates().get(0), found.readyAtMost());
        return plan;
    }

    private static Scored best(Setting setting, Problem problem, Found found, double step_mol) {
        List<Criterion> order = setting.request().order();
        boolean gasFirst = order.indexOf(Criterion.GAS)
                < Math.min(order.indexOf(Criterion.CHANGES), order.indexOf(Criterion.TIME));
        Trimming trimming = new Trimming(setting, problem);
        List<Scored> scored = new ArrayList<>();
        for (Candidate candidate : found.candidates()) {
            if (gasFirst) {
                scored.add(Scored.of(setting, problem, candidate));
            } else {
                scored.addAll(trimming.trimmed(candidate));
            }
        }
        double best_mol = found.candidates().get(0).loss_mol();
        scored.sort(Scored.by(problem, order, best_mol, 0.5 * step_mol));
        return scored.get(0);
    }

    private SessionPlan write(
            Setting setting, Problem problem, Found found, Scored best, Budget spent, double step_mol) {
        Layout layout = best.candidate().layout();
        CourseWriter writer = new CourseWriter(setting, problem, layout);
        SessionCourse course = writer.write(best.calendar());
        Choice choice = Choice.of(layout.stops());
        double usable_mol = problem.usable_mol(problem.supply_molPerM3);
        SessionScore score = new SessionScore(
                choice.ready(),
                choice.full(problem),
                new Amount(writer.gasLeft_mol(problem)),
                best.calendar().changes,
                best.calendar().clock_s);
        Proof proof = new Proof(
                found.readyAtMost(),
                choice.ready() >= found.readyAtMost(),
                found.bestChoice(),
                new Amount(Math.max(0.0, usable_mol - found.lossAtLeast_mol())),
                best.candidate().loss_mol() <= found.lossAtLeast_mol() + 1.0001 * step_mol,
                new Amount(step_mol),
                spent.spent(),
                spent.stopped());
        SessionAdvice advice = new SessionAdvice(
                new Habits(problem).all(),
                new Reasons(setting, problem, best, step_mol).all(),
                choice.ready() == problem.bottles ? null : new Advising(setting, problem).moreReady());
        return new SessionPlan(setting.request(), gas, course, score, proof, advice);
    }
}
