// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.app.web.view.Figure;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every figure on the pages that advise can be asked why, and every answer has its formula, source and inputs. */
class WhyTest {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final Pattern PIECE = Pattern.compile("<(/?)([a-zA-Z][a-zA-Z0-9]*)([^>]*?)(/?)>|([^<]+)|<[^>]*>");
    private static final Pattern WHY = Pattern.compile("data-why=\"([^\"]*)\"");
    private static final Pattern LINK = Pattern.compile("href=\"(/why/([a-z-]+)[^\"]*)\"");
    private static final Set<String> EMPTY_TAGS = Set.of("meta", "link", "input", "br", "img", "hr");

    private static Served server;

    @BeforeAll
    static void start() {
        server = Preview.start();
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    private static HttpResponse<String> get(String path) throws IOException, InterruptedException {
        URI there = URI.create("http://127.0.0.1:" + server.port() + path.replace("&amp;", "&"));
        return CLIENT.send(HttpRequest.newBuilder(there).build(), BodyHandlers.ofString());
    }

    private static String main(String page) {
        return page.substring(page.indexOf("<main"), page.indexOf("</main>"));
    }

    /** Text with a digit in it, each behind the figure it belongs to; empty for none. */
    private static List<String[]> figures(String html) {
        List<String[]> found = new ArrayList<>();
        Deque<String> open = new ArrayDeque<>();
        Matcher piece = PIECE.matcher(html);
        while (piece.find()) {
            if (piece.group(5) != null) {
                String text = piece.group(5).replaceAll("&[#a-z0-9]+;", " ").strip();
                if (text.matches("(?s).*\\d.*")) {
                    String why =
                            open.stream().filter(w -> !w.isEmpty()).findFirst().orElse("");
                    found.add(new String[] {why, text});
                }
            } else if (piece.group(2) != null && piece.group(1).isEmpty()) {
                Matcher why = WHY.matcher(piece.group(3));
                if (piece.group(4).isEmpty() && !EMPTY_TAGS.contains(piece.group(2))) {
                    open.push(why.find() ? why.group(1) : "");
                }
            } else if (piece.group(2) != null) {
                open.pop();
            }
        }
        assertThat(open).as("every tag is closed").isEmpty();
        return found;
    }

    /** The page's name and day say where and when, and are no figures. */
    private static boolean isPlaceOrDay(String text) {
        return text.matches("(Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)day, \\w+ \\d+(, today)?");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/?units=metric",
                "/field/mill-eighty",
                "/field/creek-bottom",
                "/field/mill-eighty?with=true",
                "/field/mill-eighty/options",
                "/field/long-quarter-east/options?units=metric"
            })
    void every_figure_on_the_pages_that_advise_has_a_why(String path) throws Exception {
        String html = main(get(path).body()) + "</main>";
        Set<String> linked = new LinkedHashSet<>();
        Matcher link = LINK.matcher(html);
        while (link.find()) {
            linked.add(link.group(2));
        }
        List<String[]> figures = figures(html);
        assertThat(figures).hasSizeGreaterThan(20);
        Set<String> without = new TreeSet<>();
        for (String[] each : figures) {
            if (!isPlaceOrDay(each[1]) && !linked.contains(each[0])) {
                without.add(each[0] + ": " + each[1]);
            }
        }
        assertThat(without).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/field/mill-eighty", "/field/mill-eighty/options"})
    void every_why_that_is_linked_answers(String path) throws Exception {
        Matcher link = LINK.matcher(get(path).body());
        Set<String> asked = new LinkedHashSet<>();
        while (link.find()) {
            asked.add(link.group(1));
        }
        assertThat(asked).hasSizeGreaterThan(8);
        for (String each : asked.stream().limit(40).toList()) {
            HttpResponse<String> answer = get(each);
            assertThat(answer.statusCode()).as(each).isEqualTo(200);
            assertThat(answer.body()).as(each).contains("<b>Source:</b>", "How it is worked out");
        }
    }

    @ParameterizedTest
    @EnumSource(Figure.class)
    void every_figure_names_equations_that_are_in_the_list(Figure figure) throws Exception {
        HttpResponse<String> answer = get("/why/" + figure.key() + "?place=mill-eighty");
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).contains("What went in", "What would change the advice", "Held by ");
        assertThat(answer.body()).doesNotContain("<pre tabindex=\"0\" role=\"region\" aria-label=\"\"");
        assertThat(get("/why/" + figure.key()).body()).contains("On which field?");
    }

    @Test
    void a_spray_is_asked_by_its_own_name_and_has_formulas_and_assumptions_of_its_own() throws Exception {
        Matcher link = Pattern.compile("href=\"(/why/spray\\?place=[^\"]*choice=[^\"]*demo-f1[^\"]*)\"")
                .matcher(get("/field/mill-eighty/options").body());
        assertThat(link.find()).isTrue();
        assertThat(get(link.group(1)).body())
                .contains("Demo F1", "Rate as in your recipe", "Protection worth", ">EFFICACY<")
                .doesNotContain("Stemflow", "Nitrogen in Demo F1");
        assertThat(get(link.group(1).replace("/why/spray", "/why/worth")).body())
                .contains("Protection worth", ">EFFICACY<")
                .doesNotContain("Nitrogen options");
    }

    /** The sum on the page, done again from its own words: price less bringing home, times bushels, less cost. */
    @Test
    void the_sum_of_a_worth_adds_up() throws Exception {
        String html = get("/why/worth?place=mill-eighty").body();
        Matcher sum = Pattern.compile("\\(\\$([\\d.]+) less \\$([\\d.]+)\\) a bushel times ([\\d.]+) bu gained, less"
                        + " \\$([\\d.]+) spent, is \\$([\\d.]+) an acre")
                .matcher(html);
        assertThat(sum.find()).isTrue();
        double[] n = new double[6];
        for (int k = 1; k < 6; k++) {
            n[k] = Double.parseDouble(sum.group(k));
        }
        assertThat((n[1] - n[2]) * n[3] - n[4]).isCloseTo(n[5], within(.05 * (n[1] - n[2]) + .02));
    }

    @Test
    void a_figure_that_is_not_there_and_one_of_a_field_that_is_not_there_say_so() throws Exception {
        assertThat(get("/why/luck").statusCode()).isEqualTo(404);
        assertThat(get("/why/worth?place=nowhere").statusCode()).isEqualTo(404);
    }

    @Test
    void everything_that_is_assumed_is_listed_with_its_range_and_source() throws Exception {
        String page = get("/assumptions").body();
        for (org.earleaf.season.parameter.Parameter p : org.earleaf.season.parameter.Parameter.values()) {
            assertThat(page).contains(">" + p.name() + "<");
        }
        for (var a : org.earleaf.pressure.ProtectionAssumption.values()) {
            assertThat(page).contains(">" + a.name() + "<");
        }
        assertThat(page).contains("$4.50 a bushel", "Soil pH of the subsoil was taken as above it.");
    }
}
