package org.lowfirst.station;

/**
 * Identity of a session; made by whoever begins it.
 *
 * @param value 1 to 64 letters, digits, points, dashes or underscores
 */
public record SessionId(String value) {

    public SessionId {
        IdText.checked("session", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
