// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.earleaf.app.store.Names.Kind;
import org.earleaf.app.store.Names.Thing;
import org.earleaf.entry.NameEntry;
import org.earleaf.farm.Farm;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.springframework.jdbc.core.JdbcTemplate;

/** What things are called, as people and folders tell it; runs inside a transaction. */
final class Things {

    private final JdbcTemplate sql;

    Things(JdbcTemplate sql) {
        this.sql = sql;
    }

    /**
     * Calls a thing otherwise. Everything that was stored of it goes with it; what was filed stays as filed.
     *
     * @param name today's
     */
    void rename(Kind kind, String name, String other) {
        Names names = Names.of(sql);
        String id = names.id(kind, name);
        Set<String> ids = ids(kind);
        if (!ids.contains(id)) {
            throw EarleafException.coded("name.unknown", kind.word(), name, "kind", kind.word());
        }
        String called = other.strip();
        NameEntry.check(called, kind.word());
        for (String known : ids) {
            boolean taken = called.equalsIgnoreCase(known)
                    || names.id(kind, called).equals(known)
                    || called.equalsIgnoreCase(names.name(kind, known));
            if (!known.equals(id) && taken) {
                throw new EarleafException(Problem.of(
                        "name.taken",
                        Said.of("where.name-of", "kind", kind.word(), "name", name),
                        Said.of("found.taken-name", "called", called, "kind", kind.word())));
            }
        }
        put(new Thing(kind, id, called, names.find(kind, id).map(Thing::given).orElse("")), names);
    }

    private void put(Thing t, Names before) {
        sql.update(
                "insert into thing (kind, id, name, given) values (?, ?, ?, ?) on conflict (kind, id) do update set"
                        + " name = excluded.name, given = excluded.given",
                t.kind().word(),
                t.id(),
                t.name(),
                t.given());
        String was = before.name(t.kind(), t.id());
        if (!was.equals(t.name()) && !was.equals(t.id())) {
            sql.update(
                    "insert into former_name (kind, name, id) values (?, ?, ?) on conflict (kind, name) do update set"
                            + " id = excluded.id",
                    t.kind().word(),
                    was,
                    t.id());
        }
    }

    private Set<String> ids(Kind kind) {
        return new HashSet<>(sql.queryForList(
                switch (kind) {
                    case FIELD -> "select field from zone";
                    case RIG -> "select name from rig";
                    case PRODUCT -> "select name from product union select name from nitrogen_product";
                },
                String.class));
    }

    /**
     * Takes what a folder calls its things. One that it knows by an id is called what the folder calls it; one that it
     * knows by name alone keeps the name it has here, when it was renamed here and the folder still has an earlier one.
     *
     * @return what is called otherwise from now on
     */
    List<Difference> learn(Farm farm) {
        List<Difference> renamed = new ArrayList<>();
        Map<String, String> fields = new LinkedHashMap<>();
        farm.zones().forEach(z -> fields.putIfAbsent(z.field(), z.id().field().text()));
        Map<String, String> rigs = new LinkedHashMap<>();
        farm.rigs().forEach(r -> rigs.putIfAbsent(r.name(), r.id().text()));
        Map<String, String> products = new LinkedHashMap<>();
        farm.products().forEach(p -> products.putIfAbsent(p.name(), p.id().text()));
        Stream.concat(
                        farm.shelf().nitrogen().stream(),
                        farm.products().stream().flatMap(p -> Stream.ofNullable(p.nitrogen())))
                .map(NitrogenProduct::name)
                .forEach(n -> products.putIfAbsent(n, n));
        learn(Kind.FIELD, fields, renamed);
        learn(Kind.RIG, rigs, renamed);
        learn(Kind.PRODUCT, products, renamed);
        return renamed;
    }

    /** @param told ids by the folder's names; a thing without an id has its name there */
    private void learn(Kind kind, Map<String, String> told, List<Difference> renamed) {
        Names names = Names.of(sql);
        Set<String> ids = ids(kind);
        List<Thing> now = new ArrayList<>();
        Set<String> spoken = new HashSet<>();
        told.forEach((name, given) -> {
            if (isTold(name, given)) {
                Thing thing = known(kind, name, given, names, ids);
                now.add(thing);
                spoken.add(thing.id());
            } else if (isCalled(kind, name, names, ids)) {
                spoken.add(names.id(kind, name));
            }
        });
        // A name that a thing had once, and that the folder now gives to another beside it, is a new thing's.
        told.forEach((name, given) -> {
            String id = names.id(kind, name);
            if (!isTold(name, given) && !isCalled(kind, name, names, ids) && spoken.contains(id)) {
                now.add(new Thing(kind, Ids.next(), name, ""));
            }
        });
        now.forEach(t -> tell(t, names, ids).ifPresent(renamed::add));
        keep(now, names);
    }

    private static boolean isTold(String name, String given) {
        return !name.equals(given);
    }

    private static boolean isCalled(Kind kind, String name, Names names, Set<String> ids) {
        String id = names.id(kind, name);
        return ids.contains(id) && names.name(kind, id).equalsIgnoreCase(name);
    }

    /** A thing that the folder knows by an id: by that here too, or by its name until now, or new. */
    private static Thing known(Kind kind, String name, String given, Names names, Set<String> ids) {
        Optional<Thing> known = names.findGiven(kind, given);
        if (known.isPresent()) {
            return new Thing(kind, known.get().id(), name, given);
        }
        boolean byName = !ids.contains(given) && isCalled(kind, name, names, ids);
        return new Thing(kind, byName ? names.id(kind, name) : given, name, given);
    }

    private static Optional<Difference> tell(Thing now, Names names, Set<String> ids) {
        String before = names.name(now.kind(), now.id());
        return !ids.contains(now.id()) || before.equals(now.name())
                ? Optional.empty()
                : Optional.of(new Difference(
                        now.kind().word() + " " + now.name(), "name", metric -> before, metric -> now.name(), ""));
    }

    /** First out of each other's way: names may be exchanged. */
    private void keep(List<Thing> now, Names names) {
        now.stream()
                .filter(t -> names.find(t.kind(), t.id()).isPresent())
                .forEach(t -> sql.update(
                        "update thing set name = ? where kind = ? and id = ?",
                        t.id() + "\n" + t.name().toLowerCase(Locale.ROOT),
                        t.kind().word(),
                        t.id()));
        now.forEach(t -> put(t, names));
    }
}
