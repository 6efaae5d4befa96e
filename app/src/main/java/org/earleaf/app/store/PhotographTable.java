// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.util.List;
import java.util.Optional;
import org.earleaf.app.picture.Photograph;
import org.springframework.jdbc.core.JdbcTemplate;

/** The photographs of the store; their pictures are read one by one, never with the farm. */
final class PhotographTable {
    private final JdbcTemplate sql;

    PhotographTable(JdbcTemplate sql) {
        this.sql = sql;
    }

    void keep(String reading, Photograph p) {
        sql.update(
                "insert into photograph (id, reading, type_, wide, tall, image, small) values (?, ?, ?, ?, ?, ?, ?)",
                Ids.next(),
                reading,
                p.type(),
                p.wide(),
                p.tall(),
                p.image(),
                p.small());
    }

    List<Photograph.Note> notes() {
        return sql.query(
                "select id, reading, type_, wide, tall from photograph order by id",
                (row, k) -> new Photograph.Note(
                        row.getString(1), row.getString(2), row.getString(3), row.getInt(4), row.getInt(5)));
    }

    Optional<Photograph> find(String id) {
        return sql
                .query(
                        "select image, type_, small, wide, tall from photograph where id = ?",
                        (row, k) -> new Photograph(
                                row.getBytes(1), row.getString(2), row.getBytes(3), row.getInt(4), row.getInt(5)),
                        id)
                .stream()
                .findFirst();
    }
}
