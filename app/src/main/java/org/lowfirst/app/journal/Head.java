package org.lowfirst.app.journal;

/**
 * The newest entry of a bench's journal.
 *
 * @param seq its number, which is also how many entries there are; 0 when there is none
 * @param hash its hash; 64 zeros when there is none
 */
public record Head(long seq, String hash) {

    /** Head of a journal without entries. */
    public static final Head NONE = new Head(0, EntryText.NO_HASH);
}
