// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.app.RecordCopy;
import org.earleaf.farm.Farm;
import org.earleaf.farm.FieldWeather;
import org.earleaf.farm.WeatherBook;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Pass;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Flag;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FarmStoreTest {
    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("earleaf.db");
    }

    @Test
    void gives_back_the_farm_that_was_put_in() {
        for (long seed = 0; seed < 40; seed++) {
            Farms.Written given = Farms.random(seed);
            Farm farm = given.farm();
            Path file = folder.resolve(seed + ".db");
            try (FarmStore store = FarmStore.create(file)) {
                store.importFarm(farm, given.observed());
            }
            try (FarmStore store = FarmStore.open(file)) {
                assertThat(store.farm()).as("seed %d", seed).isEqualTo(farm);
            }
        }
    }

    @Test
    void importing_the_same_folder_again_changes_nothing() {
        for (long seed = 0; seed < 10; seed++) {
            Farms.Written given = Farms.random(seed);
            Farm farm = given.farm();
            try (FarmStore store = FarmStore.create(folder.resolve(seed + ".db"))) {
                store.importFarm(farm, given.observed());
                ImportReport again = store.importFarm(farm, given.observed());
                assertThat(again.first()).isFalse();
                assertThat(again.differences()).isEmpty();
                assertThat(again.added().values()).containsOnly(0);
                assertThat(store.farm()).isEqualTo(farm);
            }
        }
    }

    @Test
    void a_newer_label_entry_counts_and_is_told_and_an_old_folder_does_not_come_before_it() {
        Farm first = RecordCopy.with(Farms.small(), "rules.labels", new LabelBook(List.of(Tanks.label())));
        LabelEntry newer = RecordCopy.with(Tanks.label(), "title.version", "2");
        try (FarmStore store = FarmStore.create(file())) {
            put(store, first);
            ImportReport report = put(store, RecordCopy.with(first, "rules.labels", new LabelBook(List.of(newer))));
            assertThat(report.differences())
                    .extracting(d -> d.sentence(false))
                    .containsExactly("label of Demo P on corn: version 1 -> 2");
            assertThat(put(store, first).differences()).isEmpty();
            assertThat(store.farm().labels().entries()).containsExactly(Tanks.label(), newer);
            assertThat(store.farm().labels().find("Demo P", "corn")).contains(newer);
        }
    }

    @Test
    void newer_weather_wins_and_the_difference_is_told() {
        Farm farm = Farms.small();
        try (FarmStore store = FarmStore.create(file())) {
            put(store, farm);
            List<WeatherDay> days =
                    new ArrayList<>(farm.weather().observed().days().subList(30, 40));
            days.set(3, days.get(3).withRain(6));
            days.add(WeatherDay.of(LocalDate.of(2026, 6, 10), 30, 18, 0));
            ImportReport report = put(store, with(farm, book(days)));
            assertThat(report.differences())
                    .extracting(d -> d.sentence(true))
                    .containsExactly("weather 2026-06-03: rain 4 mm -> 6 mm");
            assertThat(report.differences().get(0).sentence(false))
                    .isEqualTo("weather 2026-06-03: rain 0.15748 in -> 0.23622 in");
            assertThat(report.added()).containsEntry("weather days", 1);
            assertThat(store.farm().weather().observed().days()).hasSize(41);
            assertThat(store.farm()
                            .weather()
                            .observed()
                            .at(LocalDate.of(2026, 6, 3))
                            .rain_mm())
                    .isEqualTo(6);
            assertThat(store.farm().weather().forecast())
                    .as("an older forecast does not outlive a new import")
                    .isEmpty();
        }
    }

    @Test
    void a_hole_between_imports_is_filled_and_flagged_and_closes_when_its_days_come() {
        Farm farm = Farms.small();
        LocalDate next = LocalDate.of(2026, 6, 12);
        try (FarmStore store = FarmStore.create(file())) {
            put(store, farm);
            store.importWeather(List.of(WeatherDay.of(next, 30, 18, 0)), nothingAhead());
            Farm holed = store.farm();
            assertThat(holed.weather().observed().days()).hasSize(43);
            assertThat(holed.flags().toString()).contains("2026-06-10").contains("2026-06-11");
            ImportReport report = store.importWeather(
                    List.of(
                            WeatherDay.of(next.minusDays(2), 30, 18, 1),
                            WeatherDay.of(next.minusDays(1), 30, 18, 2),
                            WeatherDay.of(next, Double.NaN, Double.NaN, 7)),
                    nothingAhead());
            assertThat(report.added()).containsEntry("weather days", 2);
            assertThat(report.differences())
                    .as("a day filled in was never stored, and an unknown value is no difference")
                    .extracting(d -> d.sentence(true))
                    .containsExactly("weather 2026-06-12: rain 0 mm -> 7 mm");
            assertThat(store.farm().flags()).isEmpty();
            assertThat(store.farm().weather().observed().at(next).tmax_C()).isEqualTo(30);
        }
    }

    @Test
    void weather_alone_leaves_the_farm_as_it_is_and_renews_the_forecast() {
        Farm farm = Farms.small();
        WeatherDay ahead = WeatherDay.of(LocalDate.of(2026, 6, 11), 25, 14, 3);
        WeatherBook book = new WeatherBook(
                new WeatherSeries(List.of()),
                List.of(ahead),
                List.of(.4),
                List.of(),
                List.of(),
                List.of(new Flag("forecast.csv", "a remark")));
        try (FarmStore store = FarmStore.create(file())) {
            put(store, farm);
            store.importWeather(List.of(WeatherDay.of(LocalDate.of(2026, 6, 10), 30, 18, 0)), book);
            Farm now = store.farm();
            assertThat(now.zones()).isEqualTo(farm.zones());
            assertThat(now.passes()).isEqualTo(farm.passes());
            assertThat(now.weather().forecast()).containsExactly(ahead);
            assertThat(now.weather().rainChance()).containsExactly(.4);
            assertThat(now.weather().flags()).containsExactly(new Flag("forecast.csv", "a remark"));
        }
    }

    private static WeatherBook nothingAhead() {
        return new WeatherBook(new WeatherSeries(List.of()), List.of(), List.of(), List.of(), List.of(), List.of());
    }

    @Test
    void a_pass_keeps_its_id_when_rows_move_and_a_new_one_gets_a_free_id() {
        Farm farm = Farms.small();
        List<Pass> moved = List.of(
                Farms.pass("passes.csv row 2", "Sand Hill", LocalDate.of(2026, 5, 2), 30, Pass.State.MADE),
                Farms.pass("passes.csv row 3", "Home Eighty", LocalDate.of(2026, 5, 1), 45, Pass.State.MADE));
        try (FarmStore store = FarmStore.create(file())) {
            put(store, farm);
            ImportReport report = put(store, withPasses(farm, moved));
            assertThat(report.differences())
                    .extracting(d -> d.sentence(true))
                    .containsExactly(
                            "pass Home Eighty 2026-05-01 UAN 32: rate 40 -> 45",
                            "pass Home Eighty 2026-05-01 UAN 32: nitrogen 40 kg/ha -> 45 kg/ha");
            assertThat(store.farm().passes())
                    .extracting(Pass::id)
                    .containsExactly("passes.csv row 2", "passes.csv row 3", "passes.csv row 2 (2)");
            assertThat(store.farm().passes().get(0).rate().entered()).isEqualTo(45);
        }
    }

    @Test
    void a_fault_in_the_middle_of_an_import_leaves_nothing_behind() {
        Farm farm = Farms.small();
        // Two passes under one id: the database refuses the second, after fields and soil were written.
        Pass p = farm.passes().get(0);
        Farm wrong = withPasses(rename(farm, "Half"), List.of(p, p));
        try (FarmStore store = FarmStore.create(file())) {
            assertThat(store.findFarm()).isEmpty();
            put(store, wrong);
            assertThat(store.farm().passes()).as("a double id is no fault").hasSize(2);
        }
        Farm impossible = RecordCopy.with(farm, "site", new org.earleaf.weather.Site(95, 0, 0));
        try (FarmStore store = FarmStore.create(folder.resolve("empty.db"))) {
            assertThatThrownBy(() -> put(store, impossible)).hasMessageContaining("CHECK constraint");
            assertThat(store.findFarm()).isEmpty();
            assertThat(store.changes()).isZero();
        }
    }

    @Test
    void a_reading_entered_is_part_of_the_farm_and_the_gauge_replaces_the_stations_rain() {
        try (FarmStore store = FarmStore.create(file())) {
            put(store, Farms.small());
            LocalDate day = LocalDate.of(2026, 6, 3);
            Reading kept = store.enter(new Reading(
                    "",
                    new FieldPart("Home Eighty", ""),
                    day,
                    Reading.Kind.RAIN,
                    11,
                    "11 mm",
                    Reading.Sampled.NO_SOIL,
                    "",
                    Scouted.NOTHING));
            Farm farm = store.farm();
            assertThat(kept.id()).isNotEmpty();
            assertThat(farm.readings()).contains(kept);
            assertThat(FieldWeather.of(farm, farm.zones().get(0)).at(day).rain_mm())
                    .isEqualTo(11);
            assertThat(FieldWeather.of(farm, farm.zones().get(1)).at(day).rain_mm())
                    .isEqualTo(4);
        }
    }

    @Test
    void every_change_counts() {
        try (FarmStore store = FarmStore.create(file())) {
            assertThat(store.changes()).isZero();
            put(store, Farms.small());
            assertThat(store.changes()).isEqualTo(1);
        }
    }

    @Test
    void a_missing_file_an_empty_store_and_a_file_of_another_kind_are_each_told() throws Exception {
        assertThatThrownBy(() -> FarmStore.open(file()))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("store.no-file");
        assertThatThrownBy(() -> FarmStore.create(folder.resolve("no/such/folder.db")))
                .isInstanceOf(EarleafException.class);
        try (FarmStore store = FarmStore.create(file())) {
            assertThatThrownBy(store::farm).hasMessageContaining("store.no-farm");
        }
        Path other = Files.writeString(
                folder.resolve("notes.db"),
                "these are notes, not a database, and long enough to be taken for one".repeat(20));
        assertThatThrownBy(() -> FarmStore.open(other))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("store.no-database");
    }

    @Test
    void a_file_of_a_newer_version_is_refused() {
        try (FarmStore store = FarmStore.create(file())) {
            put(store, Farms.small());
        }
        try (Database db = Database.open(file())) {
            db.sql()
                    .update(
                            "insert into flyway_schema_history select 99, '99', 'later', 'SQL', 'V99__later.sql', 1, 'x', '2030-01-01 00:00:00.000', 1, 1");
        }
        assertThatThrownBy(() -> FarmStore.open(file()))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("store.newer");
    }

    /** A farm whose weather has no holes. */
    static ImportReport put(FarmStore store, Farm farm) {
        return store.importFarm(farm, farm.weather().observed().days());
    }

    static WeatherBook book(List<WeatherDay> days) {
        return new WeatherBook(new WeatherSeries(days), List.of(), List.of(), List.of(), List.of(), List.of());
    }

    static Farm with(Farm f, WeatherBook weather) {
        return RecordCopy.with(f, "weather", weather);
    }

    static Farm withPasses(Farm f, List<Pass> passes) {
        return RecordCopy.with(f, "work.passes", passes);
    }

    static Farm rename(Farm f, String name) {
        return RecordCopy.with(f, "name", name);
    }
}
