package org.lowfirst.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import picocli.CommandLine;

/**
 * Runs the commands as people do, once, while the Java machine notes which classes they load; the launcher makes a class-data
 * archive of them, so that the next start finds them ready.
 */
public final class Rehearsal {

    private static final String BAD = "temprature: 70 F\nsupplies:\n  - {name: A, reading: 600}\nbottles: {}\n";

    private Rehearsal() {}

    /** @param args what to rehearse, plan or serve, and the folder of the example files */
    public static void main(String[] args) throws IOException {
        Locale.setDefault(Locale.ENGLISH);
        if (args[0].equals("serve")) {
            serve();
        } else {
            plan(Path.of(args[1]));
        }
    }

    private static void plan(Path examples) {
        for (String file : List.of("plan-us.yaml", "plan-eu.yaml", "cannot-reach.yaml")) {
            String path = examples.resolve(file).toString();
            run("plan", path);
            run("plan", path, "--json");
        }
        run("plan", "-");
        run("gas", "--reading", "2015 psi", "--at", "70 F", "--volume", "2.9 L", "--rated", "2015 psi");
        run("flight", examples.resolve("flight-wave.yaml").toString());
        run("--version");
        run("plan");
    }

    /** Serves a demo bench from a folder of its own and fetches its first page. */
    private static void serve() throws IOException {
        Path folder = Files.createTempDirectory("lowfirst-rehearsal");
        ServeOptions options =
                CommandLine.populateCommand(new ServeOptions(), "--data", folder.toString(), "--port", "0");
        if (ServedPages.start(options) instanceof ServedPages.Start.Up up) {
            try (ServedPages pages = up.pages();
                    InputStream first = pages.url().toURL().openStream()) {
                first.transferTo(OutputStream.nullOutputStream());
            }
        }
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    private static void run(String... args) {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        ByteArrayInputStream in = new ByteArrayInputStream(BAD.getBytes(StandardCharsets.UTF_8));
        Terminal terminal = new Terminal(in, nowhere, nowhere, true, Path.of(System.getProperty("java.io.tmpdir")));
        new Lowfirst(terminal).run(args);
    }
}
