// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.time.LocalDate;
import java.util.List;
import org.earleaf.decide.Option;
import org.earleaf.decide.ProtectionAnswer;
import org.earleaf.decide.Worth;
import org.earleaf.field.Zone;
import org.earleaf.label.Cautions;

/** What each pass is worth, as a page to read. */
final class OptionsText {
    private static final String ROW = "%-10s %-26s %-14s %7s %16s %8s";

    private OptionsText() {}

    static String of(Zone zone, LocalDate on, List<Option> options, ProtectionAnswer protection, boolean metric) {
        Page page = new Page().title(zone.label() + ", what a pass is worth on " + Say.full(on));
        Say say = new Say(metric);
        if (options.isEmpty()) {
            page.say("No nitrogen can be put on now: no rig fits, or the crop takes no more.");
        } else {
            nitrogen(page, options, say);
        }
        ProtectionText.add(page, protection, say);
        page.gap().say("Gains are against doing nothing, over the same futures. " + Cautions.LABEL);
        return page.toString();
    }

    private static void nitrogen(Page page, List<Option> options, Say say) {
        boolean metric = say.metric();
        Option best = options.get(0);
        page.say("Best: " + act(best, say) + " on " + Say.weekday(best.date()) + ", " + worth(best, say) + ".");
        best.why().forEach(r -> page.say(say.say(r.said()), "   "));
        page.head("Every choice, gain in " + Measure.MONEY.unit(metric));
        page.row(ROW, "Date", "Rate and placement", "Rig", "Mean", "p10 to p90", "Pays in");
        for (Option o : options) {
            Worth w = o.worth();
            page.row(
                    ROW,
                    o.date(),
                    say.number(Measure.NITROGEN, o.nitrogen_kgHa(), 0) + " N "
                            + o.placement().word(),
                    o.rig(),
                    say.number(Measure.MONEY, w.mean_usdHa(), 0),
                    say.number(Measure.MONEY, w.p10_usdHa(), 0) + " to " + say.number(Measure.MONEY, w.p90_usdHa(), 0),
                    Say.tenths(w.chanceItPays()) + "/10");
        }
    }

    /** "50 lb N/ac as UAN 32 (14.1 gal/ac), row-base dribble, highboy". */
    static String act(Option o, Say say) {
        if (o.spray().isPresent()) {
            return ProtectionText.act(o, say);
        }
        String product = o.liquid()
                ? say.amount(Measure.LIQUID, o.productRate(), 1)
                : say.amount(Measure.NITROGEN, o.productRate(), 0);
        return say.number(Measure.NITROGEN, o.nitrogen_kgHa(), 0) + (say.metric() ? " kg N/ha" : " lb N/ac") + " as "
                + o.product() + " (" + product + "), " + o.placement().word() + ", " + o.rig();
    }

    /** "worth $58/ac (11 to 102), pays in 9 of 10 futures, a day's wait costs $4.90/ac". */
    static String worth(Option o, Say say) {
        Worth w = o.worth();
        return "worth " + say.amount(Measure.MONEY, w.mean_usdHa(), 0) + " ("
                + say.number(Measure.MONEY, w.p10_usdHa(), 0)
                + " to " + say.number(Measure.MONEY, w.p90_usdHa(), 0) + "), pays in " + Say.tenths(w.chanceItPays())
                + " of 10 futures, the worst fifth " + say.amount(Measure.MONEY, w.badCase_usdHa(), 0)
                + ", a day's wait costs " + say.amount(Measure.MONEY_A_DAY, o.waitCost_usdHaDay(), 2);
    }
}
