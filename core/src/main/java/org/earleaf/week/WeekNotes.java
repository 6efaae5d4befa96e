// SPDX-License-Identifier: Apache-2.0
package org.earleaf.week;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.earleaf.decide.Option;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Rig;
import org.earleaf.farm.Stock;
import org.earleaf.outlook.DryDays;
import org.earleaf.units.Units;

/** What a plan of the week was made with for lack of a figure, and what somebody must look after. */
record WeekNotes(Farm farm, List<FieldPass> passes, List<Rig> rigs, Places places, List<DryDays.Course> weather) {
    List<String> all() {
        List<String> all = new ArrayList<>();
        all.add("The yard is taken to lie at the farm's own latitude and longitude; roads run north, south, east and"
                + " west.");
        String lost = passes.stream()
                .filter(p -> !places.isKnown(p.zone()))
                .map(p -> p.zone().label())
                .distinct()
                .collect(Collectors.joining(", "));
        if (!lost.isEmpty()) {
            all.add("No outline of " + lost + ": taken to lie 2 mi from the yard.");
        }
        rigs.stream()
                .filter(r -> !WorkTime.isPaceTold(r))
                .forEach(r -> all.add("The " + r.name() + " is taken to do 40 ac/h."));
        all.add(
                farm.rigs().stream().anyMatch(Rig::isTender)
                        ? "Every rig has a driver, and the tender one of its own. What is waited for it is in the times: it"
                                + " drives the same way whichever field it serves, and over a day brings no more than it"
                                + " can carry."
                        : "There is no tender: rigs drive home for every further load.");
        all.add("Passes on one field are kept a day apart. Re-entry, the label's days between passes and its season's"
                + " limit are held at the load; the label decides.");
        all.addAll(shortOf());
        return all;
    }

    /** Nitrogen that the stock does not cover. */
    private List<String> shortOf() {
        List<Option> best =
                passes.stream().map(FieldPass::best).filter(Option::isNitrogen).toList();
        return best.stream()
                .map(Option::product)
                .distinct()
                .flatMap(product -> shortOf(product, best))
                .toList();
    }

    private Stream<String> shortOf(String product, List<Option> best) {
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
                : Stream.of(String.format(
                        Locale.ROOT,
                        "%s: the plan takes %,.0f gal, in stock are %,.0f gal.",
                        product,
                        needed_L / Units.L_PER_GAL,
                        have_L / Units.L_PER_GAL));
    }
}
