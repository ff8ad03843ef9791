package org.lowfirst.app.fitness;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.station.rules.BuiltInBooks;
import org.lowfirst.station.rules.RuleBookReading;
import org.lowfirst.station.rules.RuleBookText;

class RuleFileWordsTest {

    private static final String BOOK = RuleBookText.write(BuiltInBooks.us());

    private static String problem(String text) {
        if (RuleBookText.read("book", text) instanceof RuleBookReading.Malformed wrong) {
            return wrong.problem();
        }
        throw new AssertionError("the book can be read");
    }

    /** Each change makes the built-in book unreadable in another way. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            years = 3            | years = three          | "three" ist keine ganze Zahl.
            years = 3            | years = 0              | "years" muss über 0 sein.
            years = 3            | years                  | Das ist nicht "Schlüssel = Wert".
            years = 3            | years =                | Für "years" fehlt der Wert.
            years = 3            | years = 3!size = 3     | "size" ist keine Einstellung dieser Art.
            [us.retest.3ht]      | [us.retest.3ht         | Eine Regel beginnt mit ihrer Kennung in eckigen Klammern
            [us.retest.3ht]      | [us.Retest]            | Die Kennung einer Regel (us.Retest) muss aus Kleinbuchstaben
            country = US         | country = US!country = US | "country" ist zweimal gesetzt.
            kind = retest        | kind = retests         | "retests" ist keine Art von Regel.
            status = read        | status = seen          | "seen" ist nichts von: read; read, quoted
            override = never     | override = always      | "always" ist nichts von: never; second person.
            source =             | origin =               | Die Einstellung "source" fehlt.
            """)
    void whatIsWrongIsSaidInGermanWithTheNamesAndValues(String from, String to, String said) {
        assertThat(BOOK).contains(from);
        String problem = problem(BOOK.replaceFirst(java.util.regex.Pattern.quote(from), to.replace('!', '\n')));
        assertThat(new RuleFileWords(Locale.GERMAN).of(problem)).startsWith(said);
        assertThat(new RuleFileWords(Locale.ENGLISH).of(problem))
                .isEqualTo(problem.lines().findFirst().orElseThrow());
    }

    @Test
    void aSentenceNobodyKnowsStaysAsItIs() {
        assertThat(new RuleFileWords(Locale.GERMAN).of("Something else is wrong."))
                .isEqualTo("Something else is wrong.");
    }
}
