// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.app.words.Words;
import org.earleaf.spray.HourReason;
import org.earleaf.spray.SprayHour;
import org.earleaf.spray.SprayTable;
import org.earleaf.spray.SprayWindow;

/** Spray hours as JSON: for each pass the runs of hours that fit, those that do not and why, and every hour. */
final class SprayHoursJson {
    private SprayHoursJson() {}

    static List<Object> of(SprayTable table, boolean metric) {
        Words words = Words.in(metric);
        List<Object> all = new ArrayList<>();
        for (SprayTable.Job job : table.jobs()) {
            all.add(Json.object(
                    "field", job.field(),
                    "zone", job.zone(),
                    "kind", words.say(job.kind()),
                    "product", job.product(),
                    "placement", job.placement(),
                    "rig", job.rig(),
                    "windows", job.windows().stream().map(w -> window(w, words)).toList(),
                    "unfit", job.shut().stream().map(s -> shut(s, words)).toList(),
                    "hours",
                            job.hours().stream()
                                    .map(h -> hour(h, metric, words))
                                    .toList()));
        }
        return all;
    }

    private static Object window(SprayWindow w, Words words) {
        return Json.object(
                "from", w.from(),
                "to", w.to(),
                "hours", w.hours(),
                "fit", words.say(w.fit()),
                "cautions", w.cautions().stream().map(r -> words.say(r.said())).toList(),
                "ends_because", w.endsBecause().map(r -> words.say(r.said())).orElse(""));
    }

    private static Object shut(SprayTable.Shut s, Words words) {
        return Json.object(
                "from", s.from(),
                "to", s.to(),
                "factor", factor(s.because()),
                "because", words.say(s.because().said()));
    }

    private static Object hour(SprayHour h, boolean metric, Words words) {
        return new Keys(metric)
                .put("at", h.hour().at())
                .put("fit", words.say(h.fit()))
                .put("wind", JsonUnit.SPEED, h.wind_ms())
                .put("temperature", JsonUnit.AIR, h.hour().air_C())
                .put("delta_t_c", h.deltaT_C())
                .put(
                        "against",
                        h.against().stream().map(r -> words.say(r.said())).toList())
                .map();
    }

    private static String factor(HourReason r) {
        return r.factor().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }
}
