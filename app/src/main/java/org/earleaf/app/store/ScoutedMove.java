// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.sql.Types;
import java.util.Locale;
import org.earleaf.field.Incidence;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.migration.Context;
import org.flywaydb.core.api.migration.JavaMigration;
import org.jspecify.annotations.Nullable;

/**
 * Version 19: what was counted on plants gets columns of its own. Versions before wrote it into the note, in words; those
 * words are read here once, and never again.
 */
final class ScoutedMove implements JavaMigration {
    @Override
    public MigrationVersion getVersion() {
        return MigrationVersion.fromVersion("19");
    }

    @Override
    public String getDescription() {
        return "plants counted";
    }

    @Override
    public @Nullable Integer getChecksum() {
        return null;
    }

    @Override
    public boolean canExecuteInTransaction() {
        return true;
    }

    @Override
    public void migrate(Context context) throws SQLException {
        Connection db = context.getConnection();
        try (Statement all = db.createStatement()) {
            for (String column : new String[] {
                "found text not null default ''",
                "positive integer",
                "plants integer",
                "leaf integer",
                "counts varchar(10) not null default 'per_plant'",
                "lady_beetles double precision not null default 0",
                "lacewings double precision not null default 0",
                "mummies double precision not null default 0",
                "above_threshold integer not null default 0"
            }) {
                all.executeUpdate("alter table reading add column " + column);
            }
        }
        try (Statement read = db.createStatement();
                ResultSet row = read.executeQuery(
                        "select seq, kind, amount, note from reading where kind in ('lesions', 'insects')");
                PreparedStatement write = db.prepareStatement("update reading set found = ?, positive = ?, plants = ?,"
                        + " leaf = ?, counts = ?, lady_beetles = ?, lacewings = ?, mummies = ?, above_threshold = ?,"
                        + " amount = ?, note = ? where seq = ?")) {
            while (row.next()) {
                Reading.Kind kind =
                        Reading.Kind.findByWord(row.getString("kind")).orElseThrow();
                fill(write, OldNote.of(kind, row.getDouble("amount"), row.getString("note")));
                write.setLong(12, row.getLong("seq"));
                write.addBatch();
            }
            write.executeBatch();
        }
    }

    private static void fill(PreparedStatement write, OldNote old) throws SQLException {
        Scouted seen = old.scouted();
        write.setString(1, seen.disease().map(d -> d.word()).orElse(seen.insect()));
        if (seen.counted().isPresent()) {
            Incidence counted = seen.counted().get();
            write.setInt(2, counted.shows());
            write.setInt(3, counted.plants());
        } else {
            write.setNull(2, Types.INTEGER);
            write.setNull(3, Types.INTEGER);
        }
        if (seen.leaf().isPresent()) {
            write.setInt(4, seen.leaf().getAsInt());
        } else {
            write.setNull(4, Types.INTEGER);
        }
        write.setString(5, seen.by().name().toLowerCase(Locale.ROOT));
        write.setDouble(6, seen.enemies().ladyBeetles());
        write.setDouble(7, seen.enemies().lacewings());
        write.setDouble(8, seen.enemies().mummies());
        write.setInt(9, seen.aboveThreshold() ? 1 : 0);
        write.setDouble(10, old.value());
        write.setString(11, old.note());
    }
}
