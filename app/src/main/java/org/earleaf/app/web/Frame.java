// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.zip.CRC32;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.words.Words;
import org.jspecify.annotations.Nullable;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** What stands on every page: masthead, pages, light and units, all known from the request alone. */
@ControllerAdvice
class Frame {
    static final String LIGHT = "light";
    static final String UNITS = "units";
    static final List<String> LIGHTS = List.of("paper", "night", "sunlight");
    static final List<Link> PAGES = List.of(
            new Link("Morning", "page.nav.morning", "/"),
            new Link("Calendar", "page.nav.calendar", "/calendar"),
            new Link("Field", "page.nav.field", "/field"),
            new Link("Walk", "page.nav.walk", "/walk"),
            new Link("Rigs", "page.nav.rigs", "/rigs"),
            new Link("Loads", "page.nav.loads", "/loads"),
            new Link("Shelf", "page.nav.shelf", "/shelf"),
            new Link("Records", "page.nav.records", "/records"),
            new Link("Assumptions", "page.nav.assumptions", "/assumptions"));
    private static final List<String> FILES = List.of(
            "/static/earleaf.css",
            "/static/brief.css",
            "/static/leaves.css",
            "/static/tanks.css",
            "/static/earleaf.js");

    /** Fingerprint of the files, in their addresses: a new one is fetched, an old one kept for ever. */
    static final String VERSION = fingerprint();

    private final Desk desk;

    Frame(Desk desk) {
        this.desk = desk;
    }

    /** A page in the line of pages. */
    public record Link(String name, String key, String path) {}

    /**
     * @param light chosen light, null for the system's own
     * @param here address to come back to
     * @param version fingerprint in the addresses of files
     */
    public record Facts(
            String farm,
            String state,
            @Nullable String light,
            boolean metric,
            String here,
            String version,
            List<Link> pages) {}

    @ModelAttribute
    void fill(HttpServletRequest request, Model model) {
        Format format = format(request);
        String query = request.getQueryString();
        String here = "GET".equals(request.getMethod())
                ? request.getRequestURI() + (query == null ? "" : "?" + query)
                : request.getRequestURI();
        String farm = desk.today().farm().name();
        Words.begin(format.isMetric());
        model.addAttribute("format", format);
        model.addAttribute("w", Words.here());
        model.addAttribute(
                "frame",
                new Facts(farm, desk.notebook().state(), light(request), format.isMetric(), here, VERSION, PAGES));
    }

    /** Units that a page is shown in. It reads the address and the form: not to be asked before an upload is let in. */
    static Format format(HttpServletRequest request) {
        return Format.of(Objects.requireNonNullElse(
                request.getParameter(UNITS), cookie(request, UNITS).orElse("us")));
    }

    /** What the reader chose; an address may ask for other units once. */
    static boolean isMetric(HttpServletRequest request) {
        return cookie(request, UNITS).filter("metric"::equals).isPresent();
    }

    static @Nullable String light(HttpServletRequest request) {
        return cookie(request, LIGHT).filter(LIGHTS::contains).orElse(null);
    }

    private static Optional<String> cookie(HttpServletRequest request, String name) {
        Cookie[] cookies = request.getCookies();
        return cookies == null
                ? Optional.empty()
                : Arrays.stream(cookies)
                        .filter(c -> c.getName().equals(name))
                        .map(Cookie::getValue)
                        .findFirst();
    }

    private static String fingerprint() {
        CRC32 crc = new CRC32();
        for (String file : FILES) {
            try (InputStream in = Objects.requireNonNull(Frame.class.getResourceAsStream(file), file)) {
                crc.update(in.readAllBytes());
            } catch (IOException e) {
                throw new UncheckedIOException(file, e);
            }
        }
        return Long.toHexString(crc.getValue());
    }
}
