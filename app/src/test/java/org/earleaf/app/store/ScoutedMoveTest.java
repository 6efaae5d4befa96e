// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.earleaf.field.Disease;
import org.earleaf.field.Incidence;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.JdbcTemplate;
import org.sqlite.SQLiteDataSource;

/** Counts that versions before wrote into notes are moved once; words of people stay notes. */
class ScoutedMoveTest {
    @TempDir
    private Path dir;

    private List<Reading> moved(String... kindAmountNote) {
        Path file = dir.resolve("old.db");
        SQLiteDataSource old = new SQLiteDataSource();
        old.setUrl("jdbc:sqlite:" + file);
        Flyway.configure()
                .dataSource(old)
                .locations("classpath:db/common", "classpath:db/sqlite")
                .javaMigrations(new LabelMove())
                .target("18")
                .load()
                .migrate();
        JdbcTemplate sql = new JdbcTemplate(old);
        for (int k = 0; k < kindAmountNote.length; k += 3) {
            sql.update(
                    "insert into reading (seq, id, field, zone, date_, kind, amount, entered, position_, note)"
                            + " values (?, ?, 'Home', '', '2026-06-10', ?, ?, '', 'random', ?)",
                    k + 1,
                    "r" + k,
                    kindAmountNote[k],
                    Double.valueOf(kindAmountNote[k + 1]),
                    kindAmountNote[k + 2]);
        }
        try (Database db = Database.open(file)) {
            return new Merge(db.sql()).all(WorkTables.READINGS);
        }
    }

    @Test
    void what_the_program_wrote_becomes_columns_and_the_rest_stays_a_note() {
        List<Reading> all = moved(
                "lesions",
                ".58",
                "northern leaf blight, 58 of 100 plants, ear leaf -3, low spots, east side",
                "insects",
                "55",
                "aphids, 24 of 100 plants, lady beetles 0.2, mummies 2",
                "lesions",
                "8",
                "tar spot, 8 % of the ear leaf",
                "insects",
                "3",
                "above the threshold, western bean cutworm");
        Reading lesions = all.get(0);
        assertThat(lesions.note()).isEqualTo("low spots, east side");
        assertThat(lesions.scouted())
                .isEqualTo(new Scouted(
                        Optional.of(Disease.NORTHERN_LEAF_BLIGHT),
                        "",
                        OptionalInt.of(-3),
                        Optional.of(new Incidence(58, 100)),
                        Scouted.By.PER_PLANT,
                        Scouted.Enemies.NONE,
                        false));
        assertThat(all.get(1).scouted().isAphids()).isTrue();
        assertThat(all.get(1).scouted().enemies()).isEqualTo(new Scouted.Enemies(.2, 0, 2));
        assertThat(all.get(1).note()).isEmpty();
        assertThat(all.get(2).value()).isEqualTo(.08);
        assertThat(all.get(2).scouted().by()).isEqualTo(Scouted.By.OF_LEAF);
        assertThat(all.get(3).scouted().aboveThreshold()).isTrue();
        assertThat(all.get(3).note()).isEqualTo("western bean cutworm");
    }

    @Test
    void words_of_people_are_left_alone() {
        List<Reading> all = moved(
                "lesions",
                "2",
                "neighbor treated 90 of 100 acres",
                "lesions",
                "2",
                "about 40 of 100 plants look worse than last week",
                "insects",
                "9",
                "saw 12 of 50 plants, maybe");
        assertThat(all)
                .extracting(Reading::note)
                .containsExactly(
                        "neighbor treated 90 of 100 acres",
                        "about 40 of 100 plants look worse than last week",
                        "saw 12 of 50 plants, maybe");
        assertThat(all).extracting(Reading::scouted).containsOnly(Scouted.NOTHING);
    }
}
