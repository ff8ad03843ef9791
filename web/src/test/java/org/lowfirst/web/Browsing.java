package org.lowfirst.web;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One Chromium for all browser tests of a run; each test takes a context of its own. */
final class Browsing {

    private static final List<String> PLACES =
            List.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome");

    private static final List<String> ARGUMENTS = List.of(
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    private static @Nullable Browser browser;

    private Browsing() {}

    /** A fresh context, as a browser that was never here. */
    static BrowserContext context(int width, int height, boolean scripts) {
        BrowserContext context = browser()
                .newContext(new Browser.NewContextOptions()
                        .setViewportSize(width, height)
                        .setJavaScriptEnabled(scripts));
        context.setDefaultTimeout(20_000);
        return context;
    }

    private static synchronized Browser browser() {
        if (browser == null) {
            Playwright playwright = Playwright.create(
                    new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
            Runtime.getRuntime().addShutdownHook(new Thread(playwright::close));
            browser = playwright
                    .chromium()
                    .launch(new BrowserType.LaunchOptions()
                            .setExecutablePath(chromium())
                            .setArgs(ARGUMENTS));
        }
        return browser;
    }

    private static Path chromium() {
        return Optional.ofNullable(System.getenv("LOWFIRST_CHROMIUM"))
                .map(Path::of)
                .or(() -> PLACES.stream()
                        .map(Path::of)
                        .filter(Files::isExecutable)
                        .findFirst())
                .orElseThrow(() -> new IllegalStateException(
                        "The browser tests need a Chromium.\nMaybe install one, or name it in LOWFIRST_CHROMIUM."));
    }
}
