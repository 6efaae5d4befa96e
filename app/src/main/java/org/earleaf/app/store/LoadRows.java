// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import org.earleaf.app.store.LoadStore.Kept;
import org.earleaf.app.store.Names.Kind;
import org.earleaf.load.LoadGround;
import org.earleaf.load.LoadState;
import org.earleaf.load.LotStock;
import org.earleaf.load.TankLoad;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.RowMapper;

/** Rows of loads and of what they draw; runs inside a transaction. */
final class LoadRows {
    private static final String COLUMNS = "select l.version, l.filed, l.body from tank_load l ";
    private final JdbcTemplate sql;

    LoadRows(JdbcTemplate sql) {
        this.sql = sql;
    }

    private RowMapper<Kept> kept() {
        Names names = Names.of(sql);
        return (row, k) -> {
            long filed = row.getLong(2);
            OptionalLong number = row.wasNull() ? OptionalLong.empty() : OptionalLong.of(filed);
            return new Kept(LoadJson.load(row.getString(3), names), row.getLong(1), number);
        };
    }

    List<Kept> all() {
        return sql.query(COLUMNS + "order by l.seq", kept());
    }

    Optional<Kept> find(String id) {
        return sql.query(COLUMNS + "where l.id = ?", kept(), id).stream().findFirst();
    }

    Optional<TankLoad> findVersion(String id, long version) {
        Names names = Names.of(sql);
        return sql
                .query(
                        "select body from tank_load_version where load = ? and version = ?",
                        (row, k) -> LoadJson.load(row.getString(1), names),
                        id,
                        version)
                .stream()
                .findFirst();
    }

    List<TankLoad> onField(String field) {
        return sql
                .query(
                        COLUMNS + "join load_ground g on g.load = l.id where g.field = ? order by l.seq",
                        kept(),
                        Names.of(sql).id(Kind.FIELD, field))
                .stream()
                .map(Kept::load)
                .distinct()
                .toList();
    }

    List<Kept> ofRig(String rig) {
        String id = Names.of(sql).id(Kind.RIG, rig);
        return sql.query(COLUMNS + "where lower(l.rig) = lower(?) order by l.seq", kept(), id);
    }

    Kept add(TankLoad load) {
        Names names = Names.of(sql);
        Long last = sql.queryForObject("select coalesce(max(seq), 0) from tank_load", Long.class);
        sql.update(
                "insert into tank_load (id, seq, version, state, rig, body) values (?, ?, 1, ?, ?, ?)",
                load.id(),
                last == null ? 1 : last + 1,
                word(load.state()),
                names.id(Kind.RIG, load.rig()),
                LoadJson.text(load, names));
        return history(new Kept(load, 1, OptionalLong.empty()));
    }

    Kept put(TankLoad load, Kept was) {
        Kept now = new Kept(load, was.version() + 1, was.filed());
        Names names = Names.of(sql);
        sql.update(
                "update tank_load set version = ?, state = ?, rig = ?, body = ? where id = ?",
                now.version(),
                word(load.state()),
                names.id(Kind.RIG, load.rig()),
                LoadJson.text(load, names),
                load.id());
        return history(now);
    }

    private Kept history(Kept now) {
        TankLoad load = now.load();
        Names names = Names.of(sql);
        sql.update(
                "insert into tank_load_version (load, version, body) values (?, ?, ?)",
                load.id(),
                now.version(),
                LoadJson.text(load, names));
        sql.update("delete from load_ground where load = ?", load.id());
        for (LoadGround g : load.grounds()) {
            sql.update(
                    "insert into load_ground (load, field, zone) values (?, ?, ?)",
                    load.id(),
                    names.id(Kind.FIELD, g.field()),
                    g.zone());
        }
        return now;
    }

    void filed(String id, long number) {
        sql.update("update tank_load set filed = ? where id = ?", number, id);
    }

    static String word(LoadState state) {
        return state.name().toLowerCase(Locale.ROOT);
    }

    /** What is free of every lot: on hand less what loads hold. */
    List<LotStock> free(List<org.earleaf.farm.Stock> shelf) {
        Names names = Names.of(sql);
        List<LotStock> free = new ArrayList<>();
        for (var s : shelf) {
            boolean mass = Double.isNaN(s.amount_L());
            Double held = sql.queryForObject(
                    "select coalesce(sum(amount), 0) from lot_draw where lower(product) = lower(?) and lot = ?"
                            + " and is_mass = ? and settled = 0",
                    Double.class,
                    names.id(Kind.PRODUCT, s.product()),
                    s.lot(),
                    mass ? 1 : 0);
            double onHand = mass ? s.amount_kg() : s.amount_L() / 1000;
            free.add(new LotStock(s.product(), s.lot(), onHand - (held == null ? 0 : held), mass));
        }
        return free;
    }

    void draw(String load, List<LotStock.Draw> draws) {
        Names names = Names.of(sql);
        for (LotStock.Draw d : draws) {
            sql.update(
                    "insert into lot_draw (load, product, lot, amount, is_mass) values (?, ?, ?, ?, ?)",
                    load,
                    names.id(Kind.PRODUCT, d.product()),
                    d.lot(),
                    d.amount(),
                    d.isMass() ? 1 : 0);
        }
    }

    void giveBack(String load) {
        sql.update("delete from lot_draw where load = ?", load);
    }

    List<LotStock.Draw> drawn(String load) {
        Names names = Names.of(sql);
        return sql.query(
                "select product, lot, amount, is_mass from lot_draw where load = ? order by product, lot",
                (row, k) -> new LotStock.Draw(
                        names.name(Kind.PRODUCT, row.getString(1)),
                        row.getString(2),
                        row.getDouble(3),
                        row.getInt(4) == 1),
                load);
    }
}
