// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.earleaf.app.store.Names.Kind;
import org.earleaf.entry.NameEntry;
import org.earleaf.load.Calibrated;
import org.earleaf.rig.Calibration;
import org.earleaf.rig.CatchTest;

/** Catch tests of the farm's rigs, each as it was entered. */
public final class Catches implements Calibrated.Outlets {
    private static final double LMIN_PER_M3S = 60_000;
    private static final double KGL = 1000;

    private final Database db;

    Catches(Database db) {
        this.db = db;
    }

    /**
     * One test.
     *
     * @param outlet nozzle size and pressure, in words
     * @param rated_m3s what each outlet should give at the pressure of the catch
     * @param density_kgM3 of what was caught
     */
    public record Caught(
            String rig,
            Instant at,
            String person,
            String outlet,
            double rated_m3s,
            List<Double> flows_m3s,
            double density_kgM3) {
        public Caught {
            flows_m3s = List.copyOf(flows_m3s);
        }

        public CatchTest.Result read() {
            return CatchTest.read(
                    flows_m3s.stream().mapToDouble(Double::doubleValue).toArray(), rated_m3s);
        }
    }

    /** Keeps a test behind those before it; refused when it cannot be read or nobody is named. */
    public void keep(Caught test) {
        String person = NameEntry.person(test.person(), "person");
        test.read();
        String flows = test.flows_m3s().stream()
                .map(f -> String.valueOf(f * LMIN_PER_M3S))
                .collect(Collectors.joining(" "));
        db.inTransaction(() -> db.sql()
                .update(
                        "insert into catch_test (seq, rig, caught, person, outlet, rated, flows, density)"
                                + " select coalesce(max(seq), 0) + 1, ?, ?, ?, ?, ?, ?, ? from catch_test",
                        Names.of(db.sql()).id(Kind.RIG, test.rig()),
                        test.at().toString(),
                        person,
                        test.outlet(),
                        test.rated_m3s() * LMIN_PER_M3S,
                        flows,
                        test.density_kgM3() / KGL));
    }

    /** Notes that nozzles or plates of a rig were changed: what was caught before no longer holds. */
    public void changed(String rig, String said, String person, Instant at) {
        String who = NameEntry.person(person, "person");
        String what = NameEntry.told(said, rig);
        db.inTransaction(() -> db.sql()
                .update(
                        "insert into outlet_change (seq, rig, at, person, said)"
                                + " select coalesce(max(seq), 0) + 1, ?, ?, ?, ? from outlet_change",
                        Names.of(db.sql()).id(Kind.RIG, rig),
                        at.toString(),
                        who,
                        what));
    }

    @Override
    public Optional<Calibration> findCatch(String rig) {
        return findNewest(rig).map(c -> new Calibration(c.at(), c.density_kgM3()));
    }

    @Override
    public Optional<Instant> findChange(String rig) {
        return db.reading(() -> db
                .sql()
                .queryForList(
                        "select at from outlet_change where lower(rig) = lower(?) order by seq",
                        String.class,
                        Names.of(db.sql()).id(Kind.RIG, rig))
                .stream()
                .map(Instant::parse)
                .reduce((before, after) -> after));
    }

    /** The newest test of a rig. */
    public Optional<Caught> findNewest(String rig) {
        return all().stream().filter(c -> c.rig().equalsIgnoreCase(rig)).reduce((before, after) -> after);
    }

    public List<Caught> all() {
        return db.reading(() -> all(Names.of(db.sql())));
    }

    private List<Caught> all(Names names) {
        return db.sql()
                .query(
                        "select rig, caught, person, outlet, rated, flows, density from catch_test order by seq",
                        (row, k) -> new Caught(
                                names.name(Kind.RIG, row.getString(1)),
                                Instant.parse(row.getString(2)),
                                row.getString(3),
                                row.getString(4),
                                row.getDouble(5) / LMIN_PER_M3S,
                                Arrays.stream(row.getString(6).split(" "))
                                        .map(f -> Double.parseDouble(f) / LMIN_PER_M3S)
                                        .toList(),
                                row.getDouble(7) * KGL));
    }
}
