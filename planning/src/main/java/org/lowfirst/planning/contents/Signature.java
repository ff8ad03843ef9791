package org.lowfirst.planning.contents;

/**
 * How one explanation would show in a series of readings, and how well it fits (Willsky and Jones 1976, from memory).
 *
 * <p>A signature follows what one unit of its cause would do to the difference between the true contents and the filter's
 * estimate, through the same gains as the filter itself. With innovations nu of variance S and expected innovation g per unit,
 * the likeliest size is sum(g nu / S) / sum(g g / S).
 */
final class Signature {

    /** Readings before it was begun; identifies onset or step. */
    final int since;

    private double deviation;
    private double pending;
    private double expected;
    private double inserted;
    private double score;
    private double information;
    private double shared;
    private int insertions;

    Signature(int since) {
        this.since = since;
    }

    /** One unit of the cause changes the true contents by this much before the next reading [mol]. */
    void insert(double change_mol) {
        deviation += change_mol;
        inserted += change_mol;
        insertions++;
    }

    /** One unit of the cause changes the next reading alone by this much [mol]. */
    void misread(double change_mol) {
        pending = change_mol;
        inserted += change_mol;
    }

    /** Expected innovation per unit at this reading, then the update with it. */
    void read(double innovation, double variance, double gain) {
        expected = deviation + pending;
        pending = 0.0;
        score += expected * innovation / variance;
        information += expected * expected / variance;
        deviation -= gain * expected;
    }

    /** Adds the product of the expected innovations of this and the next signature; call after both have read. */
    void share(Signature next, double variance) {
        shared += expected * next.expected / variance;
    }

    /** Forgets how the contents were related to earlier readings; what was learned before stays. */
    void restart() {
        deviation = 0.0;
        pending = 0.0;
    }

    double information() {
        return information;
    }

    double score() {
        return score;
    }

    /** Product with the next signature, for the angle between them. */
    double shared() {
        return shared;
    }

    /** Likeliest size in units of the cause over its standard deviation; 0 when nothing speaks about it. */
    double z() {
        return information > 0.0 ? score / Math.sqrt(information) : 0.0;
    }

    double size() {
        return score / information;
    }

    double sizeDeviation() {
        return 1.0 / Math.sqrt(information);
    }

    /** What one unit has moved the true contents away from the filter's estimate, as of now [mol]. */
    double deviation() {
        return deviation;
    }

    /** What one unit has changed in all [mol]. */
    double inserted() {
        return inserted;
    }

    /** How often it was inserted. */
    int insertions() {
        return insertions;
    }
}
