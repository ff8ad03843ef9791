package org.lowfirst.planning.study;

import java.util.List;

/**
 * A request as numbers, made once and read by every run.
 *
 * @param bands isotherms of the bench's temperatures
 * @param kinds the bottles
 * @param calendar when they come
 * @param ways the alternatives, in the order of the request
 */
record Numbers(Bands bands, Kinds kinds, Calendar calendar, List<Way> ways) {

    static Numbers of(StudyRequest request) {
        Bands bands = new Bands(request.site());
        Kinds kinds = new Kinds(request.demand().bottles(), bands);
        return new Numbers(
                bands,
                kinds,
                new Calendar(request.demand()),
                request.alternatives().stream()
                        .map(alternative -> new Way(request, alternative, bands, kinds))
                        .toList());
    }
}
