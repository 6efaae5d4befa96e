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
import java.util.List;
import java.util.stream.Stream;
import org.earleaf.app.RecordCopy;
import org.earleaf.app.desk.Days;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.StoredNotebook;
import org.earleaf.app.web.view.Figure;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.decide.Option;
import org.earleaf.decide.ProtectionAnswer;
import org.earleaf.farm.Farm;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneName;
import org.earleaf.outlook.Outlook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every page of a farm that grows soybean beside its corn. */
class OtherCropTest {
    private static final Zone SOYBEAN = RecordCopy.with(
            RecordCopy.with(Fixture.MILL, "called", ZoneName.of("Ferry Lane", "")), "planting.crop", "soybean");
    private static final Preview PREVIEW = new Preview();
    private static final WebServer SERVER =
            WebServer.start(new Both(), new StoredNotebook(PREVIEW.store(), true), "127.0.0.1", 0);

    /** Core has no season of soybean: who asks for one has made a mistake. */
    private static final class Day extends Fixture {
        @Override
        public Farm farm() {
            Farm farm = PREVIEW.store().farm();
            return farm.zones().contains(SOYBEAN) ? farm : both(farm);
        }

        private static Farm both(Farm farm) {
            return RecordCopy.with(
                    farm,
                    "ground.zones",
                    Stream.concat(farm.zones().stream(), Stream.of(SOYBEAN)).toList());
        }

        private static Zone corn(Zone zone) {
            if (!zone.isCorn()) {
                throw new IllegalStateException("asked for the season of " + zone.crop());
            }
            return zone;
        }

        @Override
        public Outlook outlook(Zone zone) {
            return super.outlook(corn(zone));
        }

        @Override
        public NitrogenOptions.Answer answer(Zone zone) {
            return super.answer(corn(zone));
        }

        @Override
        public List<Option> options(Zone zone) {
            return super.options(corn(zone));
        }

        @Override
        public ProtectionAnswer protection(Zone zone) {
            return super.protection(corn(zone));
        }
    }

    private static final class Both implements Days {
        @Override
        public LocalDate today() {
            return Fixture.TODAY;
        }

        @Override
        public FarmDay day(LocalDate on) {
            return new Day();
        }

        @Override
        public Instant now() {
            return FixtureShelf.MORNING;
        }
    }

    @AfterAll
    static void stop() {
        SERVER.close();
        PREVIEW.store().close();
    }

    private static HttpResponse<String> get(String path) throws Exception {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + SERVER.port() + path))
                                .build(),
                        BodyHandlers.ofString());
    }

    static Stream<String> pages() {
        Stream<String> pages = Stream.of(
                "/",
                "/calendar",
                "/calendar?span=season",
                "/field",
                "/field?units=metric",
                "/field/ferry-lane",
                "/field/ferry-lane?day=2026-06-01&with=true",
                "/field/ferry-lane?index=40&units=metric",
                "/field/ferry-lane/options",
                "/walk",
                "/walk?place=ferry-lane",
                "/walk?place=ferry-lane&kind=nitrate",
                "/walk?place=ferry-lane&kind=lesions",
                "/walk?place=ferry-lane&kind=stage",
                "/loads",
                "/loads/new",
                "/loads/new?place=ferry-lane",
                "/rigs",
                "/shelf",
                "/records",
                "/plan",
                "/assumptions");
        Stream<String> figures = Stream.of(Figure.values()).map(f -> "/why/" + f.key() + "?place=ferry-lane");
        return Stream.concat(pages, figures);
    }

    @ParameterizedTest
    @MethodSource("pages")
    void no_page_asks_for_the_season_of_another_crop(String path) throws Exception {
        assertThat(get(path).statusCode()).as(path).isEqualTo(200);
    }

    @Test
    void its_page_says_that_the_season_is_not_modelled_and_leads_on() throws Exception {
        String page = get("/field/ferry-lane").body();
        assertThat(page)
                .contains("Ferry Lane grows soybean.", "Its season is not modelled.", "/loads/new?place=ferry-lane");
        assertThat(page).doesNotContain("NaN", "null");
        HttpResponse<String> soil = get("/field/ferry-lane/soil?index=3");
        assertThat(soil.statusCode()).isEqualTo(404);
        assertThat(soil.body()).contains("The season of soybean is not modelled.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/loads/ferry-lane", "/loads/ferry-lane?choice=2026-07-01"})
    void there_is_no_nitrogen_sheet_for_it(String path) throws Exception {
        assertThat(get(path).statusCode()).isEqualTo(404);
    }

    @Test
    void a_reading_taken_on_it_is_kept_and_stands_on_its_page() throws Exception {
        PREVIEW.store().importFarm(new Day().farm(), List.of());
        String own = "http://127.0.0.1:" + SERVER.port();
        HttpRequest reading = HttpRequest.newBuilder(URI.create(own + "/walk"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Origin", own)
                .POST(HttpRequest.BodyPublishers.ofString("place=ferry-lane&kind=nitrate&unit=ppm&value=11"))
                .build();
        HttpResponse<String> kept = HttpClient.newHttpClient().send(reading, BodyHandlers.ofString());
        assertThat(kept.statusCode()).as(kept.body()).isEqualTo(302);
        String next = kept.headers().firstValue("Location").orElseThrow();
        assertThat(get(next.substring(next.indexOf("/walk"))).statusCode()).isEqualTo(200);
        assertThat(get("/field/ferry-lane").body()).contains("11 ppm");
    }
}
