package org.lowfirst.web.view;

import org.jspecify.annotations.Nullable;
import org.lowfirst.web.words.Words;

/** Everything one page shows, worked out before its template sees it. Implemented by one record per page. */
public interface Page {

    /** Name of the template, without its ending. */
    String template();

    /** Title of the window and of the page. */
    String title(Words words);

    /** The place it belongs to. */
    Section section();

    /** The bench it is about; null for pages about none. */
    default @Nullable Place at() {
        return null;
    }

    /** Whether the page is one act with both hands busy: no navigation beside the way back. */
    default boolean focused() {
        return false;
    }
}
