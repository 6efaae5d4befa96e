// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import org.earleaf.pressure.AphidModel;
import org.earleaf.pressure.AphidSighting;
import org.earleaf.pressure.CropAhead;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.pressure.ProtectionCase;
import org.earleaf.pressure.ProtectionOption;

/** Whether aphids are there, and what an option changes about what they take. */
final class AphidOutlook {
    private final ProtectionCase c;
    private final double chance;
    private final AphidModel model;
    private final Map<Sprayed, Map<CropAhead, Double>> known = new HashMap<>();

    private record Sprayed(LocalDate date, boolean fungicide, boolean insecticide, boolean enemiesKilled) {}

    AphidOutlook(ProtectionCase c) {
        this.c = c;
        boolean found = c.aphids().filter(a -> a.mean() > 0).isPresent();
        chance = found
                ? 1
                : c.settings()
                        .of(
                                c.aphids().isPresent()
                                        ? ProtectionAssumption.APHIDS_NONE
                                        : ProtectionAssumption.APHIDS_UNSEEN);
        double start = found ? c.aphids().orElseThrow().mean() : c.settings().of(ProtectionAssumption.APHIDS_START);
        double enemies = c.aphids().map(AphidSighting::enemies).orElse(0.0);
        model = new AphidModel(
                start,
                enemies,
                c.settings().of(ProtectionAssumption.HUMID_DAYS),
                c.site().drought(),
                c.settings());
    }

    /** Chance that there are aphids at all. */
    double chance() {
        return chance;
    }

    /** Dry grain [kg/ha] gained, or lost where the value is below 0, in one future if they are there. */
    double gained_kgHa(CropAhead future, ProtectionOption o) {
        double without = loss_kgHa(future, o.date(), false, false, false);
        double with = loss_kgHa(
                future, o.date(), o.fungicide().isPresent(), o.insecticide().isPresent(), o.killsEnemies());
        return without - with;
    }

    /** Mean over the futures [kg/ha] of what the insecticide of an option saves beside what else goes with it. */
    double saved_kgHa(ProtectionOption o) {
        boolean fungicide = o.fungicide().isPresent();
        return chance
                * c.futures().stream()
                        .mapToDouble(f -> loss_kgHa(f, o.date(), fungicide, false, false)
                                - loss_kgHa(
                                        f, o.date(), fungicide, o.insecticide().isPresent(), o.killsEnemies()))
                        .average()
                        .orElse(0);
    }

    /** What aphids take after such a pass, worked out once. */
    private double loss_kgHa(
            CropAhead future, LocalDate from, boolean fungicide, boolean insecticide, boolean enemiesKilled) {
        return known.computeIfAbsent(
                        new Sprayed(from, fungicide, insecticide, enemiesKilled), k -> new IdentityHashMap<>())
                .computeIfAbsent(future, f -> model.loss_kgHa(f, from, fungicide, insecticide, enemiesKilled));
    }

    /** Mean over the futures of what the fungicide alone would lose by letting aphids off their fungi; 0 or more. */
    double flare_kgHa(ProtectionOption o) {
        return chance
                * c.futures().stream()
                        .mapToDouble(f -> loss_kgHa(f, o.date(), true, false, false)
                                - loss_kgHa(f, o.date(), false, false, false))
                        .average()
                        .orElse(0);
    }
}
