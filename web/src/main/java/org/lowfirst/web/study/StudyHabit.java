package org.lowfirst.web.study;

import java.util.Locale;
import org.lowfirst.web.words.Words;

/** The ways of running a bench that the form offers. */
enum StudyHabit {
    ONE(1, 0),
    PAIRS(2, 1),
    EARLY(1, 2),
    RESIDUAL(1, 4),
    BOOSTER(1, 3);

    /** Largest bank that can be asked for here; the command takes more. */
    static final int LARGEST = 12;

    private final int least;
    private final int looks;

    StudyHabit(int least, int looks) {
        this.least = least;
        this.looks = looks;
    }

    /** Smallest bank it makes sense with. */
    int least() {
        return least;
    }

    /** Which curve of a picture it is. */
    int looks() {
        return looks;
    }

    /** Its field in the form. */
    String field() {
        return "habit-" + word();
    }

    /** Key of its name in the words files. */
    String key() {
        return "study.habit." + word();
    }

    /** Name of one alternative. */
    String nameOf(Words words, int size) {
        return words.of("study.alternative", size, words.of(key()));
    }

    private String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
