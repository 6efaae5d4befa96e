// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.List;
import org.earleaf.app.paper.PaperSize;
import org.earleaf.farm.Farm;
import org.earleaf.field.Pass;
import org.earleaf.record.Chain;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Records, corrections, the posting place, the shelf and catch tests over plain form posts. */
class RecordsPageTest {
    private final Preview preview = new Preview();
    private final Served server = preview.serve();
    private final String own = "http://127.0.0.1:" + server.port();

    @BeforeEach
    void seed() {
        SeededLoads.in(preview);
    }

    @AfterEach
    void stop() {
        server.close();
        preview.store().close();
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(URI.create(own + path)).build(), BodyHandlers.ofString());
    }

    private HttpResponse<String> correct(String amount, String why) throws IOException, InterruptedException {
        return correct(amount, "6 mph from SW", why);
    }

    private HttpResponse<String> correct(String amount, String wind, String why)
            throws IOException, InterruptedException {
        return server.post(
                "/records/1/correct",
                "amount",
                amount,
                "amount",
                "42.00 fl oz",
                "amount",
                "0.56 gal",
                "area",
                "15.0 ac",
                "start",
                "07:10",
                "end",
                "08:05",
                "wind",
                wind,
                "temperature",
                "75 °F",
                "note",
                "",
                "location",
                "Story County, T83N R24W, section 12",
                "licence",
                "PA-1234",
                "why",
                why,
                "person",
                "Ben");
    }

    @Test
    void a_correction_is_a_further_entry_and_the_record_stays_as_it_was() throws Exception {
        Chain.Entry before = preview.store().records().get(0);
        HttpResponse<String> filed = correct("140 fl oz", "misread the jug");
        assertThat(filed.headers().firstValue("Location")).contains("/records/2");
        List<Chain.Entry> book = preview.store().records();
        assertThat(book.get(0)).isEqualTo(before);
        assertThat(book.get(1).record().corrects()).isEqualTo(before.record().id());
        assertThat(book.get(1).record().products().get(0).amount().text()).isEqualTo("140 fl oz");
        // 140 of 150 fl oz on the same ground: 10 becomes 9.333 fl oz/ac, worked by hand.
        assertThat(book.get(1).record().products().get(0).rate()).isEqualTo("9.333 fl oz/ac");
        assertThat(Chain.verify(book)).isEmpty();
        Pass pass = preview.store().farm().passes().stream()
                .filter(p -> p.product().equals("Demo F1"))
                .findFirst()
                .orElseThrow();
        assertThat(pass.rate().entered()).isBetween(9.33, 9.34);
        assertThat(get("/records/1").body()).contains("misread the jug", "filed, corrected");
    }

    @Test
    void a_correction_without_reason_or_without_a_change_is_refused() throws Exception {
        assertThat(correct("140 fl oz", "").statusCode()).isEqualTo(400);
        HttpResponse<String> same = correct("150.00 fl oz", "nothing");
        assertThat(same.statusCode()).isEqualTo(400);
        assertThat(same.body()).contains("the same as the record");
        assertThat(preview.store().records()).hasSize(1);
    }

    @Test
    void a_wind_that_is_put_right_is_held_against_the_labels_anew() throws Exception {
        assertThat(preview.store().records().get(0).record().extras()).doesNotContainKey("deviation");
        correct("150.00 fl oz", "17 mph from SW", "read the meter again");
        assertThat(preview.store().records().get(1).record().extras().get("deviation"))
                .startsWith("wind 17 mph from SW, the label of Demo F1 says");
        correct("150.00 fl oz", "6 mph from SW", "it was 6 after all");
        assertThat(preview.store().records().get(2).record().extras()).doesNotContainKey("deviation");
    }

    @Test
    void a_correction_goes_to_the_newest_of_a_record_corrected_before() throws Exception {
        correct("140 fl oz", "misread the jug");
        correct("141 fl oz", "misread it again");
        List<Chain.Entry> book = preview.store().records();
        assertThat(book.get(2).record().corrects())
                .isEqualTo(book.get(1).record().id());
    }

    @Test
    void a_record_filed_after_its_days_is_flagged_and_not_refused() throws Exception {
        // 7 CFR 110.3: within 14 days of the application.
        preview.pass(Duration.ofDays(15));
        correct("140 fl oz", "misread the jug");
        assertThat(get("/records/2").body()).contains("<b>Late.</b>");
        assertThat(get("/records/1").body()).doesNotContain("<b>Late.</b>");
    }

    @Test
    void the_head_of_each_day_stands_with_the_records() throws Exception {
        String page = get("/records").body();
        assertThat(page)
                .contains("Head of the day", preview.store().records().get(0).hash());
    }

    @Test
    void the_posting_sheet_says_until_when_to_keep_out() throws Exception {
        assertThat(get("/records/1/posting").body())
                .contains("Wed, July 1, 2026, 8:05\u00a0am", "demothrin", "(assumption", "INVENTED-2")
                .doesNotContain("Still to be written in");
    }

    @Test
    void the_shelf_shows_what_loads_hold_of_each_lot() throws Exception {
        String page = get("/shelf").body();
        assertThat(page)
                .contains("F1-0426", "Held by loads", "checked again by B. Helper", "12 fl oz/ac", "32% by weight");
        for (String good : page.split("<section class=\"good\">")) {
            assertThat(good.split("<dt>Density</dt>", -1).length - 1).isLessThanOrEqualTo(1);
        }
    }

    private HttpResponse<String> catchTest(String seconds, String unit, String caught) throws Exception {
        return server.post(
                "/rigs/catch",
                "rig",
                "tall sprayer",
                "size",
                "05",
                "pressure",
                "40 psi",
                "liquid",
                "water",
                "seconds",
                seconds,
                "unit",
                unit,
                "caught",
                caught,
                "person",
                "Ana");
    }

    @Test
    void a_catch_test_says_which_outlets_to_replace() throws Exception {
        // Volumes in 60 s of the published set whose coefficient of variation is 6.21 %: outlets 5 and 8 are off.
        HttpResponse<String> kept = catchTest("60", "gal", ".492 .505 .510 .498 .571\n.503 .495 .441 .507 .500");
        assertThat(kept.statusCode()).isEqualTo(302);
        String page = get("/rigs/catch?rig=tall+sprayer").body();
        assertThat(page).contains("outlets 5 and 8 on the tall sprayer", "6.2 %, fair", "+14.2 %", "−11.8 %");
        assertThat(get("/rigs").body()).contains("outlets 5 and 8 on the tall sprayer");
    }

    @Test
    void outlets_are_found_on_the_rigs_page_with_what_binds_or_why_none_serves() throws Exception {
        String asked = "/rigs?rig=tall+sprayer&rate=15+gal%2Fac&speed=10+mph";
        assertThat(get(asked).body()).contains("size 05", "The best first", "fast end: ");
        assertThat(get("/rigs").body())
                .contains("Overhead lines", "Find outlets")
                .doesNotContain("The best first");
        HttpResponse<String> wrong = get(asked + "&droplets=M");
        assertThat(wrong.statusCode()).isEqualTo(400);
        assertThat(wrong.body()).contains("A class never follows from a size");
        assertThat(get(asked + "&droplets=XC&nozzles=Invented%2C+05%3A+M+20+psi%2C+F+60+psi")
                        .body())
                .contains("No outlet serves.", "wanted XC");
    }

    @Test
    void a_name_is_changed_on_its_page() throws Exception {
        assertThat(get("/rigs").body()).contains("Change a name", "/rigs/rename");
        assertThat(get("/shelf").body()).contains("Change a name", "/shelf/rename");
        assertThat(get("/field/mill-eighty").body()).contains("Change a name", "/fields/rename");
        Farm farm = preview.store().farm();
        String rig = farm.rigs().get(0).name();
        String product = farm.products().get(0).name();
        String field = farm.zones().get(0).field();
        assertThat(server.post("/rigs/rename", "name", rig, "other", "Old Blue").statusCode())
                .isEqualTo(302);
        assertThat(server.post("/shelf/rename", "name", product, "other", "Late Guard")
                        .statusCode())
                .isEqualTo(302);
        assertThat(server.post("/fields/rename", "name", field, "other", "Long Eighty")
                        .statusCode())
                .isEqualTo(302);
        Farm now = preview.store().farm();
        assertThat(now.rigs().get(0).name()).isEqualTo("Old Blue");
        assertThat(now.products().get(0).name()).isEqualTo("Late Guard");
        assertThat(now.zones().get(0).field()).isEqualTo("Long Eighty");
        HttpResponse<String> none = server.post("/rigs/rename", "name", "Old Blue", "other", " ");
        assertThat(none.statusCode()).isEqualTo(400);
        assertThat(none.body()).contains("1 to 60 letters");
    }

    @Test
    void new_nozzles_end_what_was_caught_before() throws Exception {
        catchTest("60", "gal", ".492 .505 .510");
        assertThat(get("/rigs").body()).doesNotContain("Tall sprayer: no catch test");
        HttpResponse<String> nobody =
                server.post("/rigs/changed", "rig", "tall sprayer", "said", "size 06", "person", " ");
        assertThat(nobody.body()).contains("data-code=\"person.missing\"");
        preview.pass(java.time.Duration.ofSeconds(1));
        assertThat(server.post("/rigs/changed", "rig", "tall sprayer", "said", "size 06", "person", "Ana")
                        .statusCode())
                .isEqualTo(302);
        assertThat(get("/rigs").body())
                .contains(
                        "Tall sprayer: nozzles or plates changed since the last catch test.", "Pull sprayer: no catch");
    }

    @Test
    void a_catch_that_cannot_be_read_is_refused() throws Exception {
        HttpResponse<String> few = catchTest("30", "fl oz", "32 x");
        assertThat(few.statusCode()).isEqualTo(400);
        assertThat(few.body()).contains("Outlet 2: found &quot;x fl oz&quot;");
    }

    @Test
    void sizes_of_paper_go_by_their_usual_names() {
        assertThat(PaperSize.parse("A4")).isEqualTo(PaperSize.A4);
    }
}
