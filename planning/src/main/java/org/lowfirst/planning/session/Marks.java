package org.lowfirst.planning.session;

/**
 * Which bottles a plan is known to make ready and which not.
 *
 * <p>A bottle that is no larger than another, starts no lower and is wanted no higher may take the other's place in any plan: at
 * every stage it comes as high or to its stop, and leaves the supply as high, and with supplies and bottles higher all that
 * follows ends as high or higher. So no plan needs to make the harder one ready and leave out the easier.
 */
final class Marks {

    private enum Mark {
        OPEN,
        IN,
        OUT
    }

    private final Problem problem;
    private final Mark[] mark;
    /** easier[a][b]: bottle a may take the place of b. */
    private final boolean[][] easier;

    /** No bottle marked. */
    Marks(Problem problem, double[] stop) {
        this.problem = problem;
        mark = new Mark[problem.bottles];
        java.util.Arrays.fill(mark, Mark.OPEN);
        easier = new boolean[problem.bottles][problem.bottles];
        for (int a = 0; a < problem.bottles; a++) {
            for (int b = 0; b < problem.bottles; b++) {
                boolean asEasy = asEasy(a, b, stop);
                easier[a][b] = a != b && asEasy && (a < b || !asEasy(b, a, stop));
            }
        }
    }

    private Marks(Marks from) {
        problem = from.problem;
        mark = from.mark.clone();
        easier = from.easier;
    }

    Marks copy() {
        return new Marks(this);
    }

    private boolean asEasy(int a, int b, double[] stop) {
        return problem.bottle_m3[a] <= problem.bottle_m3[b]
                && problem.bottle_molPerM3[a] >= problem.bottle_molPerM3[b]
                && stop[a] <= stop[b];
    }

    boolean in(int b) {
        return mark[b] == Mark.IN;
    }

    boolean out(int b) {
        return mark[b] == Mark.OUT;
    }

    boolean open(int b) {
        return mark[b] == Mark.OPEN;
    }

    /** Bottles that may be ready. */
    int possible() {
        int count = 0;
        for (Mark one : mark) {
            count += one == Mark.OUT ? 0 : 1;
        }
        return count;
    }

    /** Takes a bottle in, and all that are easier; false when one of them is out. */
    boolean takeIn(int b) {
        return set(b, Mark.IN, Mark.OUT);
    }

    /** Leaves a bottle out, and all that are harder; false when one of them is in. */
    boolean leaveOut(int b) {
        return set(b, Mark.OUT, Mark.IN);
    }

    private boolean set(int b, Mark wanted, Mark opposite) {
        if (mark[b] == opposite) {
            return false;
        }
        boolean possible = true;
        if (mark[b] == Mark.OPEN) {
            mark[b] = wanted;
            for (int other = 0; other < mark.length && possible; other++) {
                boolean follows = wanted == Mark.IN ? easier[other][b] : easier[b][other];
                possible = !follows || set(other, wanted, opposite);
            }
        }
        return possible;
    }
}
