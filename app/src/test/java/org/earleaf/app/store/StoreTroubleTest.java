// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.earleaf.app.store.StoreTrouble.Kind;
import org.earleaf.app.words.Words;
import org.earleaf.farm.Farm;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.units.EarleafException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the store says, and what can still be read, when its file is held, full, or may not be written. */
class StoreTroubleTest {
    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("earleaf.db");
    }

    private static Farm stored(Path file) {
        try (FarmStore store = FarmStore.create(file)) {
            FarmStoreTest.put(store, Farms.small());
            return store.farm();
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

    private static StoreTrouble refused(FarmStore store) {
        return catchThrowableOfType(StoreTrouble.class, () -> store.enter(reading()));
    }

    private static Connection other(Path file, String... first) throws SQLException {
        Connection other = DriverManager.getConnection("jdbc:sqlite:" + file);
        for (String sql : first) {
            other.createStatement().execute(sql);
        }
        return other;
    }

    @Test
    void a_writer_elsewhere_stops_no_reader_and_no_opening() throws Exception {
        Farm farm = stored(file());
        try (FarmStore store = FarmStore.open(file());
                Connection writer = other(file(), "begin immediate", "update farm set name = 'Half Done'")) {
            assertThat(store.farm()).isEqualTo(farm);
            assertThat(store.records()).isEmpty();
            assertThat(store.loads().all()).isEmpty();
            assertThat(store.changes()).isEqualTo(1);
            try (FarmStore second = FarmStore.open(file())) {
                assertThat(second.farm()).isEqualTo(farm);
            }
            StoreTrouble busy = refused(store);
            assertThat(busy.kind()).isEqualTo(Kind.BUSY);
            assertThat(told(busy)).contains("another program writing").contains("Try again");
            writer.createStatement().execute("rollback");
            store.enter(reading());
            assertThat(store.farm().readings()).hasSize(farm.readings().size() + 1);
        }
    }

    @Test
    void a_file_that_another_program_keeps_to_itself_is_busy_and_not_broken() throws Exception {
        stored(file());
        try (Connection alone = other(file(), "pragma locking_mode = exclusive", "begin exclusive")) {
            StoreTrouble busy = catchThrowableOfType(StoreTrouble.class, () -> FarmStore.open(file()));
            assertThat(busy.kind()).isEqualTo(Kind.BUSY);
            assertThat(busy.getMessage()).doesNotContain("backup");
            assertThat(alone.isClosed()).isFalse();
        }
        FarmStore.open(file()).close();
    }

    @Test
    void a_file_that_may_not_be_written_is_read() throws Exception {
        Farm farm = stored(file());
        try (Place still = Place.readOnly(file());
                FarmStore store = FarmStore.open(file())) {
            assertThat(store.farm()).isEqualTo(farm);
            assertThat(store.findWhyOnlyRead()).isPresent();
            StoreTrouble refused = refused(store);
            assertThat(refused.kind()).isEqualTo(Kind.READ_ONLY);
            assertThat(told(refused)).contains("may be read and not written").doesNotContain("backup");
        }
    }

    @Test
    void a_file_in_a_folder_that_may_not_be_written_is_read() throws Exception {
        Path odd = Files.createDirectories(folder.resolve("50 % of it?"));
        Path file = odd.resolve("my farm#1.db");
        Farm farm = stored(file);
        try (Place still = Place.readOnly(file);
                Place stillToo = Place.readOnly(odd);
                FarmStore store = FarmStore.open(file)) {
            assertThat(store.farm()).isEqualTo(farm);
            assertThat(store.findWhyOnlyRead()).isPresent();
            assertThat(refused(store).kind()).isEqualTo(Kind.READ_ONLY);
            StoreTrouble none = catchThrowableOfType(StoreTrouble.class, () -> FarmStore.create(odd.resolve("new.db")));
            assertThat(none.kind()).isEqualTo(Kind.READ_ONLY);
        }
    }

    @Test
    void work_not_yet_brought_in_is_told_and_never_left_out() throws Exception {
        stored(file());
        Path copy = Files.createDirectories(folder.resolve("copy"));
        Path copied = copy.resolve("earleaf.db");
        try (FarmStore store = FarmStore.open(file())) {
            store.enter(reading());
            for (String end : new String[] {"", "-wal"}) {
                Files.copy(folder.resolve("earleaf.db" + end), copy.resolve("earleaf.db" + end));
            }
        }
        try (Place still = Place.readOnly(copy)) {
            StoreTrouble told = catchThrowableOfType(StoreTrouble.class, () -> FarmStore.open(copied));
            assertThat(told.kind()).isEqualTo(Kind.READ_ONLY);
            assertThat(told(told)).contains("earleaf.db-wal");
        }
        try (FarmStore store = FarmStore.open(copied)) {
            assertThat(store.farm().readings()).hasSize(Farms.small().readings().size() + 1);
        }
    }

    @Test
    void a_full_disk_is_told_as_such_and_its_farm_is_read() throws Exception {
        Farm farm = stored(file());
        try (Place small = Place.small(folder.resolve("small"), 1024)) {
            Path file = folder.resolve("small/earleaf.db");
            Files.copy(file(), file, StandardCopyOption.REPLACE_EXISTING);
            try (FarmStore store = FarmStore.open(file)) {
                fill(folder.resolve("small/fill"));
                assertThat(store.farm()).isEqualTo(farm);
                assertThat(refused(store).kind()).isEqualTo(Kind.FULL);
                assertThat(store.farm()).isEqualTo(farm);
            }
            fill(folder.resolve("small/fill"));
            try (FarmStore store = FarmStore.open(file)) {
                assertThat(store.farm()).isEqualTo(farm);
                StoreTrouble full = refused(store);
                assertThat(full.kind()).isEqualTo(Kind.FULL);
                assertThat(told(full)).contains("Free some space").doesNotContain("backup");
            }
            Files.delete(folder.resolve("small/fill"));
            try (FarmStore store = FarmStore.open(file)) {
                store.enter(reading());
            }
        }
    }

    /** Writes until nothing more goes in. */
    private static void fill(Path file) {
        try {
            for (int k = 0; k < 100_000; k++) {
                Files.write(file, new byte[64], StandardOpenOption.CREATE, StandardOpenOption.APPEND);
            }
        } catch (IOException full) {
            return;
        }
        throw new IllegalStateException("the disk never filled");
    }

    @Test
    void a_database_that_may_grow_no_more_is_told_as_full() {
        Farm farm = stored(file());
        try (Database db = Database.open(file())) {
            StoreTrouble full = catchThrowableOfType(
                    StoreTrouble.class,
                    () -> db.inTransaction(() -> {
                        db.sql().execute("pragma max_page_count = 1");
                        Merge tables = new Merge(db.sql());
                        for (int k = 0; k < 1000; k++) {
                            tables.insert(WorkTables.READINGS, List.of(reading().withId("r" + k)));
                        }
                        return 1;
                    }));
            assertThat(full.kind()).isEqualTo(Kind.FULL);
        }
        try (FarmStore store = FarmStore.open(file())) {
            assertThat(store.farm()).as("nothing of it was stored").isEqualTo(farm);
        }
    }

    @Test
    void what_is_no_database_is_told_as_such() throws Exception {
        Files.writeString(file(), "field,zone\n".repeat(200));
        EarleafException told = catchThrowableOfType(EarleafException.class, () -> FarmStore.open(file()));
        assertThat(told(told)).contains("a file made by earleaf import or earleaf init");
    }

    /** As a person reads it. */
    private static String told(EarleafException trouble) {
        return trouble.problems().stream().map(p -> Words.US.told(p).sentence()).collect(Collectors.joining(" "));
    }
}
