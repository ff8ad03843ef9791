package org.lowfirst.cli;

import java.util.function.Function;
import java.util.function.ToIntFunction;
import org.lowfirst.app.file.Asked;
import org.lowfirst.app.file.FileBytes;
import org.lowfirst.app.file.QuestionFile;

/** Reads the file of a question, has it answered and shows what is wrong with it. */
final class AnsweringAFile {

    private final Terminal terminal;

    AnsweringAFile(Terminal terminal) {
        this.terminal = terminal;
    }

    /**
     * Answers the question of a file.
     *
     * @param file the file as typed; - for what is piped in
     * @param outcome what did not happen when the file is refused, e.g. "nothing was planned"
     * @param ask answers
     * @param print prints the answer and gives the exit code
     */
    <T> int answer(String file, String outcome, Function<FileBytes.Found, Asked<T>> ask, ToIntFunction<T> print) {
        FileBytes read = FileBytes.of(file, terminal.in(), QuestionFile.MOST_BYTES);
        if (read instanceof FileBytes.Missing missing) {
            terminal.err().println(missing.why());
            return ExitCode.BAD_INPUT;
        }
        Asked<T> asked = ask.apply((FileBytes.Found) read);
        ProblemPrinter printer = new ProblemPrinter(terminal);
        if (asked instanceof Asked.Refused<T> refused) {
            printer.print(refused.source(), refused.problems(), outcome);
            return ExitCode.BAD_INPUT;
        }
        Asked.Answered<T> answered = (Asked.Answered<T>) asked;
        printer.show(answered.source(), answered.warnings());
        return print.applyAsInt(answered.answer());
    }
}
