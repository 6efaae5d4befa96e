// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.words.Dates;
import org.earleaf.brief.Brief;
import org.earleaf.decide.Option;
import org.earleaf.field.Zone;
import org.earleaf.units.Measure;

/** What would change the advice on a field, one sentence each. */
final class Changes {
    private Changes() {}

    private static String reading(Brief.ReadingWorthTaking r, Format format) {
        String because = decapital(format.say(r.because()));
        return Double.isNaN(r.worth_usdHa())
                ? tell("page.changes.a-reading", "take", format.say(r.take()), "because", because)
                : tell(
                        "page.changes.a-reading-worth",
                        "take",
                        format.say(r.take()),
                        "because",
                        because,
                        "moneyFine",
                        format.moneyFine(r.worth_usdHa()),
                        "areaName",
                        format.areaName());
    }

    private static String waiting(Option go, Format format) {
        return go.waitCost_usdHaDay() > 0
                ? tell(
                        "page.changes.a-day-lost-waiting-costs",
                        "moneyFine",
                        format.moneyFine(go.waitCost_usdHaDay()),
                        "areaName",
                        format.areaName())
                : tell("page.changes.nothing-is-lost-by-waiting");
    }

    static List<String> of(FarmDay day, Zone zone, Option go, Format format) {
        List<String> all = new ArrayList<>();
        double pays = go.worth().breakEvenCorn_usdBu();
        double now = day.farm().prices().corn_usdBu();
        if (go.worth().mean_usdHa() > 0 && pays > 0 && pays < now) {
            all.add(tell("page.changes.corn-below-a-bushel-then", "pays", Format.number(pays, 2)));
        } else if (go.worth().mean_usdHa() <= 0 && pays > now && !Double.isInfinite(pays)) {
            all.add(tell("page.changes.corn-above-a-bushel-then", "pays", Format.number(pays, 2)));
        }
        day.outlook(zone).reach().stream()
                .filter(r -> r.rig().equals(go.rig()) && r.date().isPresent())
                .flatMap(r -> r.lastDay().stream())
                .findFirst()
                .ifPresent(
                        d -> all.add(tell("page.changes.the-calendar-after-corn", "d", Dates.day(d), "rig", go.rig())));
        day.brief().readings().stream()
                .filter(r -> r.field().equals(zone.field()) && r.zone().equals(zone.zone()))
                .forEach(r -> all.add(reading(r, format)));
        go.then()
                .ifPresent(t -> all.add(tell(
                        "page.changes.rain-until-about-it-decides",
                        "date",
                        Dates.day(t.date()),
                        "chance",
                        Measure.CHANCE.of(t.chance()))));
        all.add(waiting(go, format));
        return all;
    }

    private static String decapital(String sentence) {
        return sentence.isEmpty()
                ? sentence
                : sentence.substring(0, 1).toLowerCase(java.util.Locale.US) + sentence.substring(1);
    }
}
