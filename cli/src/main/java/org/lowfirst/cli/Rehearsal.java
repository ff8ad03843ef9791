package org.lowfirst.cli;

import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * Runs the commands as people do, once, while the Java machine notes which classes they load; the launcher makes a class-data
 * archive of them, so that the next start finds them ready.
 */
public final class Rehearsal {

    private static final String BAD = "temprature: 70 F\nsupplies:\n  - {name: A, reading: 600}\nbottles: {}\n";

    private Rehearsal() {}

    /** @param args folder of the example files */
    public static void main(String[] args) {
        Locale.setDefault(Locale.ROOT);
        Path examples = Path.of(args[0]);
        for (String file : List.of("plan-us.yaml", "plan-eu.yaml", "cannot-reach.yaml")) {
            String path = examples.resolve(file).toString();
            run("plan", path);
            run("plan", path, "--json");
        }
        run("plan", "-");
        run("--version");
        run("plan");
    }

    private static void run(String... args) {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        ByteArrayInputStream in = new ByteArrayInputStream(BAD.getBytes(StandardCharsets.UTF_8));
        Terminal terminal = new Terminal(in, nowhere, nowhere, true, Path.of(System.getProperty("java.io.tmpdir")));
        new Lowfirst(terminal).run(args);
    }
}
