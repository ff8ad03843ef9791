package org.lowfirst.station;

import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * The session under way, if there is one. Immutable.
 *
 * @param open the session; null when none is under way
 * @param latest the one that ended last, as it stood; null when there was none
 */
public record Sessions(@Nullable OpenSession open, @Nullable OpenSession latest) {

    static final Sessions NEW = new Sessions(null, null);

    /** The session under way. */
    public Optional<OpenSession> findOpen() {
        return Optional.ofNullable(open);
    }

    /** The session under way that a fill belongs to. */
    public Optional<OpenSession> findOpen(FillId fill) {
        return findOpen().filter(session -> session.findWish(fill).isPresent());
    }

    /** A session under way, or the one that ended last. */
    public Optional<OpenSession> find(SessionId id) {
        return findOpen()
                .filter(session -> session.id().equals(id))
                .or(() -> Optional.ofNullable(latest)
                        .filter(session -> session.id().equals(id)));
    }

    Sessions after(SessionFact fact) {
        if (fact instanceof SessionFact.SessionBegun f) {
            return new Sessions(OpenSession.of(f), latest);
        }
        OpenSession now = open;
        if (now == null || !now.id().equals(fact.session())) {
            return this;
        }
        if (fact instanceof SessionFact.SessionPlanned f) {
            return new Sessions(now.planned(f.stages()), latest);
        } else if (fact instanceof SessionFact.StageSkipped f) {
            return new Sessions(now.skipped(f.fill(), f.supply()), latest);
        } else if (fact instanceof SessionFact.BottleLeftOut f) {
            return new Sessions(now.leftOut(f.fill(), f.reason()), latest);
        } else if (fact instanceof SessionFact.SessionEnded) {
            return new Sessions(null, now);
        }
        throw new AssertionError("unhandled " + fact);
    }

    /** After a step of one of its fills. */
    Sessions with(UnaryOperator<OpenSession> step) {
        return open == null ? this : new Sessions(step.apply(open), latest);
    }
}
