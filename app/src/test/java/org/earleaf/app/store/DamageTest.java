// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.earleaf.app.store.Tanks.T;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.earleaf.app.picture.Photograph;
import org.earleaf.farm.Farm;
import org.earleaf.field.Pass;
import org.earleaf.field.Placement;
import org.earleaf.record.Chain;
import org.earleaf.units.EarleafException;
import org.junit.jupiter.api.Test;

/** Bytes of the file that are no longer what was written: told in words, or shown to change nothing. */
class DamageTest extends WithLoads {
    private static final int PLACES = Integer.getInteger("earleaf.damages", 200);
    private static final int[] SIZES = {1, 1, 4, 16, 100, 5000};

    /** A farm with everything in it that a farm may hold, in one file that nobody has open. */
    private Path full() {
        reserved("1", "job-1", 6);
        mixed("1");
        planned("2", "job-2", 6);
        loads.cleaned("highboy", "rinsed three times", "A", T);
        store.jobs().keep(new LoadJobs.Job("job-1", "Late P", Placement.OVER_THE_TOP));
        store.enter(Farms.small().readings().get(0), Optional.of(photograph()));
        Pass fresh = Farms.pass("", "Home", Tanks.DAY, 30, Pass.State.PLANNED);
        store.fileMade(fresh, RecordBookTest.account("r1", "", "A. Grower"));
        store.close();
        return folder.resolve("earleaf.db");
    }

    private static Photograph photograph() {
        byte[] noise = new byte[20_000];
        new SplittableRandom(5).nextBytes(noise);
        return new Photograph(noise, "image/jpeg", Arrays.copyOf(noise, 500), 200, 100);
    }

    /** Every value of every table, and the tables themselves. */
    private static List<String> content(Path file) throws SQLException {
        List<String> content = new ArrayList<>();
        try (Connection db = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            List<String> tables = new ArrayList<>();
            tables.add("sqlite_master");
            try (ResultSet names = db.createStatement()
                    .executeQuery("select name from sqlite_master where type = 'table' order by name")) {
                while (names.next()) {
                    tables.add(names.getString(1));
                }
            }
            for (String table : tables) {
                try (ResultSet row = db.createStatement().executeQuery("select * from " + table)) {
                    while (row.next()) {
                        StringBuilder text = new StringBuilder(table);
                        for (int k = 1; k <= row.getMetaData().getColumnCount(); k++) {
                            Object value = row.getObject(k);
                            text.append('|').append(value instanceof byte[] b ? Arrays.hashCode(b) + "" : value);
                        }
                        content.add(text.toString());
                    }
                }
            }
        }
        return content;
    }

    private static void readAll(FarmStore store) {
        store.farm();
        store.records().forEach(Chain.Entry::record);
        store.loads().all().forEach(k -> store.loads().findings(k.load()));
        store.loads().labels();
        store.jobs().all();
        store.catches().all();
        store.handed().findNewest();
        store.waters().findNewest();
        store.photographs().forEach(p -> store.findPhotograph(p.id()));
    }

    @Test
    void bytes_written_at_random_are_told_in_words_or_change_nothing() throws Exception {
        Path whole = full();
        List<String> content = content(whole);
        byte[] bytes = Files.readAllBytes(whole);
        SplittableRandom random = new SplittableRandom(20261130);
        int told = 0;
        for (int place = 0; place < PLACES; place++) {
            byte[] damaged = bytes.clone();
            byte[] noise = new byte[SIZES[random.nextInt(SIZES.length)]];
            random.nextBytes(noise);
            int at = random.nextInt(bytes.length - noise.length + 1);
            System.arraycopy(noise, 0, damaged, at, noise.length);
            Path file = Files.write(folder.resolve("damaged-" + place + ".db"), damaged);
            if (isTold(file, noise.length + " bytes at " + at)) {
                told++;
            } else {
                assertThat(content(file)).as("%d bytes at %d", noise.length, at).isEqualTo(content);
            }
        }
        System.out.println(PLACES + " damages, " + told + " told, the rest change nothing");
        assertThat(told).isGreaterThan(PLACES / 3);
    }

    private static boolean isTold(Path file, String what) {
        boolean told = false;
        try (FarmStore store = FarmStore.open(file)) {
            try {
                readAll(store);
            } catch (EarleafException inWords) {
                told = true;
            }
            store.requireWhole();
            assertThat(told)
                    .as("%s: told by a reader and not by the check", what)
                    .isFalse();
            return false;
        } catch (EarleafException inWords) {
            assertThat(inWords.problems()).as(what).isNotEmpty();
            return true;
        } catch (RuntimeException unexpected) {
            throw new AssertionError(what, unexpected);
        }
    }

    @Test
    void a_number_changed_in_a_sound_file_is_found_and_no_advice_is_made_of_it() throws Exception {
        Path file = full();
        byte[] bytes = Files.readAllBytes(file);
        try (Connection db = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            db.createStatement().execute("drop trigger watch_weather_day_update");
            db.createStatement().execute("update weather_day set rain_mm = rain_mm + 25");
        }
        assertThatThrownBy(() -> FarmStore.open(file).close()).hasMessageContaining("tables are not as they were made");
        Files.write(file, bytes);
        Farm before;
        try (FarmStore store = FarmStore.open(file)) {
            store.requireWhole();
            before = store.farm();
        }
        try (Connection db = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            db.createStatement().execute("update seal set sum = sum + 1 where table_ = 'weather_day'");
        }
        try (FarmStore store = FarmStore.open(file)) {
            assertThatThrownBy(store::farm)
                    .isInstanceOf(StoreTrouble.class)
                    .hasMessageFindingMatch("weather_day, row [0-9]+, is not as it was written")
                    .hasMessageContaining("store.damaged");
            assertThatThrownBy(store::requireWhole).hasMessageContaining("weather_day");
        }
        Files.write(file, bytes);
        try (FarmStore store = FarmStore.open(file)) {
            assertThat(store.farm()).isEqualTo(before);
        }
    }

    @Test
    void a_file_cut_short_is_told() throws Exception {
        Path file = full();
        byte[] bytes = Files.readAllBytes(file);
        for (int part = 1; part < 8; part++) {
            Path cut = Files.write(folder.resolve("cut.db"), Arrays.copyOf(bytes, bytes.length * part / 8));
            assertThat(isTold(cut, part + " of 8 parts")).isTrue();
        }
    }
}
