package org.lowfirst.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What to serve and where. */
final class ServeOptions {

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "Folder of the journal, made when it is missing. Left out: the folder your system keeps for a"
                    + " user's data.")
    private @Nullable Path data;

    @Option(
            names = "--port",
            paramLabel = "N",
            description = "Port to serve on. Left out: " + ServePort.FIRST + ", or the next one that is free.")
    private @Nullable Integer port;

    @Option(
            names = "--bind",
            paramLabel = "ADDR",
            defaultValue = "127.0.0.1",
            description = "Address to serve on; for now only one of this computer itself (${DEFAULT-VALUE}).")
    private String bind = "127.0.0.1";

    Path data() {
        return data == null ? DataDirectory.ofThisUser() : data;
    }

    int port() {
        return port == null ? ServePort.freeFrom(ServePort.FIRST, bind) : port;
    }

    String bind() {
        return bind;
    }
}
