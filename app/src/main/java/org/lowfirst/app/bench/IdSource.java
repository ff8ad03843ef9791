package org.lowfirst.app.bench;

/** Makes ids that were never made before: for benches, supplies, bottles, fills and entry keys. */
@FunctionalInterface
public interface IdSource {

    String next();
}
