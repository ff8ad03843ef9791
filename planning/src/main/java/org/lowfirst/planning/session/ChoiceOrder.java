package org.lowfirst.planning.session;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Orders choices: most ready first, then by the criteria that stand before gas, changes and time. */
final class ChoiceOrder implements Comparator<Choice> {

    private final Problem problem;
    private final List<Criterion> before;
    private final int[] priorities;

    ChoiceOrder(Problem problem, List<Criterion> order) {
        this.problem = problem;
        int end = 0;
        while (end < order.size() && (order.get(end) == Criterion.PRIORITY || order.get(end) == Criterion.WISH)) {
            end++;
        }
        before = List.copyOf(order.subList(0, end));
        priorities = IntStream.of(problem.priority).sorted().distinct().toArray();
    }

    @Override
    public int compare(Choice a, Choice b) {
        return Arrays.compare(key(b), key(a));
    }

    private int[] key(Choice choice) {
        IntStream key = IntStream.of(choice.ready());
        for (Criterion criterion : before) {
            IntStream part = criterion == Criterion.WISH
                    ? IntStream.of(choice.full(problem))
                    : IntStream.of(priorities).map(p -> choice.ready(problem, p));
            key = IntStream.concat(key, part);
        }
        return key.toArray();
    }
}
