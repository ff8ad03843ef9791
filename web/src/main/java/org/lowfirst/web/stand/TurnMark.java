package org.lowfirst.web.stand;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Standing;
import org.lowfirst.station.Turn;
import org.lowfirst.web.words.Words;

/**
 * When a supply is opened, in a word and a shape.
 *
 * @param name in words
 * @param reason why; empty when there is none
 * @param tone first, held or out
 * @param shape outline of its shape in a square of 20
 */
public record TurnMark(String name, String reason, String tone, String shape) {

    /** Null for a supply that is used by its rank, as any other. */
    public static @Nullable TurnMark of(Standing standing, Words words) {
        Turn turn = standing.turn();
        return turn == Turn.BY_RANK
                ? null
                : new TurnMark(words.of(key(turn)), standing.reason(), tone(turn), shape(turn));
    }

    static String key(Turn turn) {
        return "turn." + turn.name().toLowerCase(Locale.ROOT);
    }

    private static String tone(Turn turn) {
        return switch (turn) {
            case BY_RANK, FIRST -> "first";
            case HELD_BACK -> "held";
            case TAGGED_OUT -> "out";
        };
    }

    /** An arrow, two bars, a barred square. */
    private static String shape(Turn turn) {
        return switch (turn) {
            case BY_RANK, FIRST -> "M2.5 10h14M11 4.5L16.5 10L11 15.5";
            case HELD_BACK -> "M6.5 3v14M13.5 3v14";
            case TAGGED_OUT -> "M3 3h14v14H3zM3 3L17 17";
        };
    }
}
