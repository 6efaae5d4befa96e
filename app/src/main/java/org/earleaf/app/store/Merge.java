// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.function.Predicate;
import org.springframework.jdbc.core.JdbcTemplate;

/** Brings facts into the store, newer before older, and gathers what differed. Runs inside a transaction. */
final class Merge {
    private final JdbcTemplate sql;
    private final Names names;
    private final List<Difference> differences = new ArrayList<>();

    Merge(JdbcTemplate sql) {
        this.sql = sql;
        this.names = Names.of(sql);
    }

    List<Difference> differences() {
        return List.copyOf(differences);
    }

    Names names() {
        return names;
    }

    /** A fact with its place in the table. */
    record Stored<T>(long seq, T fact) {}

    <T> List<Stored<T>> stored(Table<T> table) {
        return sql.query(
                "select * from " + table.name() + " order by seq",
                (row, k) -> new Stored<>(row.getLong("seq"), table.reader().apply(new Row(row, names))));
    }

    <T> List<T> all(Table<T> table) {
        return stored(table).stream().map(Stored::fact).toList();
    }

    /** The list given stands for all there is: what is not in it goes. An empty list means "not given". */
    <T> void replace(Table<T> table, List<T> incoming) {
        if (incoming.isEmpty()) {
            return;
        }
        tell(table, all(table), incoming);
        replaceQuietly(table, incoming);
    }

    /** Gathers what was found elsewhere to differ. */
    void tell(List<Difference> found) {
        differences.addAll(found);
    }

    /** Gathers what differs between two whole lists. */
    <T> void tell(Table<T> table, List<T> before, List<T> after) {
        Map<Object, Deque<T>> known = byMatch(before, f -> key(table, f));
        for (T fact : after) {
            Deque<T> same = known.get(key(table, fact));
            if (same != null && !same.isEmpty()) {
                differences.addAll(table.differences(same.removeFirst(), fact, ""));
            }
        }
        known.values()
                .forEach(left -> left.forEach(
                        gone -> differences.add(Difference.removed(table.title().apply(gone)))));
    }

    /** As {@link #replace}, an empty list included, and nothing is told. */
    <T> void replaceQuietly(Table<T> table, List<T> incoming) {
        sql.update("delete from " + table.name());
        insert(table, incoming);
    }

    /** Newer values of known facts. */
    record Update<T>(List<T> unknown, int changed) {}

    /**
     * Takes newer values for facts that are known, and gives back those that are not.
     *
     * @param align what the newer fact becomes beside the stored one (it keeps the stored id)
     * @param locked stored facts that stay as they are
     */
    <T> Update<T> update(Table<T> table, List<T> incoming, BinaryOperator<T> align, Predicate<T> locked) {
        Map<Object, Deque<Stored<T>>> known = byMatch(stored(table), (Stored<T> s) -> key(table, s.fact()));
        List<T> unknown = new ArrayList<>();
        List<Object[]> changed = new ArrayList<>();
        for (T fact : incoming) {
            Deque<Stored<T>> same = known.get(key(table, fact));
            if (same == null || same.isEmpty()) {
                unknown.add(fact);
                continue;
            }
            Stored<T> was = same.removeFirst();
            T now = align.apply(was.fact(), fact);
            if (table.isSame(was.fact(), now, names)) {
                continue;
            }
            boolean stays = locked.test(was.fact());
            String note = stays ? "kept as filed; correct the record instead" : "";
            differences.addAll(table.differences(was.fact(), now, note));
            if (!stays) {
                changed.add(table.updateArguments(was.seq(), now, names));
            }
        }
        sql.batchUpdate(table.update(), changed);
        return new Update<>(unknown, changed.size());
    }

    <T> void insert(Table<T> table, List<T> facts) {
        Long last = sql.queryForObject("select coalesce(max(seq), 0) from " + table.name(), Long.class);
        long next = last == null ? 1 : last + 1;
        List<Object[]> rows = new ArrayList<>();
        for (T fact : facts) {
            long seq = table.number().isPresent() ? table.number().get().applyAsLong(fact) : next++;
            rows.add(table.insertArguments(seq, fact, names));
        }
        sql.batchUpdate(table.insert(), rows);
    }

    /** By what a fact is the same as another, whatever things are called. */
    private <T> Object key(Table<T> table, T fact) {
        return names.key(table.match().apply(fact));
    }

    private static <S> Map<Object, Deque<S>> byMatch(List<S> facts, Function<S, Object> match) {
        Map<Object, Deque<S>> byMatch = new LinkedHashMap<>();
        for (S fact : facts) {
            byMatch.computeIfAbsent(match.apply(fact), m -> new ArrayDeque<>()).add(fact);
        }
        return byMatch;
    }
}
