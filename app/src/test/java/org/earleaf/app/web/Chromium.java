// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType.LaunchOptions;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

/**
 * A real browser for tests that run side by side: each thread that asks gets one of its own, for its driver serves one
 * thread alone. Where no Chromium is installed tests skip, saying so, unless everything must be tested.
 */
final class Chromium implements AutoCloseable {
    private static final Path FILE = Path.of(System.getenv().getOrDefault("EARLEAF_BROWSER", "/usr/bin/chromium"));
    /** Set by ./check: then nothing is skipped. */
    private static final boolean MUST = System.getenv("EARLEAF_CHECK") != null;

    private static final Path AXE = Path.of("target/axe-4.14.1.min.js");
    private static final String AXE_SHA256 = "29348999450cdf2849a8e70b7912fc2da85a849da39c0d0d5394f51d4a9ed95c";

    /** A busy machine is slow, and slowness is no fault: what hangs is ended by the whole test's own limit. */
    private static final double PATIENCE_MS = 600_000;

    static {
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
    }

    private final List<Playwright> drivers = new ArrayList<>();
    private final ThreadLocal<Browser> browsers = ThreadLocal.withInitial(this::launch);

    /** Skips the class where there is none. */
    Chromium() {
        boolean there = Files.isExecutable(FILE);
        if (!there && MUST) {
            throw new AssertionError("No browser at " + FILE + ": install the package chromium.");
        }
        assumeTrue(there, "skipped: no browser at " + FILE + "; install the package chromium");
    }

    /** What one visitor sees, in this thread's own browser. */
    BrowserContext visit(Browser.NewContextOptions options) {
        BrowserContext context = browsers.get().newContext(options);
        context.setDefaultTimeout(PATIENCE_MS);
        context.setDefaultNavigationTimeout(PATIENCE_MS);
        return context;
    }

    private Browser launch() {
        Playwright driver = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        synchronized (drivers) {
            drivers.add(driver);
        }
        return driver.chromium()
                .launch(new LaunchOptions()
                        .setTimeout(PATIENCE_MS)
                        .setExecutablePath(FILE)
                        .setArgs(List.of(
                                "--no-sandbox",
                                "--disable-gpu",
                                "--disable-quic",
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync")));
    }

    @Override
    public void close() {
        synchronized (drivers) {
            drivers.forEach(Playwright::close);
        }
    }

    /** The rules of accessibility, or nothing: by hand the other checks go on without them, and say so. */
    static String axe() throws IOException {
        if (!Files.exists(AXE)) {
            if (MUST) {
                throw new AssertionError("No " + AXE + ": ./check fetches it with npm.");
            }
            System.out.println("Accessibility is not checked: no " + AXE + "; ./check fetches it.");
            return "";
        }
        byte[] script = Files.readAllBytes(AXE);
        assertThat(sha256(script)).as("SHA-256 of " + AXE).isEqualTo(AXE_SHA256);
        return new String(script, StandardCharsets.UTF_8);
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException everyJdkHasIt) {
            throw new AssertionError(everyJdkHasIt);
        }
    }

    /** Of the whole page, to be looked at. */
    static void picture(Page page, Path file) {
        page.screenshot(new Page.ScreenshotOptions().setFullPage(true).setPath(file));
    }
}
