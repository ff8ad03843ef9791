package org.lowfirst.app.honest;

import org.lowfirst.planning.contents.Verdict;
import org.lowfirst.planning.contents.VerdictCode;

/**
 * A verdict with its words.
 *
 * @param verdict code and numbers
 * @param name the verdict in words, one of six
 * @param sentence the numbers behind it
 * @param chance how often noise alone would look like this, e.g. "1 in 400"
 * @param advice what to do; empty when nothing
 */
public record StandingVerdict(Verdict verdict, String name, String sentence, String chance, String advice) {

    public VerdictCode code() {
        return verdict.code();
    }
}
