package org.lowfirst.app.journal;

import java.util.function.Function;
import org.lowfirst.station.Fact;

/**
 * How one kind of fact is written.
 *
 * @param kind its written name, for ever
 * @param version of the payload written now; older ones are upcast, see {@link Upcasters}
 */
record FactCodec<F extends Fact>(
        String kind, int version, Class<F> type, Function<F, Payload> write, Function<Payload, F> read) {

    Payload encode(Fact fact) {
        return write.apply(type.cast(fact));
    }

    Fact decode(Payload payload) {
        return read.apply(payload);
    }
}
