// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.farm.Farm;
import org.earleaf.farm.FieldWeather;
import org.earleaf.farm.WeatherBook;
import org.earleaf.field.Pass;
import org.earleaf.field.Reading;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Flag;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherGap;
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
            Farm farm = Farms.random(seed);
            Path file = folder.resolve(seed + ".db");
            try (FarmStore store = FarmStore.create(file)) {
                store.importFarm(farm);
            }
            try (FarmStore store = FarmStore.open(file)) {
                assertThat(store.farm()).as("seed %d", seed).isEqualTo(farm);
            }
        }
    }

    @Test
    void importing_the_same_folder_again_changes_nothing() {
        for (long seed = 0; seed < 10; seed++) {
            Farm farm = Farms.random(seed);
            try (FarmStore store = FarmStore.create(folder.resolve(seed + ".db"))) {
                store.importFarm(farm);
                ImportReport again = store.importFarm(farm);
                assertThat(again.first()).isFalse();
                assertThat(again.differences()).isEmpty();
                assertThat(again.added().values()).containsOnly(0);
                assertThat(store.farm()).isEqualTo(farm);
            }
        }
    }

    @Test
    void newer_weather_wins_and_the_difference_is_told() {
        Farm farm = Farms.small();
        try (FarmStore store = FarmStore.create(file())) {
            store.importFarm(farm);
            List<WeatherDay> days =
                    new ArrayList<>(farm.weather().observed().days().subList(30, 40));
            days.set(3, days.get(3).withRain(6));
            days.add(WeatherDay.of(LocalDate.of(2026, 6, 10), 30, 18, 0));
            ImportReport report = store.importFarm(with(farm, book(days, List.of(), List.of())));
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
    void weather_that_leaves_a_hole_is_refused_and_nothing_is_stored() {
        Farm farm = Farms.small();
        try (FarmStore store = FarmStore.create(file())) {
            store.importFarm(farm);
            List<WeatherDay> later = List.of(WeatherDay.of(LocalDate.of(2026, 7, 1), 30, 18, 0));
            Farm wrong = with(rename(farm, "Other Name"), book(later, List.of(), List.of()));
            assertThatThrownBy(() -> store.importFarm(wrong))
                    .isInstanceOf(EarleafException.class)
                    .hasMessageContaining("weather of 2026-06-10")
                    .hasMessageContaining("2026-07-01");
            assertThat(store.farm()).isEqualTo(farm);
        }
    }

    @Test
    void gaps_and_remarks_on_days_given_anew_go_and_the_others_stay() {
        Farm farm = Farms.small();
        List<WeatherDay> days = farm.weather().observed().days();
        WeatherGap gap = new WeatherGap(LocalDate.of(2026, 5, 5), LocalDate.of(2026, 5, 20));
        Flag early = new Flag("weather 2026-05-05", "rain missing; 0 taken");
        Flag late = new Flag("weather 2026-05-15", "rain missing; 0 taken");
        try (FarmStore store = FarmStore.create(file())) {
            store.importFarm(with(farm, book(days, List.of(gap), List.of(early, late))));
            store.importFarm(with(farm, book(days.subList(10, 40), List.of(), List.of())));
            WeatherBook now = store.farm().weather();
            assertThat(now.gaps()).containsExactly(new WeatherGap(LocalDate.of(2026, 5, 5), LocalDate.of(2026, 5, 10)));
            assertThat(now.flags()).containsExactly(early);
        }
    }

    @Test
    void a_pass_keeps_its_id_when_rows_move_and_a_new_one_gets_a_free_id() {
        Farm farm = Farms.small();
        List<Pass> moved = List.of(
                Farms.pass("passes.csv row 2", "Sand Hill", LocalDate.of(2026, 5, 2), 30, Pass.State.MADE),
                Farms.pass("passes.csv row 3", "Home Eighty", LocalDate.of(2026, 5, 1), 45, Pass.State.MADE));
        try (FarmStore store = FarmStore.create(file())) {
            store.importFarm(farm);
            ImportReport report = store.importFarm(withPasses(farm, moved));
            assertThat(report.differences())
                    .extracting(d -> d.sentence(true))
                    .containsExactly(
                            "pass Home Eighty 2026-05-01 UAN 32: rate 40 -> 45",
                            "pass Home Eighty 2026-05-01 UAN 32: nitrogen 40 kg/ha -> 45 kg/ha");
            assertThat(store.farm().passes())
                    .extracting(Pass::id)
                    .containsExactly("passes.csv row 2", "passes.csv row 3", "passes.csv row 2 (2)");
            assertThat(store.farm().passes().get(0).rate()).isEqualTo(45);
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
            store.importFarm(wrong);
            assertThat(store.farm().passes()).as("a double id is no fault").hasSize(2);
        }
        Farm impossible = new Farm(
                farm.name(),
                new org.earleaf.weather.Site(95, 0, 0),
                farm.timeZone(),
                farm.prices(),
                farm.zones(),
                farm.passes(),
                farm.readings(),
                farm.irrigation(),
                farm.manure(),
                farm.nitrogen(),
                farm.products(),
                farm.rigs(),
                farm.recipes(),
                farm.stock(),
                farm.boundaries(),
                farm.weather(),
                farm.flags());
        try (FarmStore store = FarmStore.create(folder.resolve("empty.db"))) {
            assertThatThrownBy(() -> store.importFarm(impossible)).hasMessageContaining("CHECK constraint");
            assertThat(store.findFarm()).isEmpty();
            assertThat(store.changes()).isZero();
        }
    }

    @Test
    void a_reading_entered_is_part_of_the_farm_and_the_gauge_replaces_the_stations_rain() {
        try (FarmStore store = FarmStore.create(file())) {
            store.importFarm(Farms.small());
            LocalDate day = LocalDate.of(2026, 6, 3);
            Reading kept = store.enter(new Reading(
                    "",
                    "Home Eighty",
                    "",
                    day,
                    Reading.Kind.RAIN,
                    11,
                    "11 mm",
                    Double.NaN,
                    Double.NaN,
                    Reading.Position.RANDOM,
                    ""));
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
            store.importFarm(Farms.small());
            assertThat(store.changes()).isEqualTo(1);
        }
    }

    @Test
    void a_missing_file_an_empty_store_and_a_file_of_another_kind_are_each_told() throws Exception {
        assertThatThrownBy(() -> FarmStore.open(file()))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("no such file");
        assertThatThrownBy(() -> FarmStore.create(folder.resolve("no/such/folder.db")))
                .isInstanceOf(EarleafException.class);
        try (FarmStore store = FarmStore.create(file())) {
            assertThatThrownBy(store::farm).hasMessageContaining("earleaf import");
        }
        Path other = Files.writeString(
                folder.resolve("notes.db"),
                "these are notes, not a database, and long enough to be taken for one".repeat(20));
        assertThatThrownBy(() -> FarmStore.open(other))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("cannot be opened");
    }

    @Test
    void a_file_of_a_newer_version_is_refused() {
        try (FarmStore store = FarmStore.create(file())) {
            store.importFarm(Farms.small());
        }
        try (Database db = Database.open(file())) {
            db.sql()
                    .update(
                            "insert into flyway_schema_history select 99, '99', 'later', 'SQL', 'V99__later.sql', 1, 'x', '2030-01-01 00:00:00.000', 1, 1");
        }
        assertThatThrownBy(() -> FarmStore.open(file()))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("newer Earleaf");
    }

    static WeatherBook book(List<WeatherDay> days, List<WeatherGap> gaps, List<Flag> flags) {
        return new WeatherBook(new WeatherSeries(days), List.of(), List.of(), List.of(), gaps, flags);
    }

    static Farm with(Farm f, WeatherBook weather) {
        return new Farm(
                f.name(),
                f.site(),
                f.timeZone(),
                f.prices(),
                f.zones(),
                f.passes(),
                f.readings(),
                f.irrigation(),
                f.manure(),
                f.nitrogen(),
                f.products(),
                f.rigs(),
                f.recipes(),
                f.stock(),
                f.boundaries(),
                weather,
                f.flags());
    }

    static Farm withPasses(Farm f, List<Pass> passes) {
        return new Farm(
                f.name(),
                f.site(),
                f.timeZone(),
                f.prices(),
                f.zones(),
                passes,
                f.readings(),
                f.irrigation(),
                f.manure(),
                f.nitrogen(),
                f.products(),
                f.rigs(),
                f.recipes(),
                f.stock(),
                f.boundaries(),
                f.weather(),
                f.flags());
    }

    static Farm rename(Farm f, String name) {
        return new Farm(
                name,
                f.site(),
                f.timeZone(),
                f.prices(),
                f.zones(),
                f.passes(),
                f.readings(),
                f.irrigation(),
                f.manure(),
                f.nitrogen(),
                f.products(),
                f.rigs(),
                f.recipes(),
                f.stock(),
                f.boundaries(),
                f.weather(),
                f.flags());
    }
}
