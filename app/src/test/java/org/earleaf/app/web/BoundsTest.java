// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.net.SocketTimeoutException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.earleaf.app.desk.StoredNotebook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the real server does with requests that no browser sends. Sockets of this machine alone, few and short. */
class BoundsTest {
    private static final int AT_ONCE = 4;
    private static final int THREADS = 12;
    private static final int PATIENCE_MS = 30_000;
    private static final String HEADERS = "Host: localhost\r\nSec-Fetch-Site: same-origin\r\n";
    private static final String FORM = "Content-Type: application/x-www-form-urlencoded\r\n";
    private static WebServer server;

    @BeforeAll
    static void start() {
        Preview preview = new Preview();
        Map<String, Object> settings = Map.of(
                "server.address", "127.0.0.1",
                "server.port", 0,
                "server.tomcat.threads.max", THREADS,
                "server.tomcat.connection-timeout", "100s",
                "earleaf.arrivals.at-once", AT_ONCE,
                "earleaf.arrivals.grace", "1s",
                "earleaf.arrivals.least-each-second", "1000B");
        server = WebServer.start(preview, new StoredNotebook(preview.store(), true), settings);
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    private static Socket send(String request) throws IOException {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port());
        socket.setSoTimeout(PATIENCE_MS);
        socket.getOutputStream().write(request.getBytes(ISO_8859_1));
        return socket;
    }

    private static String answer(Socket socket) throws IOException {
        try (socket) {
            return new String(socket.getInputStream().readAllBytes(), ISO_8859_1);
        } catch (SocketException reset) {
            return "";
        }
    }

    private static String ask(String request) throws IOException {
        return answer(send(request));
    }

    private static String get(String path) throws IOException {
        return ask("GET " + path + " HTTP/1.1\r\n" + HEADERS + "Connection: close\r\n\r\n");
    }

    private static String post(String path, String form) throws IOException {
        return ask("POST " + path + " HTTP/1.1\r\n" + HEADERS + FORM + "Connection: close\r\nContent-Length: "
                + form.length() + "\r\n\r\n" + form);
    }

    private static String refused(int status, String answer) {
        assertThat(answer).startsWith("HTTP/1.1 " + status + " ");
        assertThat(answer)
                .contains("Content-Security-Policy: default-src 'self';")
                .contains("X-Content-Type-Options: nosniff")
                .contains("X-Frame-Options: DENY")
                .contains("Referrer-Policy: same-origin")
                .contains("Cache-Control: no-store");
        assertThat(answer.length()).as("a short answer").isLessThan(6_000);
        return assertThat(answer)
                .doesNotContain("Tomcat", "HTTP Status", "<style")
                .actual();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "GET /\\ HTTP/1.1\r\nHost: localhost\r\n\r\n",
                "GET /<b> HTTP/1.1\r\nHost: localhost\r\n\r\n",
                "GET /static/..%2f.. HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n",
                "GET /field/%ED%A0%80 HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n",
                "GET / HTTP/1.1\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: [bad.cafe]\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: localhost\r\nHost: other\r\n\r\n",
                "\u0016\u0003\u0001\r\n\r\n"
            })
    void what_is_no_request_is_told_so_in_one_sentence(String request) throws IOException {
        assertThat(refused(400, ask(request))).contains("Open Earleaf by the address it printed");
    }

    @Test
    void a_head_too_long_or_a_method_nobody_uses_is_refused_as_shortly() throws IOException {
        refused(400, ask("GET / HTTP/1.1\r\nHost: localhost\r\nCookie: " + "a".repeat(20_000) + "\r\n\r\n"));
        refused(405, ask("TRACE / HTTP/1.1\r\n" + HEADERS + "Connection: close\r\n\r\n"));
        refused(404, ask("PUT / HTTP/1.1\r\n" + HEADERS + "Connection: close\r\nContent-Length: 0\r\n\r\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/static/", "/static/none.css", "/static/%2e%2e/x", "/nowhere"})
    void a_file_that_is_not_there_is_no_page(String path) throws IOException {
        assertThat(refused(404, get(path))).contains("There is no such page.");
    }

    @Test
    void a_form_of_more_values_than_any_page_has_is_refused() throws IOException {
        String many = IntStream.range(0, 20_000).mapToObj(k -> "a" + k + "=1").collect(Collectors.joining("&"));
        assertThat(refused(400, post("/look", many))).contains("This form cannot be read.");
        assertThat(refused(400, get("/?" + many.substring(0, 7_000)))).contains("This form cannot be read.");
        assertThat(refused(413, post("/look", "light=" + "a".repeat(300_000)))).contains("This form cannot be read.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"%ED%A0%80", "%ff", "%zz", "%"})
    void half_a_character_in_a_note_is_refused(String note) throws IOException {
        String form = "place=creek-bottom&kind=nitrate&unit=ppm&value=11&note=";
        assertThat(refused(400, post("/walk", form + note))).contains("This form cannot be read.");
        assertThat(refused(400, get("/?units=" + note))).contains("This form cannot be read.");
    }

    @Test
    void a_name_in_hex_letters_is_turned_away() throws IOException {
        refused(403, ask("GET / HTTP/1.1\r\nHost: bad.cafe\r\nConnection: close\r\n\r\n"));
        assertThat(ask("GET /static/mark.svg HTTP/1.1\r\nHost: [::1]:80\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 200 ")
                .contains("immutable")
                .doesNotContain("no-store");
    }

    @Test
    void a_body_that_does_not_say_its_length_or_says_too_much_is_not_read() throws IOException {
        String post = "POST /look HTTP/1.1\r\n" + HEADERS + FORM;
        assertThat(refused(411, ask(post + "Transfer-Encoding: chunked\r\n\r\n")))
                .contains("how long");
        assertThat(refused(413, ask(post + "Content-Length: 99999999999\r\n\r\n")))
                .contains("too large");
    }

    @Test
    void pages_and_whole_forms_are_answered_beside_three_hundred_forms_half_sent() throws Exception {
        List<Socket> half = new ArrayList<>();
        try {
            for (int k = 0; k < 300; k++) {
                half.add(send("POST /look HTTP/1.1\r\n" + HEADERS + FORM + "Content-Length: 1000\r\n\r\nlight=night"));
            }
            assertThat(get("/field")).startsWith("HTTP/1.1 200 ");
            assertThat(post("/look", "light=night")).startsWith("HTTP/1.1 302 ");
            List<Socket> answered = answered(half, 300 - AT_ONCE);
            assertThat(answered)
                    .as("forms told to come again, the others still waited for")
                    .hasSize(300 - AT_ONCE);
            assertThat(refused(503, answer(answered.get(0))))
                    .contains("Retry-After: 5", "Too many forms are coming in at once.");
        } finally {
            for (Socket each : half) {
                each.close();
            }
        }
    }

    private static List<Socket> answered(List<Socket> of, int enough) throws IOException, InterruptedException {
        List<Socket> answered = List.of();
        for (int k = 0; k < PATIENCE_MS / 100 && answered.size() < enough; k++) {
            Thread.sleep(k == 0 ? 0 : 100);
            answered = new ArrayList<>();
            for (Socket each : of) {
                if (each.getInputStream().available() > 0) {
                    answered.add(each);
                }
            }
        }
        return answered;
    }

    @Test
    void a_form_that_drips_in_is_given_up_though_it_never_pauses_for_long() throws Exception {
        int sent = 0;
        try (Socket slow = send("POST /look HTTP/1.1\r\n" + HEADERS + FORM + "Content-Length: 1000\r\n\r\n")) {
            slow.setSoTimeout(100);
            while (sent < 500 && isOpen(slow)) {
                slow.getOutputStream().write('a');
                sent++;
            }
        } catch (SocketException given_up) {
            // The server hung up between two bytes.
        }
        assertThat(sent).as("bytes until it was given up, ten a second").isBetween(1, 499);
    }

    private static boolean isOpen(Socket socket) throws IOException {
        try {
            return socket.getInputStream().read() >= 0;
        } catch (SocketTimeoutException open) {
            return true;
        }
    }
}
