package org.lowfirst.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** Serving from a data directory: the journal is made, the first page comes, and what cannot be served is said. */
final class ServedPagesTest {

    @TempDir
    Path folder;

    @Test
    void theFirstPageComesFromAJournalMadeJustNow() throws IOException, InterruptedException {
        Path data = folder.resolve("new").resolve("deeper");
        try (ServedPages pages = started("--data", data.toString(), "--port", "0")) {
            assertThat(pages.url().getHost()).isEqualTo("127.0.0.1");
            HttpResponse<String> page = get(pages.url());
            assertThat(page.statusCode()).isEqualTo(200);
            assertThat(page.body()).contains("<html").contains("Lowfirst");
            assertThat(data.resolve("lowfirst.db")).exists();
        }
        CommandRun verified = CommandRun.of("journal", "verify", "--data", data.toString());
        assertThat(verified.exit()).isEqualTo(0);
    }

    @Test
    void aTakenPortThatWasAskedForIsRefused() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, java.net.InetAddress.getLoopbackAddress())) {
            String port = Integer.toString(taken.getLocalPort());
            CommandRun run = CommandRun.of("--data", folder.toString(), "--port", port);
            assertThat(run.exit()).isEqualTo(1);
            assertThat(run.err()).startsWith("lowfirst: Port " + port).contains("taken by another program");
        }
    }

    @Test
    void anAddressOfTheNetworkIsRefused() {
        CommandRun run = CommandRun.of("serve", "--data", folder.toString(), "--port", "0", "--bind", "0.0.0.0");
        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.err()).contains("(0.0.0.0) must be a loopback address");
    }

    @Test
    void aFileThatIsNoJournalIsRefused() throws IOException {
        Files.writeString(folder.resolve("lowfirst.db"), "not a database, just a longer line of text\n");
        CommandRun run = CommandRun.of("--data", folder.toString(), "--port", "0");
        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.err()).contains("is not a Lowfirst database");
        assertThat(folder.resolve("lowfirst.db")).hasContent("not a database, just a longer line of text\n");
    }

    private static ServedPages started(String... typed) {
        ServeOptions options = CommandLine.populateCommand(new ServeOptions(), typed);
        if (ServedPages.start(options) instanceof ServedPages.Start.Up up) {
            return up.pages();
        }
        throw new AssertionError("the pages are not served");
    }

    private static HttpResponse<String> get(URI url) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(url).build(), HttpResponse.BodyHandlers.ofString());
    }
}
