// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Product;
import org.earleaf.farm.ProductKind;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelItem;
import org.earleaf.label.LabelLimit;
import org.earleaf.units.EarleafException;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.JdbcTemplate;
import org.sqlite.SQLiteDataSource;

/** What the file promises when programs are killed, write at once, or find it locked. */
class DatabaseTest {
    private static final int KILLS = Integer.getInteger("earleaf.kills", 4);

    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("earleaf.db");
    }

    @Test
    void a_connection_has_the_settings_that_keep_what_was_acknowledged() {
        try (Database db = Database.create(file())) {
            assertThat(db.sql().queryForObject("pragma journal_mode", String.class))
                    .isEqualTo("wal");
            assertThat(db.sql().queryForObject("pragma synchronous", Integer.class))
                    .as("full")
                    .isEqualTo(2);
            assertThat(db.sql().queryForObject("pragma foreign_keys", Integer.class))
                    .isEqualTo(1);
            assertThat(db.sql().queryForObject("pragma integrity_check", String.class))
                    .isEqualTo("ok");
        }
    }

    @Test
    void a_file_of_the_tables_before_disease_and_labels_is_taken_over_with_nothing_filled_in() {
        SQLiteDataSource old = new SQLiteDataSource();
        old.setUrl("jdbc:sqlite:" + file());
        Flyway.configure()
                .dataSource(old)
                .locations("classpath:db/common", "classpath:db/sqlite")
                .target("2.1")
                .load()
                .migrate();
        JdbcTemplate sql = new JdbcTemplate(old);
        sql.update("insert into product (seq, name, form, price_unit, registration, caution)"
                + " values (1, 'Leaf Guard', 'SC', '', '', '')");
        sql.update("insert into rig (seq, name, kind, outlets_per_row, placements)"
                + " values (1, 'High', 'pulled', 1, 'over the top')");
        try (Database db = Database.open(file())) {
            Merge tables = new Merge(db.sql());
            assertThat(tables.all(ShelfTables.PRODUCTS).get(0).kind()).isEqualTo(ProductKind.OTHER);
            assertThat(new LabelRows(db.sql()).book().entries()).isEmpty();
            assertThat(tables.all(ShelfTables.RIGS).get(0).clearance().spray_m())
                    .isNaN();
        }
    }

    @Test
    void what_labels_said_in_columns_of_a_product_waits_for_a_second_look_as_an_entry() {
        SQLiteDataSource old = new SQLiteDataSource();
        old.setUrl("jdbc:sqlite:" + file());
        Flyway.configure()
                .dataSource(old)
                .locations("classpath:db/common", "classpath:db/sqlite")
                .target("11")
                .load()
                .migrate();
        JdbcTemplate sql = new JdbcTemplate(old);
        sql.update(
                "insert into product (seq, name, form, price_unit, registration, caution, kind, mode_groups,"
                        + " label_wind_max_m_s, label_air_max_c, label_rainfast_h, label_inversion_ban, label_droplet_min,"
                        + " label_pre_harvest_d, label_stage_first, label_stage_last, label_states_none, label_by_air)"
                        + " values (1, 'Leaf Guard', 'SC', '', 'INV-12', '', 'fungicide', '11+3', 4.4704, 30, 2, 'yes', 3, 30,"
                        + " 30, 34, 'label_wind_min_m_s', 'no'),"
                        + " (2, 'Spreader', 'NIS', '', '', '', 'helper', '', null, null, null, '', null, null, null, null, '', '')");
        String older = LoadJson.text(Tanks.label()).replace("\"plantBack_d\":{},", "");
        assertThat(older).doesNotContain("plantBack");
        sql.update("insert into label_entry (seq, product, crop, body) values (1, 'Demo P', 'corn', ?)", older);
        try (Database db = Database.open(file())) {
            LabelBook book = new LabelRows(db.sql()).book();
            assertThat(book.entries()).hasSize(2).contains(Tanks.label());
            LabelEntry moved = book.findWaiting("Leaf Guard", "corn").orElseThrow();
            assertThat(moved.limit(LabelItem.WIND_LEAST)).isEqualTo(LabelLimit.noneStated());
            assertThat(moved.limit(LabelItem.WIND_MOST)).isEqualTo(LabelLimit.of(4.4704));
            assertThat(moved.limit(LabelItem.AIR_MOST)).isEqualTo(LabelLimit.of(30));
            assertThat(moved.limit(LabelItem.RAINFAST)).isEqualTo(LabelLimit.of(2));
            assertThat(moved.limit(LabelItem.INVERSION)).isEqualTo(LabelLimit.of(1));
            assertThat(moved.limit(LabelItem.BY_AIR)).isEqualTo(LabelLimit.of(0));
            assertThat(moved.figure(LabelItem.FINEST).entered()).isEqualTo("M");
            assertThat(moved.limit(LabelItem.HARVEST)).isEqualTo(LabelLimit.of(30));
            assertThat(moved.figure(LabelItem.FIRST_STAGE).entered()).isEqualTo("VT");
            assertThat(moved.limit(LabelItem.LAST_STAGE)).isEqualTo(LabelLimit.of(34));
            assertThat(moved.limit(LabelItem.SINGLE)).isEqualTo(LabelLimit.notEntered());
            assertThat(moved.registration()).isEqualTo("INV-12");
            assertThat(moved.look().isDone()).isFalse();
            assertThat(new Merge(db.sql()).all(ShelfTables.PRODUCTS))
                    .extracting(Product::kind)
                    .containsExactly(ProductKind.FUNGICIDE, ProductKind.HELPER);
        }
    }

    @Test
    void several_writers_at_once_lose_nothing() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try (FarmStore store = FarmStore.create(file())) {
            FarmStoreTest.put(store, Farms.small());
            List<Callable<Void>> writers = new ArrayList<>();
            for (int w = 0; w < 4; w++) {
                writers.add(() -> {
                    for (int k = 0; k < 25; k++) {
                        store.enter(reading());
                    }
                    return null;
                });
            }
            for (Future<Void> done : threads.invokeAll(writers)) {
                done.get();
            }
            assertThat(store.farm().readings()).hasSize(101);
            assertThat(store.changes()).isEqualTo(101);
        } finally {
            threads.shutdown();
        }
    }

    private static Reading reading() {
        return new Reading(
                "",
                new FieldPart("Home Eighty", ""),
                LocalDate.of(2026, 6, 1),
                Reading.Kind.HEIGHT,
                80,
                "80 cm",
                Reading.Sampled.NO_SOIL,
                "",
                Scouted.NOTHING);
    }

    @Test
    void a_file_that_another_program_holds_is_told_as_such() throws Exception {
        try (FarmStore store = FarmStore.create(file())) {
            FarmStoreTest.put(store, Farms.small());
            try (var other = DriverManager.getConnection("jdbc:sqlite:" + file());
                    var statement = other.createStatement()) {
                statement.execute("begin exclusive");
                assertThatThrownBy(() -> store.enter(reading()))
                        .isInstanceOf(EarleafException.class)
                        .hasMessageContaining("store.busy");
            }
            assertThat(store.farm().readings()).hasSize(1);
            store.enter(reading());
            assertThat(store.farm().readings())
                    .as("the connection that met the lock is not used again")
                    .hasSize(2);
        }
    }

    /** Imports two farms in turn until it is killed; says after each commit how many there were. */
    static final class ImportForever {
        private ImportForever() {}

        public static void main(String[] args) {
            try (FarmStore store = FarmStore.create(Path.of(args[0]))) {
                for (long k = store.changes(); ; k++) {
                    FarmStoreTest.put(store, farm(k));
                    System.out.println(k + 1);
                }
            }
        }

        static Farm farm(long k) {
            return FarmStoreTest.rename(Farms.small(), "Farm " + k);
        }
    }

    /** Source of the promise: SQLite's documentation of write-ahead logging with full synchronisation. */
    @Test
    void a_program_killed_in_the_middle_leaves_all_of_an_import_or_nothing() throws Exception {
        SplittableRandom random = new SplittableRandom(7);
        int failed = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            long acknowledged = importAndKill(300 + random.nextInt(400));
            try (FarmStore store = FarmStore.open(file())) {
                long changes = store.changes();
                boolean whole = store.farm().equals(ImportForever.farm(changes - 1));
                failed += whole && changes >= acknowledged && changes <= acknowledged + 1 ? 0 : 1;
            }
        }
        System.out.println(KILLS + " kills tried, " + failed + " failed");
        assertThat(failed).isZero();
    }

    /** The last commit that the killed program had acknowledged. */
    private long importAndKill(int afterFirst_ms) throws Exception {
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        Files.deleteIfExists(out);
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        ImportForever.class.getName(),
                        file().toString())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        while (Files.readString(out).isEmpty()) {
            assertThat(process.isAlive()).as("%s", Files.readString(err)).isTrue();
            Thread.sleep(10);
        }
        Thread.sleep(afterFirst_ms);
        process.destroyForcibly().waitFor();
        String told = Files.readString(out);
        // A number cut short by the kill was not acknowledged.
        String[] whole = told.substring(0, told.lastIndexOf('\n')).split("\n");
        return Long.parseLong(whole[whole.length - 1]);
    }
}
