// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Asks the real server, as a browser without script would. */
class PagesTest {
    private static Served server;
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    @BeforeAll
    static void start() {
        server = Preview.start();
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    private static HttpRequest.Builder at(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path));
    }

    private static HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return CLIENT.send(at(path).build(), BodyHandlers.ofString());
    }

    /** A page of the week once that stands: on a busy machine it says for a while that it is being worked out. */
    private static HttpResponse<String> planned(String path) throws IOException, InterruptedException {
        HttpResponse<String> page = get(path);
        while (page.body().contains("being worked out")) {
            Thread.sleep(50);
            page = get(path);
        }
        return page;
    }

    private static HttpResponse<String> post(String path, String form, String header, String value)
            throws IOException, InterruptedException {
        HttpRequest request = at(path).header("Content-Type", "application/x-www-form-urlencoded")
                .header(header, value)
                .POST(HttpRequest.BodyPublishers.ofString(form))
                .build();
        return CLIENT.send(request, BodyHandlers.ofString());
    }

    @Test
    void the_morning_page_opens_with_what_to_do_and_why() throws Exception {
        HttpResponse<String> page = get("/");
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body())
                .containsPattern(
                        "<h1[^>]*><span class=\"line\"><span class=\"now\">Today</span> put nitrogen at the row base on"
                                + " two fields\\.</span> <span class=\"line\">Mill Eighty first: likely short on \\w+, \\w+ \\d+ \\([^)]+\\)\\.</span></h1>");
    }

    @Test
    void the_calendar_says_which_field_comes_first() throws Exception {
        HttpResponse<String> weeks = get("/calendar");
        assertThat(weeks.statusCode()).isEqualTo(200);
        assertThat(weeks.body()).contains("Mill Eighty first, today", "1.</span> <a href=\"/field/mill-eighty\"");
        assertThat(get("/calendar?span=season&units=metric").body()).contains("kg N");
    }

    @Test
    void the_week_can_be_planned_otherwise_by_forms_alone_and_says_what_that_costs() throws Exception {
        String week = planned("/plan").body();
        assertThat(week).contains("out at 6:", "Done this week in", "What does that cost?");
        assertThat(week).doesNotContain("Planned anew for");
        String rain = planned("/plan?rain=2026-07-01").body();
        assertThat(rain).contains("Planned anew for", "Rain on Wed, July 1", "take it back", "dearer.");
        String pinned = planned("/plan?pass=Mill+Eighty%2C+nitrogen&rig=highboy&day=2026-07-02&done=Sand+Ridge")
                .body();
        assertThat(pinned)
                .contains("Mill Eighty, nitrogen put on highboy, Thu, July 2", "Sand Ridge done")
                .contains("value=\"Mill Eighty, nitrogen=highboy@2026-07-02\"");
        HttpResponse<String> wrong = planned("/plan?down=plough%402026-07-01");
        assertThat(wrong.statusCode()).isEqualTo(400);
        assertThat(wrong.body()).contains("plough", "highboy");
    }

    @Test
    void a_day_sheet_tells_the_driver_every_load_in_order_and_a_rig_at_home_has_none() throws Exception {
        String week = planned("/plan").body();
        java.util.regex.Matcher link =
                java.util.regex.Pattern.compile("href=\"(/plan/sheet[^\"]+)\"").matcher(week);
        assertThat(link.find()).isTrue();
        String sheet = planned(link.group(1).replace("&amp;", "&")).body();
        assertThat(sheet).contains("out at 6:", "home about", "Before leaving", "The label is the law");
        assertThat(sheet).containsPattern("(?s)(Load 1 of \\d+: f|F)ill [\\d,]+ gal, 15 min;.*Home\\.");
        assertThat(planned("/plan/sheet?of=highboy&on=2026-09-30").statusCode()).isEqualTo(404);
    }

    @Test
    void the_week_goes_to_a_calendar_as_dates() throws Exception {
        HttpResponse<String> feed = planned("/plan.ics");
        assertThat(feed.headers().firstValue("Content-Type").orElse("")).startsWith("text/calendar");
        assertThat(feed.body()).startsWith("BEGIN:VCALENDAR\r\n").contains("SUMMARY:Mill Eighty: nitrogen\\, highboy");
    }

    @Test
    void a_page_keeps_to_itself() throws Exception {
        HttpResponse<String> page = get("/");
        assertThat(page.headers().firstValue("Content-Security-Policy").orElse(""))
                .startsWith("default-src 'self';");
        assertThat(page.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
        assertThat(page.headers().firstValue("X-Frame-Options")).contains("DENY");
        assertThat(page.body())
                .doesNotContain("style=")
                .doesNotContain("<script>")
                .doesNotContain("http://1");
    }

    @Test
    void a_form_from_another_site_is_turned_away() throws Exception {
        assertThat(post("/look", "light=night", "Origin", "http://elsewhere.example")
                        .statusCode())
                .isEqualTo(403);
        assertThat(post("/look", "light=night", "Sec-Fetch-Site", "cross-site").statusCode())
                .isEqualTo(403);
        assertThat(post("/look", "light=night", "X-Nothing", "said").statusCode())
                .isEqualTo(403);
    }

    @Test
    void the_choice_of_light_and_units_is_kept_in_a_cookie_and_leads_back() throws Exception {
        String own = "http://127.0.0.1:" + server.port();
        HttpResponse<String> answer = post("/look", "light=night&back=/field", "Origin", own);
        assertThat(answer.statusCode()).isEqualTo(302);
        assertThat(answer.headers().firstValue("Location")).contains("/field");
        assertThat(answer.headers().firstValue("Set-Cookie").orElse("")).startsWith("light=night;");
        HttpResponse<String> away = post("/look", "units=metric&back=//elsewhere.example", "Origin", own);
        assertThat(away.headers().firstValue("Location")).contains("/");
    }

    @Test
    void metric_units_reach_every_figure() throws Exception {
        assertThat(get("/?units=metric").body())
                .contains("kg N/ha", "L/ha", "$/ha")
                .doesNotContain("lb N/ac</span>");
    }

    @Test
    void an_unknown_page_says_so() throws Exception {
        HttpResponse<String> page = get("/nowhere");
        assertThat(page.statusCode()).isEqualTo(404);
        assertThat(page.body()).contains("There is no such page.");
    }

    @Test
    void an_unknown_field_answers_with_the_fields_there_are() throws Exception {
        HttpResponse<String> page = get("/field/nowhere");
        assertThat(page.statusCode()).isEqualTo(404);
        assertThat(page.body()).contains("There is no field &quot;nowhere&quot;", "Mill Eighty", "Long Quarter, west");
    }

    @Test
    void a_reading_is_kept_and_answered() throws Exception {
        String own = "http://127.0.0.1:" + server.port();
        HttpResponse<String> kept = post("/walk", "place=creek-bottom&kind=nitrate&unit=ppm&value=11", "Origin", own);
        assertThat(kept.statusCode()).isEqualTo(302);
        String page = get(kept.headers().firstValue("Location").orElseThrow()).body();
        assertThat(page).contains("<b>Soil nitrate 11 ppm</b> is kept for Creek Bottom.", "The model had expected");
    }

    @Test
    void plants_with_lesions_are_counted_on_the_walk_page() throws Exception {
        String own = "http://127.0.0.1:" + server.port();
        assertThat(get("/walk?place=creek-bottom&kind=lesions").body())
                .contains("Plants that show it", "third below", "gray leaf spot");
        String sent = "place=creek-bottom&kind=lesions&unit=per+plant&value=&found=gray+leaf+spot&leaf=-3&positive=";
        HttpResponse<String> kept = post("/walk", sent + "58&plants=100", "Origin", own);
        assertThat(kept.statusCode()).isEqualTo(302);
        String location = kept.headers().firstValue("Location").orElseThrow();
        assertThat(get(location.substring(location.indexOf("/walk"))).body()).contains("58 of 100 plants");
        HttpResponse<String> refused = post("/walk", sent + "158&plants=100", "Origin", own);
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body())
                .contains("data-code=\"count.more-than-looked-at\"")
                .contains("value=\"158\"");
    }

    @Test
    void an_impossible_reading_is_refused_with_its_limit_and_stays_in_the_box() throws Exception {
        String own = "http://127.0.0.1:" + server.port();
        HttpResponse<String> page = post("/walk", "place=creek-bottom&kind=height&unit=in&value=900", "Origin", own);
        assertThat(page.statusCode()).isEqualTo(400);
        assertThat(page.body())
                .contains("data-code=\"reading.impossible\"", "900 in", "expected 0 to 197 in for height")
                .contains("value=\"900\"", "aria-invalid=\"true\"");
    }

    @Test
    void a_stepper_works_without_script() throws Exception {
        String own = "http://127.0.0.1:" + server.port();
        assertThat(post("/walk", "place=creek-bottom&kind=nitrate&unit=ppm&value=11&step=-1", "Origin", own)
                        .body())
                .contains("value=\"10\"");
        assertThat(post("/walk", "place=creek-bottom&kind=stage&value=V9&step=1", "Origin", own)
                        .body())
                .contains("value=\"V10\"");
    }

    @Test
    void a_pass_made_is_filed_and_stands_in_the_book() throws Exception {
        String own = "http://127.0.0.1:" + server.port();
        HttpResponse<String> nameless =
                post("/loads/mill-eighty", "person=&date=2026-06-30&rate=50+lb+N/ac", "Origin", own);
        assertThat(nameless.statusCode()).isEqualTo(400);
        assertThat(nameless.body()).contains("expected the name of who made the pass");
        HttpResponse<String> filed = post(
                "/loads/mill-eighty",
                "person=Ana+Demo&date=2026-06-30&rate=50+lb+N/ac&area=70+ac&wind=6+mph+from+SW",
                "Origin",
                own);
        assertThat(filed.statusCode()).isEqualTo(302);
        String record =
                get(filed.headers().firstValue("Location").orElseThrow()).body();
        assertThat(record).contains("Ana Demo", "70 ac", "50 lb N/ac", "6 mph from SW");
        assertThat(get("/records").body()).contains("None has been changed since it was filed.", "the chain holds");
    }

    private static HttpResponse<String> walkWith(byte[] photograph) throws IOException, InterruptedException {
        String edge = "----earleaf-test";
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        String[][] fields = {{"place", "sand-ridge"}, {"kind", "height"}, {"unit", "in"}, {"value", "51"}};
        for (String[] f : fields) {
            String part =
                    "--" + edge + "\r\nContent-Disposition: form-data; name=\"" + f[0] + "\"\r\n\r\n" + f[1] + "\r\n";
            body.write(part.getBytes(StandardCharsets.UTF_8));
        }
        body.write(("--" + edge + "\r\nContent-Disposition: form-data; name=\"photograph\"; filename=\"a.jpg\"\r\n"
                        + "Content-Type: image/jpeg\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8));
        body.write(photograph);
        body.write(("\r\n--" + edge + "--\r\n").getBytes(StandardCharsets.UTF_8));
        HttpRequest request = at("/walk")
                .header("Content-Type", "multipart/form-data; boundary=" + edge)
                .header("Origin", "http://127.0.0.1:" + server.port())
                .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
                .build();
        return CLIENT.send(request, BodyHandlers.ofString());
    }

    @Test
    void a_photograph_goes_with_its_reading_and_stands_on_the_fields_page() throws Exception {
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB), "jpg", jpeg);
        assertThat(walkWith(jpeg.toByteArray()).statusCode()).isEqualTo(302);
        String page = get("/field/sand-ridge").body();
        Matcher image = Pattern.compile("src=\"(/photographs/[^\"]+/small)\" alt=\"([^\"]+)\"|"
                        + "alt=\"([^\"]+)\"[^>]*src=\"(/photographs/[^\"]+/small)\"")
                .matcher(page);
        Matcher whole = Pattern.compile("href=\"(/photographs/[^\"]+)\"").matcher(page);
        assertThat(whole.find()).isTrue();
        HttpResponse<String> picture = get(whole.group(1));
        assertThat(picture.statusCode()).isEqualTo(200);
        assertThat(picture.headers().firstValue("Content-Type")).contains("image/jpeg");
        assertThat(picture.headers().firstValue("Cache-Control")).contains("no-store");
        assertThat(get(whole.group(1) + "/small").statusCode()).isEqualTo(200);
        assertThat(image.find()).isTrue();
        assertThat(page).contains("with Height 51 in");
        assertThat(get("/photographs/none").statusCode()).isEqualTo(404);
    }

    @Test
    void a_file_that_is_no_photograph_is_refused_and_the_reading_is_not_kept_without_it() throws Exception {
        int before = count(get("/field/sand-ridge").body(), "Height, 51 in");
        HttpResponse<String> wrong = walkWith("notes".getBytes(StandardCharsets.UTF_8));
        assertThat(wrong.statusCode()).isEqualTo(400);
        assertThat(wrong.body())
                .contains(
                        "data-code=\"photograph.no-picture\"",
                        "JPEG or PNG",
                        "value=\"51\"",
                        "Choose the photograph again.");
        HttpResponse<String> large = walkWith(new byte[(9 << 20) + 500_000]);
        assertThat(large.statusCode()).isEqualTo(413);
        assertThat(large.body()).contains("The photograph is too large.", "8 MB");
        assertThat(count(get("/field/sand-ridge").body(), "Height, 51 in")).isEqualTo(before);
    }

    @Test
    void a_reading_that_was_wrong_is_withdrawn_once_and_said_to_be() throws Exception {
        String own = "http://127.0.0.1:" + server.port();
        assertThat(post("/walk", "place=mill-eighty&kind=height&unit=in&value=57", "Origin", own)
                        .statusCode())
                .isEqualTo(302);
        Matcher id = Pattern.compile(
                        "name=\"id\" value=\"([^\"]+)\"><button[^>]*>Withdraw<span class=\"vh\"> Height, 57 in")
                .matcher(get("/field/mill-eighty").body());
        assertThat(id.find()).isTrue();
        HttpResponse<String> gone = post("/walk/withdraw", "id=" + id.group(1), "Origin", own);
        assertThat(gone.statusCode()).isEqualTo(302);
        assertThat(get(gone.headers().firstValue("Location").orElseThrow()).body())
                .contains("Height 57 in</b> is withdrawn");
        assertThat(get("/field/mill-eighty").body()).doesNotContain("Height, 57 in");
        assertThat(post("/walk/withdraw", "id=" + id.group(1), "Origin", own).statusCode())
                .isEqualTo(404);
    }

    private static int count(String page, String words) {
        return page.split(Pattern.quote(words), -1).length - 1;
    }

    @Test
    void a_pass_of_tomorrow_cannot_be_filed_today() throws Exception {
        String own = "http://127.0.0.1:" + server.port();
        HttpResponse<String> page =
                post("/loads/mill-eighty", "person=Ana&date=2026-07-01&rate=50+lb+N/ac", "Origin", own);
        assertThat(page.statusCode()).isEqualTo(400);
        assertThat(page.body()).contains("data-code=\"date.in-future\"", "Enter it once it has happened.");
    }

    @Test
    void a_name_of_the_wide_net_that_leads_here_is_turned_away() throws Exception {
        assertThat(statusUnderName("farm.elsewhere.example")).contains("403");
        assertThat(statusUnderName("localhost")).contains("200");
        assertThat(statusUnderName("shop.local")).contains("200");
    }

    private static String statusUnderName(String host) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
            String ask = "GET /static/mark.svg HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n";
            socket.getOutputStream().write(ask.getBytes(StandardCharsets.US_ASCII));
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
            return answer.substring(0, answer.indexOf('\r'));
        }
    }

    @Test
    void page_and_style_together_are_small_enough_for_the_first_packets() throws Exception {
        int bytes = compressed("/") + compressed("/static/earleaf.css");
        assertThat(bytes).as("bytes of first page and its style, compressed").isLessThan(14_000);
    }

    @Test
    void every_page_is_light() throws Exception {
        for (String path : new String[] {
            "/",
            "/calendar",
            "/calendar?span=season",
            "/field",
            "/field/mill-eighty",
            "/field/mill-eighty/options",
            "/why/worth?place=mill-eighty",
            "/assumptions",
            "/walk",
            "/static/earleaf.css",
            "/static/leaves.css"
        }) {
            int bytes = compressed(path);
            System.out.printf("%6d bytes compressed  %s%n", bytes, path);
            assertThat(bytes).as(path).isLessThan(20_000);
        }
    }

    private static int compressed(String path) throws IOException, InterruptedException {
        HttpRequest request = at(path).header("Accept-Encoding", "gzip").build();
        HttpResponse<byte[]> answer = CLIENT.send(request, BodyHandlers.ofByteArray());
        assertThat(answer.headers().firstValue("Content-Encoding")).contains("gzip");
        return answer.body().length;
    }
}
