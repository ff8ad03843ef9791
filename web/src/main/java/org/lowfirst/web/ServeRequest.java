package org.lowfirst.web;

import java.time.Clock;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.bench.IdSource;

/**
 * What to serve and where.
 *
 * @param bind loopback address or name to listen on, e.g. 127.0.0.1
 * @param port TCP port, 0 to 65535; 0 takes a free one
 * @param benches the use cases over the open database; stays open when serving stops
 * @param clock the time, and the zone in which the bench stands
 * @param ids makes ids that were never made before
 */
public record ServeRequest(String bind, int port, Benches benches, Clock clock, IdSource ids) {

    public ServeRequest {
        if (port < 0 || port > 65_535) {
            throw new IllegalArgumentException("The port (" + port + ") must be between 0 and 65535.");
        }
    }
}
