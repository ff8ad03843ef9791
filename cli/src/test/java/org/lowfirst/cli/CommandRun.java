package org.lowfirst.cli;

import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** One command run in this process: its exit code and what it wrote. */
record CommandRun(int exit, String out, String err) {

    private static final Path RESOURCES = Path.of("src/test/resources");

    static CommandRun of(String... args) {
        return piped("", args);
    }

    static CommandRun piped(String in, String... args) {
        return piped(in.getBytes(StandardCharsets.UTF_8), args);
    }

    static CommandRun piped(byte[] in, String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Terminal terminal = new Terminal(
                new ByteArrayInputStream(in),
                new PrintWriter(out),
                new PrintWriter(err),
                true,
                Path.of(System.getProperty("java.io.tmpdir")));
        int exit = new Lowfirst(terminal).run(args);
        return new CommandRun(exit, out.toString(), err.toString());
    }

    /** Plans a file of src/test/resources as JSON. */
    static CommandRun planned(String file) {
        return of("plan", RESOURCES.resolve(file).toString(), "--json");
    }

    JsonNode json() {
        return JsonMapper.shared().readTree(out);
    }
}
