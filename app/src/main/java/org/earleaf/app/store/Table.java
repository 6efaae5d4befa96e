// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * How one kind of fact lies in the database.
 *
 * @param name of the table
 * @param title names a fact to people ("weather 2026-06-03")
 * @param match two facts with equal match are the same one, possibly with other values; names in it as
 *     {@link Names.Called}
 * @param number place in the order of the table; empty: after the last
 * @param reader makes the fact of a row
 */
record Table<T>(
        String name,
        Function<T, String> title,
        Function<T, Object> match,
        Optional<ToLongFunction<T>> number,
        List<Column<T>> columns,
        Function<Row, T> reader) {

    /**
     * One column.
     *
     * @param label names it to people; empty when it only identifies the fact
     * @param value what is stored: text, a double or a whole number; null when not known
     * @param kind of what it names; empty when it names nothing that may be called otherwise
     */
    record Column<T>(
            String name, String label, Function<T, @Nullable Object> value, Shown shown, Optional<Names.Kind> kind) {
        private @Nullable Object stored(T fact, Names names) {
            Object told = value.apply(fact);
            return kind.isPresent() && told != null ? names.id(kind.get(), told.toString()) : told;
        }

        private String text(@Nullable Object stored, boolean metric) {
            if (stored instanceof Double d) {
                return shown.text(d, metric);
            }
            return stored == null ? "not given" : stored.toString().isEmpty() ? "nothing" : stored.toString();
        }
    }

    String insert() {
        String names = columns.stream().map(Column::name).collect(Collectors.joining(", "));
        String marks = String.join(", ", Collections.nCopies(columns.size() + 1, "?"));
        return "insert into " + name + " (seq, " + names + ") values (" + marks + ")";
    }

    String update() {
        String sets = columns.stream().map(c -> c.name() + " = ?").collect(Collectors.joining(", "));
        return "update " + name + " set " + sets + " where seq = ?";
    }

    Object[] insertArguments(long seq, T fact, Names names) {
        List<@Nullable Object> values = values(fact, names);
        values.add(0, seq);
        return values.toArray();
    }

    Object[] updateArguments(long seq, T fact, Names names) {
        List<@Nullable Object> values = values(fact, names);
        values.add(seq);
        return values.toArray();
    }

    private List<@Nullable Object> values(T fact, Names names) {
        List<@Nullable Object> values = new ArrayList<>();
        for (Column<T> c : columns) {
            values.add(c.stored(fact, names));
        }
        return values;
    }

    /** What differs between two facts that match, in the columns that people know. */
    List<Difference> differences(T before, T after, String note) {
        List<Difference> found = new ArrayList<>();
        for (Column<T> c : columns) {
            Object was = c.value().apply(before);
            Object is = c.value().apply(after);
            if (!c.label().isEmpty() && !Objects.equals(was, is)) {
                found.add(new Difference(
                        title.apply(after),
                        c.label(),
                        metric -> c.text(was, metric),
                        metric -> c.text(is, metric),
                        note));
            }
        }
        return found;
    }

    boolean isSame(T before, T after, Names names) {
        return columns.stream().allMatch(c -> Objects.equals(c.stored(before, names), c.stored(after, names)));
    }

    static <T> Builder<T> named(String name, Function<T, String> title, Function<T, Object> match) {
        return new Builder<>(name, title, match);
    }

    /** Gathers the columns. */
    static final class Builder<T> {
        private final String name;
        private final Function<T, String> title;
        private final Function<T, Object> match;
        private final List<Column<T>> columns = new ArrayList<>();
        private Optional<ToLongFunction<T>> number = Optional.empty();

        private Builder(String name, Function<T, String> title, Function<T, Object> match) {
            this.name = name;
            this.title = title;
            this.match = match;
        }

        Builder<T> inOrderOf(ToLongFunction<T> order) {
            number = Optional.of(order);
            return this;
        }

        /** A column that identifies the fact and is never told as a difference. */
        Builder<T> key(String column, Function<T, @Nullable Object> value) {
            return add(column, "", f -> plain(value.apply(f)), Shown.PLAIN);
        }

        /** A column that identifies the fact by what it is of. */
        Builder<T> called(String column, Names.Kind kind, Function<T, @Nullable String> name) {
            return called(column, "", kind, name);
        }

        Builder<T> called(String column, String label, Names.Kind kind, Function<T, @Nullable String> name) {
            columns.add(new Column<>(column, label, name::apply, Shown.PLAIN, Optional.of(kind)));
            return this;
        }

        Builder<T> text(String column, String label, Function<T, @Nullable Object> value) {
            return add(column, label, f -> plain(value.apply(f)), Shown.PLAIN);
        }

        Builder<T> number(String column, String label, ToDoubleFunction<T> value, Shown shown) {
            return add(
                    column,
                    label,
                    f -> {
                        double v = value.applyAsDouble(f);
                        return Double.isNaN(v) ? null : (Double) v;
                    },
                    shown);
        }

        private Builder<T> add(String column, String label, Function<T, @Nullable Object> value, Shown shown) {
            columns.add(new Column<>(column, label, value, shown, Optional.empty()));
            return this;
        }

        /** Enums as their lower-case name, whole numbers as such, all else as it prints. */
        private static @Nullable Object plain(@Nullable Object value) {
            if (value instanceof Enum<?> e) {
                return e.name().toLowerCase(Locale.ROOT);
            }
            return value == null || value instanceof Integer ? value : value.toString();
        }

        Table<T> read(Function<Row, T> reader) {
            return new Table<>(name, title, match, number, List.copyOf(columns), reader);
        }
    }
}
