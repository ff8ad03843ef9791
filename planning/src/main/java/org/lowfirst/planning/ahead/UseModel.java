package org.lowfirst.planning.ahead;

import java.time.LocalDate;
import java.util.List;
import org.lowfirst.planning.study.kernel.Draws;

/**
 * The rate of fills, drawn again and again from what guess and history say about it. Mutable, used by one thread.
 *
 * <pre>
 *   fills on a day ~ Poisson(level x weekday x month x day)
 *   level ~ Gamma(weighsFills, mean of the guess);  weekday, month ~ Gamma around the guess;  day ~ Gamma(k, mean 1)
 * </pre>
 *
 * <p>Given all the others each of these is again gamma distributed (Poisson and gamma are conjugate), so {@link #step()} draws
 * them one after another (Gibbs sampling); days of one weekday and month are drawn as their sum. The shape k is drawn from the
 * listed ones by their likelihood with the days integrated out (negative binomial).
 *
 * @see "[Gelman2013]"
 */
final class UseModel {

    private final Tally tally;
    private final Draws draws;
    private final double weekdayShape;
    private final double monthShape;
    private final double[] dayShapes;
    private final double[] dayShapeLogs;
    private final double levelShape;
    private final double levelRate;
    private final double[] weekdayGuess;
    private final double[] monthGuess;

    private double level;
    private final double[] weekday = new double[Tally.WEEKDAYS];
    private final double[] month = new double[Tally.MONTHS];
    private double dayShape;
    private final double[][] daySum = new double[Tally.WEEKDAYS][Tally.MONTHS];

    UseModel(Tally tally, UseGuess guess, AheadAssumptions assumptions, Draws draws) {
        this.tally = tally;
        this.draws = draws;
        weekdayShape = assumptions.weekdayShape();
        monthShape = assumptions.monthShape();
        dayShapes = assumptions.dayShapes().stream()
                .mapToDouble(Double::doubleValue)
                .toArray();
        dayShapeLogs = new double[dayShapes.length];
        for (int i = 0; i < dayShapes.length; i++) {
            dayShapeLogs[i] = tally.logLikelihood(dayShapes[i]);
        }
        levelShape = guess.weighsFills();
        levelRate = guess.weighsFills() / (guess.fillsPerYear() / 365.0);
        weekdayGuess = withMeanOne(guess.weekdays());
        monthGuess = withMeanOne(guess.months());
        drawFromGuess();
    }

    private static double[] withMeanOne(List<Double> factors) {
        double mean =
                factors.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        return factors.stream().mapToDouble(factor -> factor / mean).toArray();
    }

    /** Draws everything as if there were no history. */
    final void drawFromGuess() {
        level = draws.gamma(levelShape) / levelRate;
        for (int i = 0; i < weekday.length; i++) {
            weekday[i] = draws.gamma(weekdayShape) / weekdayShape;
        }
        for (int i = 0; i < month.length; i++) {
            month[i] = draws.gamma(monthShape) / monthShape;
        }
        dayShape = dayShapes[Math.min(dayShapes.length - 1, (int) (draws.uniform() * dayShapes.length))];
    }

    /** Draws everything anew, given the rest and the history. */
    void step() {
        drawDayShape();
        drawDays();
        double seen = 0.0;
        for (int w = 0; w < weekday.length; w++) {
            for (int m = 0; m < month.length; m++) {
                seen += factor(w, m) * daySum[w][m];
            }
        }
        level = draws.gamma(levelShape + tally.fills()) / (levelRate + seen);
        for (int w = 0; w < weekday.length; w++) {
            double fills = weekdayShape;
            double exposed = weekdayShape;
            for (int m = 0; m < month.length; m++) {
                fills += tally.fills(w, m);
                exposed += level * weekdayGuess[w] * monthGuess[m] * month[m] * daySum[w][m];
            }
            weekday[w] = draws.gamma(fills) / exposed;
        }
        for (int m = 0; m < month.length; m++) {
            double fills = monthShape;
            double exposed = monthShape;
            for (int w = 0; w < weekday.length; w++) {
                fills += tally.fills(w, m);
                exposed += level * weekdayGuess[w] * monthGuess[m] * weekday[w] * daySum[w][m];
            }
            month[m] = draws.gamma(fills) / exposed;
        }
    }

    private void drawDayShape() {
        double[] logs = dayShapeLogs.clone();
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < logs.length; i++) {
            for (int w = 0; w < weekday.length; w++) {
                for (int m = 0; m < month.length; m++) {
                    double days = tally.days(w, m);
                    if (days > 0.0) {
                        double sum = dayShapes[i] + mean(w, m);
                        logs[i] +=
                                days * dayShapes[i] * Math.log(dayShapes[i] / sum) - tally.fills(w, m) * Math.log(sum);
                    }
                }
            }
            highest = Math.max(highest, logs[i]);
        }
        double all = 0.0;
        for (int i = 0; i < logs.length; i++) {
            logs[i] = Math.exp(logs[i] - highest);
            all += logs[i];
        }
        double left = all * draws.uniform();
        int picked = 0;
        while (picked < logs.length - 1 && left >= logs[picked]) {
            left -= logs[picked++];
        }
        dayShape = dayShapes[picked];
    }

    private void drawDays() {
        for (int w = 0; w < weekday.length; w++) {
            for (int m = 0; m < month.length; m++) {
                double days = tally.days(w, m);
                daySum[w][m] =
                        days > 0.0 ? draws.gamma(days * dayShape + tally.fills(w, m)) / (dayShape + mean(w, m)) : 0.0;
            }
        }
    }

    private double factor(int w, int m) {
        return weekdayGuess[w] * monthGuess[m] * weekday[w] * month[m];
    }

    private double mean(int w, int m) {
        return level * factor(w, m);
    }

    /** A number of bottles that may come on a day at the rate now drawn. */
    int comingOn(LocalDate day) {
        double mean = mean(Tally.weekday(day), Tally.month(day));
        return draws.poisson(mean * draws.gamma(dayShape) / dayShape);
    }

    /** How much the history counts in the level, from 0 to 1. */
    double shareOfHistory() {
        return tally.days() / (tally.days() + levelRate);
    }
}
