package org.lowfirst.station.rules;

import org.jspecify.annotations.Nullable;

/**
 * What the cylinder is for. Null: not known.
 *
 * @param gas gas it is labelled for
 * @param connection outlet, e.g. "CGA 540"
 * @param otherService it has held something else since it was last cleaned for oxygen
 * @param oxygenClean it is recorded as cleaned for oxygen
 * @param ownerConsents its owner agreed to it being filled here
 */
public record Service(
        @Nullable String gas,
        @Nullable String connection,
        Answer otherService,
        Answer oxygenClean,
        Answer ownerConsents) {

    public static Service oxygen(String connection) {
        return new Service("oxygen", connection, Answer.NO, Answer.YES, Answer.YES);
    }
}
