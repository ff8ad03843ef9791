package org.lowfirst.transfer.warm;

/** The rates of change of a shut cylinder: its {@link Side} and heat to air [J]. */
final class RestEquations implements Integration.Rates {

    static final int AIR = Side.SIZE;
    static final int DIMENSION = AIR + 1;

    private final Side side;
    private final double amount_mol;

    RestEquations(Side side, double amount_mol) {
        this.side = side;
        this.amount_mol = amount_mol;
    }

    void evaluate(double[] y) {
        side.evaluate(amount_mol, y, 0);
    }

    @Override
    public void derivatives(double[] y, double[] yDot) {
        evaluate(y);
        side.prepareHeat(false);
        side.flowHeat(0.0);
        side.derivatives(0.0, 0.0, yDot, 0);
        yDot[AIR] = side.toAir_W;
    }
}
