package org.lowfirst.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;

/** Connects the commands to the process: streams, character set and exit code. */
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        Locale.setDefault(Locale.ENGLISH);
        Terminal terminal = ofProcess();
        int code = new Lowfirst(terminal).run(args);
        terminal.err().flush();
        terminal.out().flush();
        if (terminal.out().checkError() && code != ExitCode.FAILED) {
            terminal.err()
                    .println("lowfirst: the result could not be written out. Is the disk full or the pipe closed?");
            terminal.err().flush();
            code = ExitCode.FAILED;
        }
        System.exit(code);
    }

    private static Terminal ofProcess() {
        boolean utf8 = utf8Terminal();
        Charset charset = StandardCharsets.UTF_8;
        return new Terminal(
                System.in,
                writer(FileDescriptor.out, charset),
                writer(FileDescriptor.err, charset),
                utf8,
                Path.of(System.getProperty("java.io.tmpdir")));
    }

    private static PrintWriter writer(FileDescriptor stream, Charset charset) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(stream), charset), false);
    }

    private static boolean utf8Terminal() {
        return StandardCharsets.UTF_8.name().equalsIgnoreCase(System.getProperty("native.encoding", ""));
    }
}
