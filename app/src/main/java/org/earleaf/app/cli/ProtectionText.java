// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.decide.Option;
import org.earleaf.decide.ProtectionAnswer;
import org.earleaf.decide.SprayMix;
import org.earleaf.decide.Worth;
import org.earleaf.protection.ProtectionAdvice;
import org.earleaf.units.Measure;

/** Passes against disease and insects, as a page to read. */
final class ProtectionText {
    private static final String ROW = "%-18s %-12s %-15s %-7s %5s %11s  %-4s %s";

    private ProtectionText() {}

    static void add(Page page, ProtectionAnswer answer, Say say) {
        page.head(tell("cli.protection.against-disease-and-insects"));
        answer.proposed().ifPresent(o -> {
            page.say(tell(
                    "cli.protection.best-on",
                    "act",
                    act(o, say),
                    "weekday",
                    Dates.weekday(o.date()),
                    "worth",
                    OptionsText.worth(o, say)));
            o.why().forEach(r -> page.say(say.say(r.said()), "   "));
            page.say(assumed(o), "   ");
        });
        answer.leftOut()
                .forEach(l -> page.say(tell("cli.protection.no", "kind", l.kind(), "reason", say.say(l.reason()))));
        if (answer.options().isEmpty()) {
            return;
        }
        table(page, answer.bestOfEach(), say);
        page.say(say.say(ProtectionAdvice.CAUTION));
    }

    private static void table(Page page, List<Option> options, Say say) {
        List<String> notes = new ArrayList<>();
        page.gap().say(tell("cli.protection.the-best-day-of-each", "unit", say.unit(Measure.MONEY_RATE)));
        page.row(
                ROW,
                tell("cli.protection.product"),
                tell("cli.protection.placement"),
                tell("cli.protection.rig"),
                tell("cli.protection.date"),
                tell("cli.protection.mean"),
                tell("cli.protection.p10-to-p90"),
                tell("cli.protection.no-2"),
                tell("cli.protection.pays-in"));
        for (Option o : options) {
            Worth w = o.worth();
            page.row(
                    ROW,
                    o.product(),
                    say.say(o.placement()),
                    Words.here().rig(o.rig()),
                    Dates.tight(o.date()),
                    say.number(Measure.MONEY_RATE, w.mean_usdHa(), 0),
                    say.gains(w),
                    numbers(o, notes, say),
                    say.chance(w));
        }
        for (int k = 0; k < notes.size(); k++) {
            page.say((k + 1) + "  " + notes.get(k), "   ");
        }
    }

    /** Numbers of the notes that forbid an option; a new note goes behind those there are. */
    private static String numbers(Option o, List<String> notes, Say say) {
        return o.refusals().stream()
                .map(r -> say.say(r.said()))
                .map(s -> {
                    if (!notes.contains(s)) {
                        notes.add(s);
                    }
                    return String.valueOf(notes.indexOf(s) + 1);
                })
                .collect(Collectors.joining(","));
    }

    /** "Demo F1 10 fl oz/ac, Demo Spreader 0.25 % v/v in 15.0 gal/ac, over the top, Highboy". */
    static String act(Option o, Say say) {
        SprayMix mix = o.spray().orElseThrow().mix();
        String products = mix.parts().stream()
                .map(p -> p.product().name() + " " + Rates.of(p, say.metric()).text())
                .collect(Collectors.joining(", "));
        return Double.isNaN(mix.carrier_LHa())
                ? tell("cli.protection.act", "products", products, "placement", o.placement(), "rig", o.rig())
                : tell(
                        "cli.protection.act-in",
                        "products",
                        products,
                        "amount",
                        say.amount(Measure.VOLUME_RATE, mix.carrier_LHa(), 1),
                        "placement",
                        o.placement(),
                        "rig",
                        o.rig());
    }

    /** How much of the worth stands on what nobody has measured here. */
    static String assumed(Option o) {
        int n = o.spray().orElseThrow().assumptions().size();
        return tell("cli.protection.assumption-figures-behind", "n", n);
    }
}
