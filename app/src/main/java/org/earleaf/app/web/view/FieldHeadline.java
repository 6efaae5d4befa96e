// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.web.drawing.Wetness;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Dates;
import org.earleaf.outlook.DateSpread;
import org.earleaf.outlook.Outlook;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Measure;

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

    private static String planting(Outlook o) {
        return tell(
                "page.field-headline.planting-is-set-for",
                "longDay",
                Dates.weekday(o.zone().planted()));
    }

    private static String inSoil(Outlook o) {
        return tell(
                "page.field-headline.of-nitrogen-lies-in-the",
                "rate",
                Measure.NITROGEN_RATE.of(SoilSums.mineral(o.trace(), o.today())));
    }

    private static List<String> sentences(Outlook o, Format format) {
        if (Phrases.isRipe(o)) {
            return List.of(
                    tell(
                            "page.field-headline.ripe-since",
                            "maturity",
                            Dates.day(o.maturity().orElseThrow())),
                    tell(
                            "page.field-headline.it-made-as-far-as",
                            "yield",
                            Measure.YIELD.of(o.yield_kgHa().p50())));
        }
        if (o.zone().planted().isAfter(o.on())) {
            return List.of(planting(o), inSoil(o));
        }
        return List.of(when(o), where(o, format));
    }

    private static String when(Outlook o) {
        DateSpread dates = o.nShort();
        Optional<LocalDate> likely = dates.p50();
        if (likely.isPresent()) {
            return likely.get().isAfter(o.on())
                    ? tell("page.field-headline.short-of-nitrogen-about", "longDay", Dates.weekday(likely.get()))
                    : tell("page.field-headline.short-of-nitrogen-since", "longDay", Dates.weekday(likely.get()));
        }
        if (dates.probability() <= 0) {
            return tell("page.field-headline.not-short-of-nitrogen-in");
        }
        return tell("page.field-headline.not-likely-to-run-short", "chance", Measure.CHANCE.of(dates.probability()));
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
            return tell("page.field-headline.most-of-its-nitrogen-still");
        }
        if (all < NEXT_TO_NOTHING_KGHA) {
            return tell("page.field-headline.next-to-nothing-is-left");
        }
        if (deep > MOST * all) {
            boolean beyond = t.at(day, Daily.ROOT_MM) < SoilProfile.bottom_mm(3);
            if (beyond) {
                return tell("page.field-headline.most-lies-below-the-roots");
            }
            return format.isMetric()
                    ? tell("page.field-headline.most-lies-below-60-cm")
                    : tell("page.field-headline.most-lies-below-2-ft");
        }
        if (middle > MOST * all && t.share(SeasonTrace.MIDDLE) < .95 * middle / all) {
            boolean dry = Wetness.of(t, o.zone().soil(), day, SeasonTrace.MIDDLE, 0, 3)
                            .share()
                    < DRY;
            return dry
                    ? tell("page.field-headline.most-lies-dry-between-the-rows")
                    : tell("page.field-headline.most-lies-between-the-rows");
        }
        return tell("page.field-headline.of-nitrate-is-left", "rate", Measure.NITROGEN_RATE.of(all));
    }
}
