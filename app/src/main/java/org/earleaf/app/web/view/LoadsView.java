// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.Amounts;
import org.earleaf.app.FarmDay;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.decide.Option;
import org.earleaf.field.Zone;
import org.earleaf.units.EarleafException;

/** What would have to be loaded for the passes that are proposed. */
public record LoadsView(String date, Markup headline, List<Row> rows) {
    /** @param loads how many of what size, or why none */
    public record Row(String when, String name, String place, String choice, Markup what, String rig, String loads) {}

    public static LoadsView of(FarmDay day, Format format) {
        Places places = Places.of(day.farm());
        List<Row> rows = new ArrayList<>();
        int now = 0;
        for (Option o : day.brief().passes().stream().filter(Option::isNitrogen).toList()) {
            Optional<Zone> zone = places.find(places.of(o.field(), o.zone()));
            if (zone.isPresent()) {
                now += o.date().isAfter(day.on()) ? 0 : 1;
                rows.add(row(day, zone.get(), o, places, format));
            }
        }
        return new LoadsView(Format.longDay(day.on()), headline(now, rows.size()), rows);
    }

    private static Markup headline(int now, int all) {
        if (all == 0) {
            return new Say().sentence("Nothing to load: no pass is proposed.").done();
        }
        return now == 0
                ? new Say()
                        .sentence("Today", " nothing to load.")
                        .sentence(Words.capital(Words.count(all, "pass").replace("passs", "passes"))
                                + " in the next days.")
                        .done()
                : new Say()
                        .sentence("Today", " load for " + Words.count(now, "field") + ".")
                        .done();
    }

    private static Row row(FarmDay day, Zone zone, Option o, Places places, Format format) {
        return new Row(
                Format.day(o.date()),
                zone.label(),
                places.of(zone),
                Choice.key(o),
                new Say()
                        .markup(Words.rate(o, format))
                        .text(" " + Words.where(o.placement()) + ", " + o.product())
                        .done(),
                o.rig(),
                loads(day, zone, o, format));
    }

    private static String loads(FarmDay day, Zone zone, Option o, Format format) {
        try {
            LoadView.Job job = LoadView.job(day, zone, o, format);
            int n = job.plan().loads().size();
            String each = Amounts.volume(job.plan().loads().get(0).volume_m3(), format.isMetric());
            return n == 1 ? "one of " + each : Words.number(n) + " of " + each;
        } catch (EarleafException cannot) {
            return cannot.problems().get(0).todo();
        }
    }
}
