// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.util.List;
import java.util.stream.Collectors;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.HeldDay;
import org.earleaf.app.desk.Wiring;
import org.earleaf.app.store.FarmStore;
import org.earleaf.farm.Farm;
import org.earleaf.field.Zone;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/** Where a command finds its farm and its fields. */
final class FarmSource {
    private FarmSource() {}

    static Farm farm(Wiring wiring, Common common) {
        if (common.findFolder().isPresent()) {
            return wiring.folders().farm(common.findFolder().get());
        }
        try (FarmStore store = FarmStore.open(common.farm())) {
            return store.farm();
        }
    }

    static FarmDay day(Wiring wiring, Common common, boolean hindsight) {
        if (common.findFolder().isPresent()) {
            return day(wiring, common, farm(wiring, common), hindsight);
        }
        try (FarmStore store = FarmStore.open(common.farm())) {
            FarmDay day = day(wiring, common, store.farm(), hindsight);
            return store.handed()
                    .findNewest()
                    .map(held -> (FarmDay) new HeldDay(day, held.passes()))
                    .orElse(day);
        }
    }

    private static FarmDay day(Wiring wiring, Common common, Farm farm, boolean hindsight) {
        return wiring.day(farm, common.findOn().orElseGet(() -> wiring.today(farm)), hindsight);
    }

    /** Commands that write have no use for a folder. */
    static void refuseFolder(Common common, String command) {
        if (common.findFolder().isPresent()) {
            throw new EarleafException(Problem.of(
                    "farm-source.a-database-since-stores",
                    Said.text("--folder"),
                    Said.text(common.findFolder().get().toString()),
                    "command",
                    command));
        }
    }

    /** Zones of a field, or the one zone named "Field, zone". */
    static List<Zone> zones(Farm farm, String name) {
        List<Zone> zones = farm.zonesOf(name);
        if (zones.isEmpty()) {
            zones = farm.zones().stream()
                    .filter(z -> z.label().equalsIgnoreCase(name.trim()))
                    .toList();
        }
        if (zones.isEmpty()) {
            throw new EarleafException(Problem.of(
                    "farm-source.one-of",
                    Said.text("field"),
                    Said.text("\"" + name + "\""),
                    "list",
                    farm.zones().stream().map(Zone::field).distinct().collect(Collectors.joining(", "))));
        }
        return zones;
    }
}
