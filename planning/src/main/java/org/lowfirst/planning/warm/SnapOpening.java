package org.lowfirst.planning.warm;

import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.CaloricEquation;
import org.lowfirst.gas.Evaluated;
import org.lowfirst.gas.GasState;
import org.lowfirst.gas.Temperature;
import org.lowfirst.transfer.warm.Answer;
import org.lowfirst.transfer.warm.Datasheet;
import org.lowfirst.transfer.warm.WarmRefusal;

/**
 * Why valves are opened slowly: what gas comes to in theory when it is squeezed into a dead end at once, without heat or loss.
 *
 * <p>The two answers are an upper bound of a kind: real pipes lose heat, a real shock can do worse at a point. Neither says what is
 * harmless.
 *
 * @param ratio pressure after over pressure before [1]
 * @param realGas temperature on the isentrope of the real gas
 * @param constantGamma temperature by {@code T ratio^((gamma - 1) / gamma)}, as tables in use have it
 */
public record SnapOpening(double ratio, Temperature realGas, Temperature constantGamma) {

    private static final Datasheet SHEET = Datasheet.beside(SnapOpening.class, "snap-opening.txt");

    /**
     * The dead end is filled to a pressure.
     *
     * @param before pressure in the dead end, above 0
     * @param at temperature there
     * @param after pressure of the supply, not below {@code before}
     */
    public static Answer<SnapOpening> of(
            AbsolutePressure before, Temperature at, AbsolutePressure after, CaloricEquation gas) {
        WarmRefusal wrong = WarmCheck.first(
                WarmCheck.air("temperature of the gas in the dead end", at),
                WarmCheck.number("pressure in the dead end", before.toBar(), 0.1, 400.0, "bar absolute"),
                WarmCheck.number("pressure of the supply", after.toBar(), before.toBar(), 400.0, "bar absolute"));
        if (wrong != null) {
            return Answer.refused(wrong);
        }
        Evaluated<GasState> end =
                gas.state(before, at).then(start -> gas.stateWithEntropy(after, start.entropy_JPerKgK()));
        if (!(end instanceof Evaluated.Value<GasState> found)) {
            return Answer.refused(WarmRefusal.of(end));
        }
        double ratio = after.pascals() / before.pascals();
        double gamma = SHEET.value("constant-gamma", "1");
        return Answer.of(new SnapOpening(
                ratio,
                found.value().temperature(),
                new Temperature(at.kelvin() * Math.pow(ratio, (gamma - 1.0) / gamma))));
    }
}
