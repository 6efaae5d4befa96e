// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import org.earleaf.entry.NameEntry;
import org.earleaf.mix.JarResult;
import org.springframework.jdbc.core.JdbcTemplate;

/** Notes that let a tank be filled: cleanouts of rigs, jar tests of mixes. Runs inside a transaction. */
final class MixNotes {
    private final JdbcTemplate sql;

    MixNotes(JdbcTemplate sql) {
        this.sql = sql;
    }

    int note(String kind, String about, String said, String person, Instant at) {
        String what = NameEntry.told(said, kind);
        String who = NameEntry.person(person, "person");
        return sql.update(
                "insert into mix_note (seq, kind, about, at, person, said)"
                        + " select coalesce(max(seq), 0) + 1, ?, ?, ?, ?, ? from mix_note",
                kind,
                about.toLowerCase(Locale.ROOT),
                at.toString(),
                who,
                what);
    }

    /** Whether one was noted at a time or later. */
    boolean has(String kind, String about, Instant since) {
        return sql
                .queryForList(
                        "select at from mix_note where kind = ? and about = ?",
                        String.class,
                        kind,
                        about.toLowerCase(Locale.ROOT))
                .stream()
                .anyMatch(at -> !Instant.parse(at).isBefore(since));
    }

    /** Keeps what a jar test of a mix showed. */
    int jar(String mix, JarResult result) {
        return sql.update(
                "insert into mix_note (seq, kind, about, at, person, said, outcome, water)"
                        + " select coalesce(max(seq), 0) + 1, 'jar', ?, ?, ?, ?, ?, ? from mix_note",
                mix.toLowerCase(Locale.ROOT),
                result.at().toString(),
                result.person().strip(),
                result.note().strip(),
                result.outcome().name().toLowerCase(Locale.ROOT),
                result.water().strip());
    }

    /** The newest jar test of a mix. */
    Optional<JarResult> findJar(String mix) {
        return sql
                .query(
                        "select outcome, at, person, water, said from mix_note where kind = 'jar' and about = ? order by seq",
                        (row, k) -> new JarResult(
                                JarResult.Outcome.parse(row.getString(1)),
                                Instant.parse(row.getString(2)),
                                row.getString(3),
                                row.getString(4).isEmpty() ? "water not told" : row.getString(4),
                                row.getString(5)),
                        mix.toLowerCase(Locale.ROOT))
                .stream()
                .reduce((before, after) -> after);
    }
}
