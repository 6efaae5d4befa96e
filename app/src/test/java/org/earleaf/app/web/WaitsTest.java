// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Instant;
import java.time.LocalDate;
import java.util.concurrent.ForkJoinPool;
import org.earleaf.app.desk.AskedDay;
import org.earleaf.app.desk.Days;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.StoredNotebook;
import org.earleaf.app.desk.StubWork;
import org.earleaf.app.desk.Threads;
import org.earleaf.app.store.KeptBriefs;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What pages say while answers are held back: the order of things, not their time. */
class WaitsTest {
    private final Preview preview = new Preview();
    private final Threads threads = new Threads(new ForkJoinPool(1), new ForkJoinPool(1));

    /** One day, asked by every page. */
    private record Held(FarmDay day) implements Days {
        @Override
        public LocalDate today() {
            return day.on();
        }

        @Override
        public FarmDay day(LocalDate on) {
            return day;
        }

        @Override
        public Instant now() {
            return FixtureShelf.MORNING;
        }
    }

    private WebServer serve(StubWork work) {
        AskedDay day = new AskedDay(preview.day(Fixture.TODAY).farm(), Fixture.TODAY, work, threads);
        return WebServer.start(new Held(day), new StoredNotebook(preview.store(), true), "127.0.0.1", 0);
    }

    @AfterEach
    void stop() {
        threads.answers().shutdownNow();
        threads.searches().shutdownNow();
        preview.store().close();
    }

    private static HttpResponse<String> get(WebServer server, String path) throws Exception {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path))
                                .build(),
                        BodyHandlers.ofString());
    }

    private static HttpResponse<String> once(WebServer server, String path) throws Exception {
        HttpResponse<String> page = get(server, path);
        while (page.body().contains("being worked out")) {
            Thread.sleep(50);
            page = get(server, path);
        }
        return page;
    }

    /** The morning is the week's plan, so it waits for the plan; so does all that names a pass of the week. */
    @Test
    void pages_that_name_a_pass_wait_for_the_weeks_search_and_records_do_not() throws Exception {
        StubWork work = new StubWork(false, true);
        try (WebServer server = serve(work)) {
            HttpResponse<String> morning = get(server, "/");
            while (morning.body().contains("of five fields so far")) {
                Thread.sleep(50);
                morning = get(server, "/");
            }
            assertThat(get(server, "/records").body()).doesNotContain("being worked out");
            for (String waiting : new String[] {"/", "/plan", "/calendar", "/field/mill-eighty/options"}) {
                HttpResponse<String> page = get(server, waiting);
                assertThat(page.headers().firstValue("Refresh")).as(waiting).contains("2");
                assertThat(page.body())
                        .as(waiting)
                        .contains("<h1>The week is being worked out.</h1>", "The best plan so far costs")
                        .contains("href=\"/field/mill-eighty\"", "href=\"/walk\"");
            }
            HttpResponse<String> feed = get(server, "/plan.ics");
            assertThat(feed.statusCode()).isEqualTo(503);
            assertThat(feed.headers().firstValue("Retry-After")).contains("5");
            assertThat(feed.body()).isEqualTo("The week is being worked out. Ask again in a moment.");
            work.week.countDown();
            assertThat(once(server, "/").body()).contains("<span class=\"now\">Today</span> put nitrogen");
            assertThat(once(server, "/plan").body()).contains("Done this week in");
            assertThat(once(server, "/plan.ics").body()).startsWith("BEGIN:VCALENDAR");
        } finally {
            work.week.countDown();
        }
    }

    @Test
    void a_page_says_which_fields_stand_and_comes_by_itself_when_all_do() throws Exception {
        StubWork work = new StubWork(true, false);
        try (WebServer server = serve(work)) {
            HttpResponse<String> page = get(server, "/");
            assertThat(page.statusCode()).isEqualTo(200);
            assertThat(page.headers().firstValue("Refresh")).contains("2");
            assertThat(page.body())
                    .contains(
                            "<h1>The fields are being worked out.</h1>",
                            "0 of five fields so far.",
                            "Long Quarter, west");
            assertThat(get(server, "/field/mill-eighty/soil?index=3").statusCode())
                    .isEqualTo(503);
            assertThat(get(server, "/records").body()).doesNotContain("being worked out");
            work.fields.countDown();
            assertThat(once(server, "/").body()).contains("<span class=\"now\">Today</span> put nitrogen");
        } finally {
            work.fields.countDown();
        }
    }

    @Test
    void the_last_brief_is_shown_with_its_time_while_the_new_one_is_worked_out() throws Exception {
        try (WebServer server = serve(new StubWork(false, false))) {
            assertThat(once(server, "/").body()).contains("<span class=\"now\">Today</span> put nitrogen");
        }
        StubWork work = new StubWork(true, false);
        try (WebServer server = serve(work)) {
            String page = get(server, "/").body();
            assertThat(page)
                    .contains("<h1>The fields are being worked out.</h1>", "The brief as it stood at")
                    .contains("<span class=\"now\">Today</span> put nitrogen");
            assertThat(page.split("<h1").length - 1).isEqualTo(1);
            assertThat(get(server, "/?units=metric").body()).doesNotContain("The brief as it stood at");
            keep(Fixture.TODAY.minusDays(1), Frame.VERSION);
            assertThat(get(server, "/").body())
                    .contains("The brief of Monday, June 29, as it stood at", "do not act on");
            keep(Fixture.TODAY.minusDays(4), Frame.VERSION);
            assertThat(get(server, "/").body()).doesNotContain("as it stood at");
            keep(Fixture.TODAY, "another program");
            assertThat(get(server, "/").body()).doesNotContain("as it stood at");
            work.fields.countDown();
            assertThat(once(server, "/").body()).doesNotContain("as it stood at");
            assertThat(preview.store().kept().find(false).orElseThrow().day()).isEqualTo(Fixture.TODAY);
        } finally {
            work.fields.countDown();
        }
    }

    private void keep(LocalDate day, String program) {
        preview.store().kept().keep(new KeptBriefs.Kept(false, day, FixtureShelf.MORNING, program, "<p>kept</p>"));
    }
}
