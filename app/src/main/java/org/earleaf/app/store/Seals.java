// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;

/**
 * A sum for every row over what it held when it was written, and one over the tables themselves. A flipped bit in a
 * number leaves a sound database with a wrong farm in it; nothing but such a sum shows it. Runs inside a transaction.
 */
final class Seals {
    private static final String OURS =
            "select name from sqlite_master where type = 'table' and name not like 'sqlite\\_%' escape '\\'"
                    + " and name not in ('seal', 'unsealed') order by name";
    private static final int TOLD = 5;

    private final JdbcTemplate sql;

    Seals(JdbcTemplate sql) {
        this.sql = sql;
    }

    /** Whether the tables of so many migrations were sealed: a program may stop between making tables and sealing them. */
    boolean isFor(int migrations) {
        return state("sealed") == migrations;
    }

    /** Watches all tables from now on and seals what stands in them. */
    void renew(int migrations) {
        sql.update("delete from seal");
        for (String table : sql.queryForList(OURS, String.class)) {
            watch(table);
            sql.update("insert or ignore into unsealed (table_, row_) select ?, rowid from " + table, table);
        }
        put("sealed", migrations);
        put("tables", tables());
        seal();
    }

    private void watch(String table) {
        for (String event : List.of("insert", "update", "delete")) {
            String name = "watch_" + table + "_" + event;
            sql.execute("drop trigger if exists " + name);
            sql.execute("create trigger " + name + " after " + event + " on " + table + " begin "
                    + (event.equals("insert") ? "" : note(table, "old"))
                    + (event.equals("delete") ? "" : note(table, "new"))
                    + "end");
        }
    }

    /** Not "or ignore": inside of a trigger the statement that fired it says what happens to a doubled key. */
    private static String note(String table, String which) {
        return "insert into unsealed (table_, row_) select '" + table + "', " + which + ".rowid"
                + " where not exists (select 1 from unsealed where table_ = '" + table + "' and row_ = " + which
                + ".rowid); ";
    }

    /** Seals the rows that were written since the last time. */
    void seal() {
        for (String table : sql.queryForList("select distinct table_ from unsealed", String.class)) {
            List<Object[]> sums = sql.query(
                    "select t.rowid, t.* from unsealed u join " + table + " t on t.rowid = u.row_ where u.table_ = ?",
                    (row, k) -> new Object[] {table, row.getLong(1), sum(row, 2)},
                    table);
            sql.update(
                    "delete from seal where table_ = ? and row_ in (select row_ from unsealed where table_ = ?)",
                    table,
                    table);
            sql.batchUpdate("insert into seal (table_, row_, sum) values (?, ?, ?)", sums);
        }
        sql.update("delete from unsealed");
    }

    /** Whether the tables, their indexes and triggers are those that were made. */
    boolean hasItsTables() {
        return state("tables") == tables();
    }

    /** The first rows that are not what was written, lost or added, in words; empty when every one is. */
    List<String> broken() {
        List<String> broken = new ArrayList<>();
        for (String table : sql.queryForList(OURS, String.class)) {
            List<String> odd = sql.query(
                    "select t.rowid, s.sum, t.* from " + table
                            + " t left join seal s on s.table_ = ? and s.row_ = t.rowid",
                    row -> {
                        List<String> found = new ArrayList<>();
                        while (row.next() && found.size() < TOLD) {
                            long sealed = row.getLong(2);
                            if (row.wasNull() || sealed != sum(row, 3)) {
                                found.add(table + ", row " + row.getLong(1) + ", is not as it was written");
                            }
                        }
                        return found;
                    },
                    table);
            broken.addAll(odd == null ? List.of() : odd);
            Long lost = sql.queryForObject(
                    "select count(*) from seal where table_ = ? and row_ not in (select rowid from " + table + ")",
                    Long.class,
                    table);
            if (lost != null && lost > 0) {
                broken.add(table + " has lost " + lost + (lost == 1 ? " row" : " rows"));
            }
        }
        return broken;
    }

    private long state(String name) {
        return sql.queryForList("select amount from state where name = ?", Long.class, name).stream()
                .findFirst()
                .orElse(0L);
    }

    private void put(String name, long amount) {
        sql.update(
                "insert into state (name, amount) values (?, ?) on conflict (name) do update set amount = excluded.amount",
                name,
                amount);
    }

    private long tables() {
        MessageDigest digest = digest();
        sql.query("select type, name, tbl_name, sql from sqlite_master order by type, name", row -> {
            for (int k = 1; k <= 4; k++) {
                add(digest, row.getString(k));
            }
        });
        return first(digest);
    }

    /** Over the values from a column on, each with its kind and length, so that none can run into the next. */
    private static long sum(ResultSet row, int from) throws SQLException {
        MessageDigest digest = digest();
        int columns = row.getMetaData().getColumnCount();
        for (int k = from; k <= columns; k++) {
            add(digest, row.getObject(k));
        }
        return first(digest);
    }

    private static void add(MessageDigest digest, @Nullable Object value) {
        if (value == null) {
            digest.update((byte) 0);
        } else if (value instanceof Double d) {
            add(digest, 'd', ByteBuffer.allocate(8).putDouble(d).array());
        } else if (value instanceof Number n) {
            add(digest, 'i', ByteBuffer.allocate(8).putLong(n.longValue()).array());
        } else if (value instanceof byte[] bytes) {
            add(digest, 'b', bytes);
        } else {
            add(digest, 's', value.toString().getBytes(StandardCharsets.UTF_8));
        }
    }

    private static void add(MessageDigest digest, char kind, byte[] bytes) {
        digest.update((byte) kind);
        digest.update(ByteBuffer.allocate(4).putInt(bytes.length).array());
        digest.update(bytes);
    }

    private static long first(MessageDigest digest) {
        return ByteBuffer.wrap(digest.digest()).getLong();
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
