package org.lowfirst.app.paper;

import java.util.List;

/**
 * A paper laid out, before it is printed.
 *
 * @param kind its kind as in the stylesheet and the words, e.g. "bench-sheet"
 * @param wide whether the paper lies on its long side
 * @param body what is on it
 */
record Sheet(String kind, boolean wide, List<Node> body) {

    Sheet {
        body = List.copyOf(body);
    }

    static Sheet upright(String kind, Node... body) {
        return new Sheet(kind, false, List.of(body));
    }
}
