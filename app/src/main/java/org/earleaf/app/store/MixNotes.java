// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.time.Instant;
import java.util.Locale;
import org.earleaf.units.EarleafException;
import org.springframework.jdbc.core.JdbcTemplate;

/** Notes that let a tank be filled: cleanouts of rigs, jar tests of mixes. Runs inside a transaction. */
final class MixNotes {
    private final JdbcTemplate sql;

    MixNotes(JdbcTemplate sql) {
        this.sql = sql;
    }

    int note(String kind, String about, String said, String person, Instant at) {
        if (said.isBlank() || person.isBlank()) {
            String where = kind.equals("jar") ? "jar test" : "cleanout";
            throw EarleafException.of(where, "nothing", "what was done, and by whom", "Write both.");
        }
        return sql.update(
                "insert into mix_note (seq, kind, about, at, person, said)"
                        + " select coalesce(max(seq), 0) + 1, ?, ?, ?, ?, ? from mix_note",
                kind,
                about.toLowerCase(Locale.ROOT),
                at.toString(),
                person.strip(),
                said.strip());
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
}
