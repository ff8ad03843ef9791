package org.lowfirst.app.file;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.lowfirst.app.file.Tree.Mapping;

/**
 * A file with a question, opened as far as its outermost keys.
 *
 * @param source the file
 * @param section its keys; empty when it has none, and then a problem says why
 */
public record QuestionFile(SourceText source, Optional<Section> section) {

    /** Far above any question. */
    public static final int MOST_BYTES = 262_144;

    /**
     * What such files look like.
     *
     * @param group how problems name one, e.g. "the session file"
     * @param keys its keys
     * @param line what it has a line for, e.g. "a session file has one line for each supply and bottle"
     * @param example an example of one
     */
    public record Shape(String group, List<String> keys, String line, String example) {

        public Shape {
            keys = List.copyOf(keys);
        }

        private String inWords() {
            String name = Character.toUpperCase(group.charAt(0)) + group.substring(1);
            return name + " has the keys " + String.join(", ", keys) + "; " + example + " shows one.";
        }
    }

    /**
     * Opens a file.
     *
     * @param name how problems name the file
     * @param bytes its content
     */
    public static QuestionFile open(String name, byte[] bytes, Shape shape, Problems problems) {
        Optional<String> text = FileText.decode(bytes, MOST_BYTES, shape.line(), problems);
        SourceText source = new SourceText(name, text.orElseGet(() -> new String(bytes, StandardCharsets.UTF_8)));
        if (text.isEmpty()) {
            return new QuestionFile(source, Optional.empty());
        }
        Optional<Tree> tree = TreeReader.read(source, problems);
        if (tree.isPresent() && tree.get() instanceof Mapping mapping) {
            return new QuestionFile(source, Optional.of(new Section(mapping, shape.group(), shape.keys(), problems)));
        }
        if (tree.isPresent()) {
            problems.error(tree.get().place(), "The file is " + tree.get().kind() + ". " + shape.inWords());
        } else if (!problems.haveErrors()) {
            problems.fileError("The file is empty. " + shape.inWords());
        }
        return new QuestionFile(source, Optional.empty());
    }

    public <T> Asked<T> answered(T answer, Problems problems) {
        return new Asked.Answered<>(source, answer, problems.inOrder());
    }

    public <T> Asked<T> refused(Problems problems) {
        return new Asked.Refused<>(source, problems.inOrder());
    }
}
