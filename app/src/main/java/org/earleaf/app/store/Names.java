// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;

/**
 * What things are called today, and the ids under which the tables know them. Facts carry today's names; what is stored
 * carries ids, so that a name may change and everything that was stored goes with it.
 */
final class Names {
    /** Things whose name may change. */
    enum Kind {
        FIELD,
        RIG,
        PRODUCT;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A name inside of a key by which two facts are the same one.
     *
     * @param text today's or an earlier one
     */
    record Called(Kind kind, String text) {}

    /**
     * A thing that is not called by its id, or that a folder knows by another.
     *
     * @param given the id that a folder gives it; empty: none, or its own
     */
    record Thing(Kind kind, String id, String name, String given) {}

    /** Where everything is called by its id. */
    static final Names PLAIN = new Names(List.of(), List.of());

    private final Map<Kind, Map<String, Thing>> byId = new EnumMap<>(Kind.class);
    private final Map<Kind, Map<String, String>> idByName = new EnumMap<>(Kind.class);

    private Names(List<Thing> things, List<Thing> former) {
        for (Kind kind : Kind.values()) {
            byId.put(kind, new HashMap<>());
            idByName.put(kind, new HashMap<>());
        }
        former.forEach(t -> ids(t.kind()).put(plain(t.name()), t.id()));
        // An earlier name still finds its thing, where no other thing is called so by now.
        things.forEach(t -> ids(t.kind()).put(plain(t.id()), t.id()));
        things.forEach(t -> {
            ids(t.kind()).put(plain(t.name()), t.id());
            things(t.kind()).put(t.id(), t);
        });
    }

    static Names of(JdbcTemplate sql) {
        return new Names(
                things(sql, "select kind, id, name, given from thing"),
                things(sql, "select kind, id, name, '' from former_name"));
    }

    private static List<Thing> things(JdbcTemplate sql, String query) {
        return sql.query(
                query,
                (row, k) -> new Thing(
                        Kind.valueOf(row.getString(1).toUpperCase(Locale.ROOT)),
                        row.getString(2),
                        row.getString(3),
                        row.getString(4)));
    }

    private Map<String, Thing> things(Kind kind) {
        return Objects.requireNonNull(byId.get(kind));
    }

    private Map<String, String> ids(Kind kind) {
        return Objects.requireNonNull(idByName.get(kind));
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    /** The id of what is called so today; else of what was first told of so, or called so in between. */
    String id(Kind kind, String name) {
        return ids(kind).getOrDefault(plain(name), name);
    }

    /** What the thing of an id is called today. */
    String name(Kind kind, String id) {
        return find(kind, id).map(Thing::name).orElse(id);
    }

    Optional<Thing> find(Kind kind, String id) {
        return Optional.ofNullable(things(kind).get(id));
    }

    /** The thing that a folder knows by an id. */
    Optional<Thing> findGiven(Kind kind, String given) {
        return things(kind).values().stream()
                .filter(t -> t.given().equals(given))
                .findFirst()
                .or(() -> find(kind, given));
    }

    /** Today's name of a thing that may be told of by an earlier one. */
    String today(Kind kind, String name) {
        return name(kind, id(kind, name));
    }

    /** Whether every thing is called by its id. */
    boolean arePlain() {
        return byId.values().stream().allMatch(Map::isEmpty);
    }

    /** A key with ids in place of names. */
    Object key(Object match) {
        if (match instanceof Called c) {
            return id(c.kind(), c.text());
        }
        return match instanceof List<?> parts ? parts.stream().map(this::key).toList() : match;
    }

    static Called field(String name) {
        return new Called(Kind.FIELD, name);
    }

    static Called rig(String name) {
        return new Called(Kind.RIG, name);
    }

    static Called product(String name) {
        return new Called(Kind.PRODUCT, name);
    }
}
