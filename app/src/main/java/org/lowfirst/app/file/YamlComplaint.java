package org.lowfirst.app.file;

import java.util.Locale;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;

/** Says in plain words why a text is not YAML. */
final class YamlComplaint {

    private YamlComplaint() {}

    static String of(MarkedYamlEngineException unreadable) {
        String problem = unreadable.getProblem() == null ? "it ends in the middle" : unreadable.getProblem();
        if (problem.contains("TAB")) {
            return "This is not readable YAML: a tab stands where the line should start with spaces. Use spaces.";
        }
        return "This is not readable YAML: " + problem.strip() + ". " + advice(problem);
    }

    static String of(ReaderException odd) {
        return String.format(
                Locale.ROOT,
                "The file holds the control character U+%04X, which YAML does not allow. Remove it and try again.",
                odd.getCodePoint());
    }

    private static String advice(String problem) {
        if (problem.contains("mapping values are not allowed")) {
            return "Maybe the line before is not indented alike, or a value with a colon needs quotes.";
        }
        if (problem.contains("expected ',' or '}'") || problem.contains("expected ',' or ']'")) {
            return "Maybe a closing brace or bracket, or the comma between two keys, is missing.";
        }
        if (problem.contains("expected <block end>")) {
            return "Maybe this line is not indented like the others of its group.";
        }
        if (problem.contains("could not find expected ':'")) {
            return "Maybe the colon and a space after the key are missing.";
        }
        return "Maybe a quote, a colon or the indentation is wrong.";
    }
}
