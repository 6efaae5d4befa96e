// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.web.drawing.Wetness;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.outlook.DateSpread;
import org.earleaf.outlook.Outlook;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.soil.SoilProfile;

/** Says whether and when a field runs short of nitrogen, and where what is left lies. */
final class FieldHeadline {
    /** From these shares on a sentence says "most" and "dry" (own choice of words, no threshold of the model). */
    private static final double MOST = .62;

    private static final double DRY = .3;
    private static final double NEXT_TO_NOTHING_KGHA = 12;

    private FieldHeadline() {}

    static Markup of(Outlook o, Format format) {
        Say say = new Say();
        sentences(o, format).forEach(say::sentence);
        return say.done();
    }

    private static List<String> sentences(Outlook o, Format format) {
        if (Words.isRipe(o)) {
            return List.of(
                    "Ripe since " + Format.date(o.maturity().orElseThrow()) + ".",
                    "It made " + format.yield(o.yield_kgHa().p50()) + " " + format.yieldUnit()
                            + ", as far as the model can tell.");
        }
        if (o.zone().planted().isAfter(o.on())) {
            return List.of(
                    "Planting is set for " + Format.longDay(o.zone().planted()) + ".",
                    format.nitrogen(SoilSums.mineral(o.trace(), o.today())) + " " + format.massUnit() + " "
                            + format.areaName() + " of nitrogen lies in the soil.");
        }
        return List.of(when(o), where(o, format));
    }

    private static String when(Outlook o) {
        DateSpread dates = o.nShort();
        Optional<LocalDate> likely = dates.p50();
        if (likely.isPresent()) {
            return likely.get().isAfter(o.on())
                    ? "Short of nitrogen about " + Format.longDay(likely.get()) + "."
                    : "Short of nitrogen since " + Format.longDay(likely.get()) + ".";
        }
        int inTen = Format.inTen(dates.probability());
        if (inTen == 0) {
            return "Not short of nitrogen in any likely future.";
        }
        return "Not likely to run short of nitrogen: it does in " + Format.chance(dates.probability()) + " futures.";
    }

    private static String where(Outlook o, Format format) {
        SeasonTrace t = o.trace();
        int day = o.today();
        double row = SoilSums.of(t, day, Cell.NITRATE, SeasonTrace.ROW, 0, SoilProfile.LAYERS);
        double middle = SoilSums.of(t, day, Cell.NITRATE, SeasonTrace.MIDDLE, 0, SoilProfile.LAYERS);
        double all = row + middle;
        double deep = SoilSums.of(t, day, Cell.NITRATE, SeasonTrace.ROW, 4, SoilProfile.LAYERS)
                + SoilSums.of(t, day, Cell.NITRATE, SeasonTrace.MIDDLE, 4, SoilProfile.LAYERS);
        double lying = SoilSums.surface(t, day);
        if (lying > all) {
            return "Most of its nitrogen still lies on the ground, waiting for rain.";
        }
        if (all < NEXT_TO_NOTHING_KGHA) {
            return "Next to nothing is left in the soil.";
        }
        if (deep > MOST * all) {
            boolean beyond = t.at(day, Daily.ROOT_MM) < SoilProfile.bottom_mm(3);
            String depth = format.isMetric() ? "60 cm" : "2 ft";
            return "Most of what is left lies below " + (beyond ? "the roots." : depth + ".");
        }
        if (middle > MOST * all && t.share(SeasonTrace.MIDDLE) < .95 * middle / all) {
            boolean dry = Wetness.of(t, o.zone().soil(), day, SeasonTrace.MIDDLE, 0, 3)
                            .share()
                    < DRY;
            return "Most of what is left lies " + (dry ? "dry " : "") + "between the rows.";
        }
        return format.nitrogen(all) + " " + format.massUnit() + " " + format.areaName() + " of nitrate is left.";
    }
}
