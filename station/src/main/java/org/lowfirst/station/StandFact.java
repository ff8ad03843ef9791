package org.lowfirst.station;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How supplies stand beyond their rank: held back, tagged out, used first, delivered with, in which bank, and the course of an
 * exchange.
 */
public sealed interface StandFact extends AreaFact {

    /** A supply is used by its rank from now on, as any other. */
    record SupplyReleased(SupplyId supply) implements StandFact {
        @Override
        public List<CylinderId> cylinders() {
            return List.of(supply);
        }
    }

    /** A supply keeps its rank and is not planned with. */
    record SupplyHeldBack(SupplyId supply, String reason) implements StandFact {
        @Override
        public List<CylinderId> cylinders() {
            return List.of(supply);
        }
    }

    /** A supply must not be opened at all, e.g. because its valve leaks. */
    record SupplyTaggedOut(SupplyId supply, String reason) implements StandFact {
        @Override
        public List<CylinderId> cylinders() {
            return List.of(supply);
        }
    }

    /** A supply is opened before those of lower rank, e.g. because its rent shall end. */
    record SupplyPutFirst(SupplyId supply) implements StandFact {
        @Override
        public List<CylinderId> cylinders() {
            return List.of(supply);
        }
    }

    /** What the supplier's paper says, all of it as it is from now on. */
    record SupplyDelivered(SupplyId supply, Delivery delivery) implements StandFact {
        @Override
        public List<CylinderId> cylinders() {
            return List.of(supply);
        }
    }

    /**
     * A supply belongs to a bank.
     *
     * @param bank name of the bank; null for the one that needs no name
     */
    record SupplyPlaced(SupplyId supply, @Nullable String bank) implements StandFact {
        @Override
        public List<CylinderId> cylinders() {
            return List.of(supply);
        }
    }

    /**
     * A fill is made from one of several banks. Entered before the fill is begun or recorded.
     *
     * @param bank name of the bank; null for the one that needs no name
     */
    record BankChosen(FillId fill, @Nullable String bank) implements StandFact {}

    /** A supply is about to leave for the supplier; another will take its place. */
    record ExchangeBegun(SupplyId leaving) implements StandFact {
        @Override
        public List<CylinderId> cylinders() {
            return List.of(leaving);
        }
    }

    /** Another supply stands in the place of the one that left. */
    record ExchangeMade(SupplyId left, SupplyId newcomer) implements StandFact {
        @Override
        public List<CylinderId> cylinders() {
            return List.of(left, newcomer);
        }
    }

    /** Nothing takes the place, or the supply stays after all; what was entered on the way stands. */
    record ExchangeBrokenOff(SupplyId leaving, String reason) implements StandFact {
        @Override
        public List<CylinderId> cylinders() {
            return List.of(leaving);
        }
    }
}
