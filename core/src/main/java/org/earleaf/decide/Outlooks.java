// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import org.earleaf.farm.Farm;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Baseline;
import org.earleaf.outlook.FieldCalendar;
import org.earleaf.outlook.Outlook;
import org.earleaf.outlook.Replant;
import org.earleaf.outlook.Spread;
import org.earleaf.outlook.StageWords;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.season.Event;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.season.ZoneSeason;

/** Where zones stand on a day, and what lies ahead of them. */
public final class Outlooks {
    /** So many members stand behind every outlook. */
    public static final int MEMBERS = ZoneEnsemble.MEMBERS;

    private Outlooks() {}

    /** If nothing more is done. With hindsight, weather after the day is used as far as the record goes. */
    public static Outlook of(Farm farm, Zone zone, LocalDate on, boolean hindsight) {
        ZoneEnsemble futures = ZoneEnsemble.of(farm, zone, on, hindsight);
        return of(futures, new Baseline(futures, futures.season()));
    }

    /** If one more option is carried out. */
    public static Outlook with(Farm farm, Zone zone, LocalDate on, boolean hindsight, Option option) {
        ZoneEnsemble futures = ZoneEnsemble.of(farm, zone, on, hindsight);
        NitrogenProduct product = farm.findNitrogen(option.product()).orElseThrow();
        Event event = new Event.Nitrogen(
                option.date(), ZoneSeason.pass(product, option.nitrogen_kgHa(), option.placement(), Inhibitor.NONE));
        return of(futures, new Baseline(futures, futures.season().with(event)));
    }

    static Outlook of(ZoneEnsemble futures, Baseline base) {
        SeasonTrace trace = base.trace();
        int today = trace.day(futures.on());
        double silk = futures.season().setup().calendar().silk();
        return new Outlook(
                futures.zone(),
                futures.on(),
                trace,
                new Outlook.Stand(
                        StageWords.of(trace, today, futures.zone().planted(), silk),
                        trace.at(today, Daily.COLLARS),
                        base.height_cm(futures.on())),
                new Outlook.Ahead(
                        base.nShort(),
                        base.nniByDay(),
                        Spread.of(base.yields_kgHa()),
                        base.limitedBy(),
                        Replant.find(futures)),
                FieldCalendar.of(futures, base),
                Reach.ofRigs(futures, base),
                new Outlook.Remainder(base.waterRemainder_mm(), base.nitrogenRemainder_kgHa()),
                futures.flags());
    }
}
