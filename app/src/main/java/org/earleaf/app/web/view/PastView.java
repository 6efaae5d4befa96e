// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.field.PastYear;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Zone;
import org.earleaf.outlook.PastYields;
import org.earleaf.units.Measure;

/**
 * What a field grew in the years before this season, newest first, and what a further year is entered by.
 *
 * @param level what its yields say of this season, a sentence each
 * @param crops by the word that is sent
 */
public record PastView(Where where, List<Row> rows, List<Markup> level, Map<String, String> crops, Units units) {
    /** @param zone empty: the field is one zone */
    public record Where(String name, String place, String zone) {}

    /** @param zone for which it was told; empty: the whole field */
    public record Row(String year, String crop, String yield, String nitrogen, String zone) {}

    /** Of numbers with none behind them, as they are shown and as they are sent. */
    public record Units(String yield, String yieldSent, String nitrogen, String nitrogenSent) {}

    public static PastView of(FarmDay day, Zone zone, Format format) {
        Map<String, String> crops = new LinkedHashMap<>();
        for (PreviousCrop crop : PreviousCrop.values()) {
            crops.put(crop.word(), format.say(crop));
        }
        return new PastView(
                new Where(zone.label(), Places.of(day.farm()).of(zone), zone.zone()),
                day.farm().past(zone).stream().map(p -> row(p, format)).toList(),
                PastYields.of(day.farm(), zone).said().stream()
                        .map(format::markup)
                        .toList(),
                crops,
                new Units(
                        format.yieldUnit(),
                        format.typed("bu/ac", "t/ha"),
                        format.nitrogenUnit(),
                        format.typed("lb N/ac", "kg N/ha")));
    }

    private static Row row(PastYear p, Format format) {
        return new Row(
                String.valueOf(p.year()),
                format.say(p.crop()),
                p.hasYield() ? format.words().say(Measure.YIELD.of(p.yield_kgHa())) : "",
                p.hasNitrogen() ? format.words().say(Measure.NITROGEN_RATE.of(p.nitrogen_kgHa())) : "",
                p.zone());
    }
}
