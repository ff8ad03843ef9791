package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.Opening;
import org.lowfirst.gas.Oxygen;

/** Requests as they come over the wire, written out by hand so that no client library tidies them up. */
final class RequestsTest {

    @TempDir
    static Path directory;

    private static Site site;

    @BeforeAll
    static void start() {
        site = Site.over(directory);
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    @Test
    void aRequestByALoopbackNameIsAnswered() throws IOException {
        assertThat(get("/", "127.0.0.1:" + port())).startsWith("HTTP/1.1 200").contains("Nothing here yet");
        assertThat(get("/", "localhost:" + port())).startsWith("HTTP/1.1 200");
    }

    @ParameterizedTest
    @ValueSource(strings = {"bench.example", "bench.example:80", "192.168.4.20", "127.0.0.1.bench.example"})
    void aRequestByAnotherNameIsRefusedInPlainWords(String host) throws IOException {
        assertThat(get("/", host))
                .startsWith("HTTP/1.1 403")
                .contains("This address does not name this machine.")
                .contains("Open the address that was printed");
    }

    @Test
    void aRequestFromAPageOfAnotherSiteIsRefused() throws IOException {
        String foreign = "Origin: http://bench.example\r\n";
        assertThat(send("GET / HTTP/1.1\r\nHost: localhost:" + port() + "\r\n" + foreign + "Connection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 403")
                .contains("The request came from a page of another site.");
        assertThat(post("/demo", "Referer: http://bench.example/page\r\n", "")).startsWith("HTTP/1.1 403");
        assertThat(post("/demo", "Origin: http://localhost:1\r\n", "")).startsWith("HTTP/1.1 403");
    }

    @Test
    void aFormWithoutItsTokenChangesNothing() throws IOException {
        assertThat(post("/demo", "", "")).startsWith("HTTP/1.1 403").contains("Nothing was saved");
        assertThat(get("/health", "localhost:" + port())).contains("\"benches\":0");
    }

    @Test
    void everyAnswerTellsTheBrowserWhatItMayDo() throws IOException {
        for (String path : new String[] {"/", "/nowhere"}) {
            assertThat(get(path, "localhost:" + port()))
                    .contains("Content-Security-Policy: default-src 'self';")
                    .contains("frame-ancestors 'none'")
                    .contains("X-Content-Type-Options: nosniff")
                    .contains("Referrer-Policy: same-origin")
                    .contains("Cache-Control: no-store")
                    .doesNotContain("unsafe-inline")
                    .doesNotContain("JSESSIONID");
        }
    }

    @Test
    void anUnknownAddressAnswersWithAPageThatSaysSo() throws IOException {
        assertThat(get("/at/nobody/bank", "localhost:" + port()))
                .startsWith("HTTP/1.1 404")
                .contains("Nothing is kept at this address.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/a b", "/;a", "/at/..%2f..%2fetc"})
    void aRequestThatIsNoneIsAnsweredInPlainWordsWithoutNamingTheServer(String path) throws IOException {
        assertThat(get(path, "localhost:" + port()))
                .startsWith("HTTP/1.1 400")
                .contains("<h1>Not understood</h1>")
                .doesNotContainIgnoringCase("tomcat");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.0.0.0", "192.168.4.20", "no such address"})
    void onlyALoopbackAddressIsBound(String bind) {
        assertThat(served(bind, 0))
                .isInstanceOfSatisfying(
                        Serving.Refused.class,
                        refused -> assertThat(refused.why()).contains(bind));
    }

    @Test
    void aPortThatIsTakenIsRefusedInPlainWords() {
        assertThat(served("127.0.0.1", port()))
                .isInstanceOfSatisfying(
                        Serving.Refused.class,
                        refused -> assertThat(refused.why()).startsWith("Port " + port() + " on 127.0.0.1 is taken"));
    }

    private static Serving served(String bind, int port) {
        if (!(Journal.open(directory.resolve("second.db")) instanceof Opening.Opened opened)) {
            throw new AssertionError("no journal");
        }
        try (Benches benches =
                new Benches(opened.journal(), Clock.systemUTC(), Oxygen.schmidtWagner(), Locale.ENGLISH)) {
            return WebApplication.start(new ServeRequest(bind, port, benches, Clock.systemUTC(), () -> "k"));
        }
    }

    private static String get(String path, String host) throws IOException {
        return send("GET " + path + " HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n");
    }

    private static String post(String path, String headers, String body) throws IOException {
        return send("POST " + path + " HTTP/1.1\r\nHost: localhost:" + port() + "\r\n" + headers
                + "Content-Type: application/x-www-form-urlencoded\r\nContent-Length: " + body.length()
                + "\r\nConnection: close\r\n\r\n" + body);
    }

    private static String send(String request) throws IOException {
        URI root = site.root();
        try (Socket socket = new Socket(root.getHost(), root.getPort())) {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static int port() {
        return site.root().getPort();
    }
}
