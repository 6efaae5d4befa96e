// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.decide.Option;
import org.earleaf.decide.Worth;
import org.earleaf.field.Zone;
import org.earleaf.label.Cautions;
import org.earleaf.units.Measure;

/** What each pass is worth, as a page to read. */
final class OptionsText {
    private static final String ROW = "%-10s %-26s %-14s %7s %16s  %s";

    private OptionsText() {}

    static String of(Zone zone, LocalDate on, NitrogenOptions.Answer answer, boolean metric) {
        Page page = new Page()
                .title(tell("cli.options.what-a-pass-is-worth", "label", zone.label(), "full", Dates.full(on)));
        Say say = new Say(metric);
        if (answer.options().isEmpty()) {
            page.say(tell("cli.options.no-nitrogen-can-be-put"));
        } else {
            nitrogen(page, answer, say);
        }
        ProtectionText.add(page, answer.protection(), say);
        page.gap().say(tell("cli.options.gains-are-against-doing", "label", Cautions.LABEL));
        return page.toString();
    }

    private static void nitrogen(Page page, NitrogenOptions.Answer answer, Say say) {
        answer.tested()
                .enough()
                .ifPresentOrElse(
                        enough -> page.say(say.say(enough.said())),
                        () -> best(page, answer.options().get(0), say));
        page.head(tell("cli.options.every-choice-gain-in", "unit", say.unit(Measure.MONEY_RATE)));
        page.row(
                ROW,
                tell("cli.options.date"),
                tell("cli.options.rate-and-placement"),
                tell("cli.options.rig"),
                tell("cli.options.mean"),
                tell("cli.options.p10-to-p90"),
                tell("cli.options.pays-in"));
        for (Option o : answer.options()) {
            Worth w = o.worth();
            page.row(
                    ROW,
                    Dates.tight(o.date()),
                    say.number(Measure.MASS_RATE, o.nitrogen_kgHa(), 0) + " N " + say.say(o.placement()),
                    Words.here().rig(o.rig()),
                    say.number(Measure.MONEY_RATE, w.mean_usdHa(), 0),
                    say.gains(w),
                    say.chance(w));
        }
    }

    private static void best(Page page, Option best, Say say) {
        page.say(tell(
                "cli.options.best-on",
                "act",
                act(best, say),
                "weekday",
                Dates.weekday(best.date()),
                "worth",
                worth(best, say)));
        best.why().forEach(r -> page.say(say.say(r.said()), "   "));
    }

    /** "50 lb N/ac as UAN 32 (14.1 gal/ac), row-base dribble, highboy". */
    static String act(Option o, Say say) {
        if (o.spray().isPresent()) {
            return ProtectionText.act(o, say);
        }
        String product = o.liquid()
                ? say.amount(Measure.VOLUME_RATE, o.productRate(), 1)
                : say.amount(Measure.MASS_RATE, o.productRate(), 0);
        return tell(
                "cli.options.as",
                "rate",
                Measure.NITROGEN_RATE.of(o.nitrogen_kgHa()),
                "product",
                o.product(),
                "product2",
                product,
                "placement",
                o.placement(),
                "rig",
                o.rig());
    }

    /** "worth $58/ac (11 to 102), pays in 9 of 10 futures, a day's wait costs $4.90/ac". */
    static String worth(Option o, Say say) {
        Worth w = o.worth();
        return tell(
                "cli.options.worth-to-pays-in",
                "amount",
                say.amount(Measure.MONEY_RATE, w.mean_usdHa(), 0),
                "money",
                say.number(Measure.MONEY_RATE, w.p10_usdHa(), 0),
                "money2",
                say.number(Measure.MONEY_RATE, w.p90_usdHa(), 0),
                "chance",
                Measure.CHANCE.of(w.chanceItPays()),
                "amount2",
                say.amount(Measure.MONEY_RATE, w.badCase_usdHa(), 0),
                "amount3",
                say.amount(Measure.MONEY_RATE, o.waitCost_usdHaDay(), 2));
    }
}
