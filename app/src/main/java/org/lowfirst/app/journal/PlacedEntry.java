package org.lowfirst.app.journal;

/**
 * A sealed entry with the place it takes.
 *
 * @param place number of the entry whose place it takes; its own unless it corrects one
 */
record PlacedEntry(StoredEntry stored, long place) {}
