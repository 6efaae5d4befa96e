// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.spray.HourReason;
import org.earleaf.spray.SprayHour;
import org.earleaf.spray.SprayTable;
import org.earleaf.spray.SprayWindow;

/** Spray hours as JSON: for each pass the runs of hours that fit, those that do not and why, and every hour. */
final class SprayHoursJson {
    private SprayHoursJson() {}

    static List<Object> of(SprayTable table, boolean metric) {
        List<Object> all = new ArrayList<>();
        for (SprayTable.Job job : table.jobs()) {
            all.add(Json.object(
                    "field", job.field(),
                    "zone", job.zone(),
                    "kind", job.kind(),
                    "product", job.product(),
                    "placement", job.placement(),
                    "rig", job.rig(),
                    "windows",
                            job.windows().stream().map(SprayHoursJson::window).toList(),
                    "unfit", job.shut().stream().map(SprayHoursJson::shut).toList(),
                    "hours", job.hours().stream().map(h -> hour(h, metric)).toList()));
        }
        return all;
    }

    private static Object window(SprayWindow w) {
        return Json.object(
                "from", w.from(),
                "to", w.to(),
                "hours", w.hours(),
                "fit", w.fit().word(),
                "cautions", w.cautions().stream().map(HourReason::sentence).toList(),
                "ends_because", w.endsBecause().map(HourReason::sentence).orElse(""));
    }

    private static Object shut(SprayTable.Shut s) {
        return Json.object(
                "from", s.from(),
                "to", s.to(),
                "factor", factor(s.because()),
                "because", s.because().sentence());
    }

    private static Object hour(SprayHour h, boolean metric) {
        return new Keys(metric)
                .put("at", h.hour().at())
                .put("fit", h.fit().word())
                .put("wind", Measure.SPEED, h.wind_ms())
                .put("temperature", Measure.AIR, h.hour().air_C())
                .put("delta_t_c", h.deltaT_C())
                .put("against", h.against().stream().map(HourReason::sentence).toList())
                .map();
    }

    private static String factor(HourReason r) {
        return r.factor().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }
}
