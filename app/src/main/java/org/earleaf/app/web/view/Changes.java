// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.text.Format;
import org.earleaf.decide.Option;
import org.earleaf.field.Zone;

/** What would change the advice on a field, one sentence each. */
final class Changes {
    private Changes() {}

    static List<String> of(FarmDay day, Zone zone, Option go, Format format) {
        List<String> all = new ArrayList<>();
        double pays = go.worth().breakEvenCorn_usdBu();
        double now = day.farm().prices().corn_usdBu();
        if (go.worth().mean_usdHa() > 0 && pays > 0 && pays < now) {
            all.add("Corn below $" + Format.number(pays, 2) + " a bushel: then it no longer pays on average.");
        } else if (go.worth().mean_usdHa() <= 0 && pays > now && !Double.isInfinite(pays)) {
            all.add("Corn above $" + Format.number(pays, 2) + " a bushel: then it would pay on average.");
        }
        day.outlook(zone).reach().stream()
                .filter(r -> r.rig().equals(go.rig()) && r.date().isPresent())
                .flatMap(r -> r.lastDay().stream())
                .findFirst()
                .ifPresent(d -> all.add(
                        "The calendar: after " + Format.date(d) + " corn is too tall for the " + go.rig() + "."));
        day.brief().readings().stream()
                .filter(r -> r.field().equals(zone.field()) && r.zone().equals(zone.zone()))
                .forEach(r -> all.add("A reading, " + format.say(r.take()) + ": " + decapital(format.say(r.because()))
                        + (Double.isNaN(r.worth_usdHa())
                                ? ""
                                : " On average it is worth " + format.moneyFine(r.worth_usdHa()) + " "
                                        + format.areaName() + ".")));
        go.then()
                .ifPresent(t -> all.add("Rain until about " + Format.date(t.date())
                        + ": it decides whether a second pass follows, in " + Format.chance(t.chance()) + " futures."));
        all.add(
                go.waitCost_usdHaDay() > 0
                        ? "A day lost: waiting costs " + format.moneyFine(go.waitCost_usdHaDay()) + " "
                                + format.areaName() + " a day."
                        : "Nothing is lost by waiting a day.");
        return all;
    }

    private static String decapital(String sentence) {
        return sentence.isEmpty()
                ? sentence
                : sentence.substring(0, 1).toLowerCase(java.util.Locale.US) + sentence.substring(1);
    }
}
