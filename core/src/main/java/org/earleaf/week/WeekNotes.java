// SPDX-License-Identifier: Apache-2.0
package org.earleaf.week;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.earleaf.decide.Option;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Rig;
import org.earleaf.farm.Stock;
import org.earleaf.outlook.DryDays;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/** What a plan of the week was made with for lack of a figure, and what somebody must look after. */
record WeekNotes(Farm farm, List<FieldPass> passes, List<Rig> rigs, Places places, List<DryDays.Course> weather) {
    private static final double L_PER_M3 = 1000;

    List<Said> all() {
        List<Said> all = new ArrayList<>();
        all.add(Said.of("week.yard"));
        List<String> lost = passes.stream()
                .filter(p -> !places.isKnown(p.zone()))
                .map(p -> p.zone().label())
                .distinct()
                .toList();
        if (!lost.isEmpty()) {
            all.add(Said.of("week.no-outline", "fields", lost, "way", Measure.DISTANCE.of(Places.UNKNOWN_M)));
        }
        rigs.stream()
                .filter(r -> !WorkTime.isPaceTold(r))
                .forEach(r ->
                        all.add(Said.of("week.pace", "rig", r.name(), "area", Measure.AREA.of(WorkTime.HIRED_HA_H))));
        all.add(Said.of(farm.rigs().stream().anyMatch(Rig::isTender) ? "week.tender" : "week.no-tender"));
        all.add(Said.of("week.passes-apart"));
        all.addAll(shortOf());
        return all;
    }

    /** Nitrogen that the stock does not cover; where nobody counted any stock nothing is said of it. */
    private List<Said> shortOf() {
        if (farm.shelf().stock().isEmpty()) {
            return List.of();
        }
        List<Option> best =
                passes.stream().map(FieldPass::best).filter(Option::isNitrogen).toList();
        return best.stream()
                .map(Option::product)
                .distinct()
                .flatMap(product -> shortOf(product, best))
                .toList();
    }

    private Stream<Said> shortOf(String product, List<Option> best) {
        double needed_L = 0;
        for (FieldPass p : passes) {
            Option o = p.best();
            needed_L +=
                    best.contains(o) && o.product().equals(product) && o.liquid() ? o.productRate() * p.area_ha() : 0;
        }
        double have_L = farm.shelf().stock().stream()
                .filter(s -> s.product().equalsIgnoreCase(product))
                .mapToDouble(Stock::amount_L)
                .filter(l -> l > 0)
                .sum();
        return needed_L <= have_L
                ? Stream.empty()
                : Stream.of(Said.of(
                        "alarm.short-of",
                        "product",
                        product,
                        "needed",
                        Measure.VOLUME.of(needed_L / L_PER_M3),
                        "have",
                        Measure.VOLUME.of(have_L / L_PER_M3)));
    }
}
