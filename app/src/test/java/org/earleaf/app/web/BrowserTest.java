// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Cookie;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Opens every page in a real browser, in three lights, on a desk and on a phone, several pages side by side. Leaves
 * pictures in {@code target/pages} of those on which something is wrong; with {@code -Dearleaf.pictures=true} of all, to
 * be looked at. Skips, saying so, where no Chromium is installed.
 */
@Execution(ExecutionMode.CONCURRENT)
class BrowserTest {
    private static final Path PICTURES = Path.of("target/pages");
    /** All pages are pictured when they are to be looked at; otherwise those on which something is wrong. */
    private static final boolean ALL_PICTURES = Boolean.getBoolean("earleaf.pictures");

    private static final String ALL_RULES = "";
    private static final String COLOURS = ", runOnly: ['color-contrast']";
    private static final List<String> LIGHTS = List.of("paper", "night", "sunlight");
    private static final int DESK = 1280;
    private static final int PHONE = 390;
    private static final int NARROWEST = 320;

    private static Chromium chromium;
    private static Served server;
    private static String home;
    private static String axe = "";

    @BeforeAll
    static void start() throws IOException {
        chromium = new Chromium();
        axe = Chromium.axe();
        new Fixture().week(1);
        Preview preview = new Preview();
        SeededLoads.in(preview);
        server = preview.serve();
        home = "http://127.0.0.1:" + server.port();
    }

    @AfterAll
    static void stop() {
        if (chromium != null) {
            chromium.close();
        }
        if (server != null) {
            server.close();
        }
    }

    /** A page that notes everything it should not have done. */
    private record Watched(BrowserContext context, Page page, List<String> faults) implements AutoCloseable {
        static Watched open(String light, int width, boolean script) {
            BrowserContext context = chromium.visit(
                    new Browser.NewContextOptions().setViewportSize(width, 900).setJavaScriptEnabled(script));
            Watched watched = new Watched(context, context.newPage(), new ArrayList<>());
            watched.light(light);
            watched.watch();
            return watched;
        }

        void light(String light) {
            context.addCookies(List.of(new Cookie(Frame.LIGHT, light).setUrl(home)));
        }

        private void watch() {
            page.onConsoleMessage(m -> {
                if (m.type().equals("error") || m.type().equals("warning")) {
                    faults.add(m.text());
                }
            });
            page.onPageError(faults::add);
            page.onRequest(r -> {
                if (!r.url().startsWith(home) && !r.url().startsWith("data:")) {
                    faults.add("asked elsewhere: " + r.url());
                }
            });
        }

        @Override
        public void close() {
            context.close();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/calendar",
                "/calendar?span=season",
                "/plan",
                "/plan?rain=2026-07-01&down=highboy%402026-07-05",
                "/plan/sheet?of=highboy&on=2026-07-04",
                "/field",
                "/field/mill-eighty",
                "/field/long-quarter-east/options",
                "/why/worth?place=mill-eighty",
                "/why/short?place=creek-bottom",
                "/why/soil",
                "/assumptions",
                "/walk",
                "/walk?place=mill-eighty&kind=height",
                "/rigs",
                "/loads",
                "/loads/mill-eighty",
                "/loads/new",
                "/loads/new?recipe=Leaf+pass&place=mill-eighty&rig=tall+sprayer",
                "/load/1",
                "/load/2",
                "/load/3",
                "/load/4",
                "/load/5",
                "/load/6",
                "/load/1/edit",
                "/records",
                "/records/1",
                "/records/1/posting",
                "/records/1/correct",
                "/shelf",
                "/rigs/catch",
                "/rigs/catch?rig=highboy",
                "/field/nowhere"
            })
    void every_page_is_clean_in_every_light_and_width(String path) throws IOException {
        Files.createDirectories(PICTURES);
        List<String> faults = new ArrayList<>();
        try (Watched w = Watched.open(LIGHTS.get(0), DESK, true)) {
            for (String light : LIGHTS) {
                w.light(light);
                // Lights change colours and nothing else: all widths in one, colours in all.
                boolean paper = light.equals(LIGHTS.get(0));
                w.page().setViewportSize(paper ? DESK : PHONE, 900);
                w.page().navigate(home + path);
                learnRules(w.page());
                for (int width : paper ? new int[] {DESK, PHONE, NARROWEST} : new int[] {PHONE}) {
                    w.page().setViewportSize(width, 900);
                    int before = faults.size();
                    check(w.page(), path + " " + light + " " + width + ": ", paper ? ALL_RULES : COLOURS, faults);
                    if (ALL_PICTURES || faults.size() > before) {
                        Chromium.picture(w.page(), PICTURES.resolve(name(path, light, width)));
                    }
                }
            }
            // A page that is not there is reported by the browser itself.
            w.faults().stream()
                    .filter(f -> !(path.equals("/field/nowhere") && f.contains("404")))
                    .forEach(f -> faults.add(path + ": " + f));
        }
        assertThat(faults).isEmpty();
    }

    private static String name(String path, String light, int width) {
        String page = path.equals("/") ? "morning" : path.substring(1).replaceAll("[^a-z0-9]+", "-");
        return page + "-" + light + "-" + width + ".png";
    }

    /** Once for a page that was gone to: it stays while the page is looked at. */
    private static void learnRules(Page page) {
        if (!axe.isEmpty()) {
            page.evaluate(axe);
        }
    }

    private static void check(Page page, String where, String rules, List<String> faults) throws IOException {
        if (page.locator("h1").count() != 1) {
            faults.add(where + "not one h1");
        }
        Object over = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        if (((Number) over).intValue() > 0) {
            faults.add(where + "scrolls sideways by " + over);
        }
        if (!axe.isEmpty()) {
            Object found = page.evaluate(
                    "axe.run(document, {resultTypes: ['violations']" + rules + "}).then(r => r.violations.flatMap(v =>"
                            + " v.nodes.map(n => v.id + ' ' + n.target + ' ' + n.failureSummary)))");
            ((List<?>) found).forEach(f -> faults.add(where + f));
        }
    }

    @Test
    void the_day_slider_changes_drawing_words_and_table_together() {
        try (Watched w = Watched.open("paper", DESK, true)) {
            Page page = w.page();
            page.navigate(home + "/field/mill-eighty");
            String before = page.locator("#soil-cut").innerHTML();
            page.locator("input[type=range]").focus();
            for (int k = 0; k < 6; k++) {
                page.keyboard().press("ArrowRight");
            }
            assertThat(page.locator("#soil-day")).hasText("Monday, July 6");
            assertThat(page.locator("#soil-cut").innerHTML()).isNotEqualTo(before);
            assertThat(page.locator("#cut-says").textContent()).contains("This is likely, not certain.");
            page.locator("[data-step='-1']").click();
            assertThat(page.locator("#soil-day")).hasText("Sunday, July 5");
            page.locator("[data-with=true]").click();
            assertThat(page.locator("[data-with=true]")).hasAttribute("aria-current", "true");
            assertThat(w.faults()).isEmpty();
        }
    }

    @Test
    void without_script_the_day_before_is_a_link_and_the_slider_a_form() {
        try (Watched w = Watched.open("paper", PHONE, false)) {
            Page page = w.page();
            page.navigate(home + "/field/mill-eighty");
            page.locator("a[data-step='-1']").click();
            assertThat(page.locator("#soil-day").textContent()).isEqualTo("Monday, June 29");
            page.navigate(home + "/field/mill-eighty?index=0");
            assertThat(page.locator("#soil-day").textContent()).isEqualTo("Sunday, March 1");
            assertThat(page.locator("noscript button").count()
                            + page.locator("form.days button").count())
                    .isPositive();
        }
    }

    @Test
    void without_script_a_photograph_goes_with_a_reading(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("corn.jpg");
        ImageIO.write(new BufferedImage(600, 400, BufferedImage.TYPE_INT_RGB), "jpg", file.toFile());
        try (Watched w = Watched.open("sunlight", PHONE, false)) {
            Page page = w.page();
            page.navigate(home + "/walk?place=creek-bottom&kind=height");
            page.locator("#value").fill("47");
            page.locator("#photograph").setInputFiles(file);
            page.locator(".finish button").click();
            assertThat(page.locator("[role=status]").textContent()).contains("Height 47 in is kept");
            page.navigate(home + "/field/creek-bottom");
            assertThat(page.locator(".readings img")).hasAttribute("alt", Pattern.compile(".*Height 47 in"));
        }
        // The rules of accessibility are a script themselves.
        try (Watched w = Watched.open("sunlight", PHONE, true)) {
            Page page = w.page();
            page.navigate(home + "/field/creek-bottom");
            page.locator(".readings img").scrollIntoViewIfNeeded();
            page.waitForCondition(
                    () -> (boolean) page.evaluate("document.querySelector('.readings img').naturalWidth > 0"));
            List<String> faults = new ArrayList<>(w.faults());
            learnRules(page);
            check(page, "field with a photograph: ", ALL_RULES, faults);
            assertThat(faults).isEmpty();
        }
    }

    @Test
    void without_script_a_reading_is_stepped_and_kept() {
        try (Watched w = Watched.open("sunlight", PHONE, false)) {
            Page page = w.page();
            page.navigate(home + "/walk?place=sand-ridge&kind=height");
            page.locator("#value").fill("52");
            page.locator("button[name=step][value='1']").click();
            assertThat(page.locator("#value").inputValue()).isEqualTo("53");
            page.locator(".finish button").click();
            assertThat(page.locator("[role=status]").textContent()).contains("Height 53 in is kept for Sand Ridge.");
        }
    }
}
