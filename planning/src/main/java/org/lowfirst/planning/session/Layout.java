package org.lowfirst.planning.session;

import java.util.Arrays;

/**
 * A plan without its calendar: for every supply the bottles in the order in which they are on it, and where each bottle stops.
 */
final class Layout {

    private final int[][] order;
    private final double[] stop;

    /**
     * @param order by supply: bottles in order
     * @param stop by bottle: density at which its valve is shut [mol/m3], not a number for a bottle not taken on
     */
    Layout(int[][] order, double[] stop) {
        this.order = new int[order.length][];
        for (int s = 0; s < order.length; s++) {
            this.order[s] = order[s].clone();
        }
        this.stop = stop.clone();
    }

    int supplies() {
        return order.length;
    }

    int on(int supply) {
        return order[supply].length;
    }

    int bottle(int supply, int place) {
        return order[supply][place];
    }

    double stop(int bottle) {
        return stop[bottle];
    }

    double[] stops() {
        return stop.clone();
    }

    /** The layout with the bottles at {@code place} and {@code place + 1} of a supply changed round. */
    Layout swapped(int supply, int place) {
        Layout changed = new Layout(order, stop);
        int[] line = changed.order[supply];
        int first = line[place];
        line[place] = line[place + 1];
        line[place + 1] = first;
        return changed;
    }

    /** The layout without the stage at {@code place} of a supply. */
    Layout without(int supply, int place) {
        Layout changed = new Layout(order, stop);
        int[] line = order[supply];
        int[] shorter = Arrays.copyOf(line, line.length - 1);
        System.arraycopy(line, place + 1, shorter, place, line.length - place - 1);
        changed.order[supply] = shorter;
        return changed;
    }

    @Override
    public String toString() {
        return Arrays.deepToString(order);
    }
}
