// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.earleaf.app.store.LoadStore.Kept;
import org.earleaf.load.LoadRules;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Random histories of loads that several people reserve, change, mix, hand over and cancel at once. Afterwards a checker
 * that knows nothing of the store's rules adds up what the file holds. {@code -Dearleaf.histories=10000} tries as many.
 */
class LoadHistoriesTest {
    private static final int HISTORIES = Integer.getInteger("earleaf.histories", 60);
    private static final int PEOPLE = 3;
    private static final String[] RIGS = {"highboy", "second rig"};

    @TempDir
    Path folder;

    private final AtomicInteger refused = new AtomicInteger();
    private final AtomicInteger stale = new AtomicInteger();

    @Test
    void no_season_lot_or_tank_is_passed_and_no_change_is_lost_in_any_history() throws Exception {
        Path file = folder.resolve("earleaf.db");
        ExecutorService people = Executors.newFixedThreadPool(PEOPLE);
        List<String> faults = new ArrayList<>();
        int acknowledged = 0;
        try (FarmStore store = FarmStore.create(file);
                Connection raw = DriverManager.getConnection("jdbc:sqlite:" + file + "?busy_timeout=10000")) {
            FarmStoreTest.put(store, Tanks.farm());
            store.loads().keep(Tanks.label());
            for (int h = 0; h < HISTORIES; h++) {
                wipe(raw);
                Map<String, AtomicInteger> done = history(store.loads(), people, h);
                acknowledged +=
                        done.values().stream().mapToInt(AtomicInteger::get).sum();
                Checker.check(raw, done, "history " + h + ": ", faults);
            }
        } finally {
            people.shutdown();
        }
        System.out.println(HISTORIES + " histories tried, " + faults.size() + " broken; " + acknowledged
                + " steps done, " + refused + " refused, " + stale + " on an older version");
        assertThat(faults).isEmpty();
        assertThat(refused.get()).isPositive();
        assertThat(stale.get()).isPositive();
    }

    private static void wipe(Connection raw) throws SQLException {
        try (Statement s = raw.createStatement()) {
            for (String table :
                    new String[] {"lot_draw", "load_ground", "tank_load_version", "tank_load", "mix_note"}) {
                s.executeUpdate("delete from " + table);
            }
        }
    }

    /** Steps acknowledged, by load. */
    private Map<String, AtomicInteger> history(LoadStore loads, ExecutorService people, int seed) throws Exception {
        SplittableRandom random = new SplittableRandom(seed);
        int count = 2 + random.nextInt(4);
        Map<String, AtomicInteger> done = new ConcurrentHashMap<>();
        for (int k = 0; k < count; k++) {
            String id = "l" + k;
            loads.add(Tanks.load(
                    id,
                    "job " + random.nextInt(3),
                    RIGS[random.nextInt(2)],
                    3 + 8 * random.nextDouble(),
                    .3 + .7 * random.nextDouble(),
                    300 + random.nextInt(900)));
            done.put(id, new AtomicInteger());
        }
        // All look at one load before any of them changes it: whoever comes second holds an older version, on any
        // machine.
        CyclicBarrier looked = new CyclicBarrier(PEOPLE);
        List<Future<?>> works = new ArrayList<>();
        for (int p = 0; p < PEOPLE; p++) {
            SplittableRandom own = random.split();
            String person = "person " + p;
            works.add(people.submit(() -> {
                Kept first = loads.get("l0");
                looked.await(1, TimeUnit.MINUTES);
                attempt(loads, first, own, person, done);
                work(loads, own, count, person, done);
                return person;
            }));
        }
        for (Future<?> w : works) {
            w.get();
        }
        return done;
    }

    private void work(
            LoadStore loads, SplittableRandom random, int count, String person, Map<String, AtomicInteger> done) {
        for (int k = 0; k < 5; k++) {
            attempt(loads, loads.get("l" + random.nextInt(count)), random, person, done);
        }
    }

    private void attempt(
            LoadStore loads, Kept seen, SplittableRandom random, String person, Map<String, AtomicInteger> done) {
        try {
            if (step(loads, seen, random, person, done)) {
                done.get(seen.load().id()).incrementAndGet();
            }
        } catch (EarleafException e) {
            refused.incrementAndGet();
        } catch (StaleLoad e) {
            stale.incrementAndGet();
        }
    }

    private boolean step(
            LoadStore loads, Kept seen, SplittableRandom random, String person, Map<String, AtomicInteger> done) {
        String id = seen.load().id();
        long v = seen.version();
        int dice = random.nextInt(10);
        switch (seen.load().state()) {
            case PLANNED, RESERVED -> {
                if (dice == 0) {
                    loads.cancel(id, v, "rain", person, Tanks.T);
                } else if (dice == 1) {
                    loads.edit(
                            id,
                            v,
                            Tanks.load(
                                    id,
                                    seen.load().job(),
                                    RIGS[random.nextInt(2)],
                                    3 + 9 * random.nextDouble(),
                                    1,
                                    900),
                            person,
                            Tanks.T);
                } else if (seen.load().state() == org.earleaf.load.LoadState.PLANNED) {
                    loads.reserve(id, v, person, Tanks.T);
                } else {
                    loads.mixing(id, v, Tanks.LOOKED, person, Tanks.T);
                }
            }
            case MIXING -> {
                if (seen.load().lines().get(0).isIn()) {
                    loads.mixed(id, v, Tanks.DAY, true, person, Tanks.T);
                } else {
                    loads.key(id, v, 1, Tanks.key(seen.load(), person));
                }
            }
            case MIXED -> {
                String other = id + "'" + v;
                if (dice < 4 && id.length() == 2) {
                    done.put(other, new AtomicInteger());
                    try {
                        loads.handOver(
                                id,
                                v,
                                seen.load().volume_m3() / 3,
                                new LoadRules.Other(other, RIGS[dice % 2]),
                                person,
                                Tanks.T);
                    } catch (RuntimeException e) {
                        done.remove(other);
                        throw e;
                    }
                } else {
                    loads.applied(id, v, person, Tanks.T);
                }
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    /** Adds up what stands in the file with its own arithmetic, in gallons, acres and fluid ounces. */
    private static final class Checker {
        private static final JsonMapper JSON = new JsonMapper();
        private static final Set<String> HOLDING = Set.of("reserved", "mixing", "mixed", "applied");
        private static final double FLOZ_AC_IN_LHA = 128 / Units.LHA_PER_GALAC;

        static void check(Connection raw, Map<String, AtomicInteger> done, String where, List<String> faults)
                throws SQLException {
            Map<String, double[]> jobs = new HashMap<>();
            double stock_gal = 0;
            Map<String, Integer> tanks = new HashMap<>();
            Set<String> seen = new HashSet<>();
            try (Statement s = raw.createStatement();
                    ResultSet r = s.executeQuery("select id, version, state, body from tank_load")) {
                while (r.next()) {
                    String id = r.getString(1);
                    seen.add(id);
                    int acknowledged =
                            done.getOrDefault(id, new AtomicInteger(-99)).get();
                    if (r.getInt(2) != 1 + acknowledged) {
                        faults.add(where + id + " is version " + r.getInt(2) + " after " + acknowledged + " steps");
                    }
                    JsonNode load = JSON.readTree(r.getString(4));
                    if (!HOLDING.contains(r.getString(3))) {
                        continue;
                    }
                    JsonNode line = load.get("lines").get(0);
                    JsonNode keys = line.get("keys");
                    double planned = line.get("planned").get("inside").asDouble();
                    double in = keys.isEmpty()
                            ? planned
                            : keys.get(keys.size() - 1).get("measured").asDouble();
                    double flozAc = line.get("perHa").asDouble() * in / planned * FLOZ_AC_IN_LHA;
                    double share = load.get("grounds").get(0).get("area_ha").asDouble() / 32;
                    double[] job = jobs.computeIfAbsent(load.get("job").asString(), j -> new double[2]);
                    job[0] = Math.max(job[0], flozAc);
                    job[1] += flozAc * share;
                    stock_gal += in / Units.M3_PER_GAL;
                    if (load.get("volume_m3").asDouble() > 3.8000001
                            && load.get("rig").asString().equals("highboy")) {
                        faults.add(where + id + " overfills the tank");
                    }
                    if (Set.of("mixing", "mixed").contains(r.getString(3))) {
                        tanks.merge(load.get("rig").asString(), 1, Integer::sum);
                    }
                }
            }
            if (!seen.equals(done.keySet())) {
                faults.add(where + "loads " + seen + " where " + done.keySet() + " were made");
            }
            double season = jobs.values().stream()
                    .mapToDouble(j -> Math.max(j[0], j[1]))
                    .sum();
            if (season > 20.000001) {
                faults.add(where + season + " fl oz/ac on a season of 20");
            }
            if (jobs.size() > 3) {
                faults.add(where + jobs.size() + " passes of 3");
            }
            if (stock_gal > 14.000001) {
                faults.add(where + stock_gal + " gal out of 14");
            }
            tanks.forEach((rig, n) -> {
                if (n > 1) {
                    faults.add(where + n + " loads in the tank of the " + rig);
                }
            });
            draws(raw, stock_gal, where, faults);
        }

        private static void draws(Connection raw, double held_gal, String where, List<String> faults)
                throws SQLException {
            try (Statement s = raw.createStatement();
                    ResultSet r = s.executeQuery("select lot, sum(amount) from lot_draw group by lot")) {
                double sum = 0;
                while (r.next()) {
                    double gal = r.getDouble(2) / Units.M3_PER_GAL;
                    sum += gal;
                    if (gal > (r.getString(1).equals("A") ? 8.000001 : 6.000001)) {
                        faults.add(where + gal + " gal out of lot " + r.getString(1));
                    }
                }
                if (Math.abs(sum - held_gal) > 1e-6) {
                    faults.add(where + "lots gave " + sum + " gal, loads hold " + held_gal);
                }
            }
        }
    }
}
