// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.earleaf.app.words.Dates;
import org.earleaf.brief.Brief;
import org.earleaf.decide.Option;
import org.earleaf.field.NotProposed;
import org.earleaf.field.Purpose;
import org.earleaf.outlook.OutOfReach;
import org.earleaf.outlook.Outlook;
import org.earleaf.units.Measure;

/** The morning brief as a page to read. */
final class MorningText {
    private static final String ROW = "%-26s %-8s %-16s %s";

    private final Brief brief;
    private final Say say;
    private final Page page = new Page();

    private MorningText(Brief brief, boolean metric) {
        this.brief = brief;
        this.say = new Say(metric);
    }

    static String of(Brief brief, boolean metric) {
        MorningText text = new MorningText(brief, metric);
        text.headline();
        text.alarms();
        text.passes();
        SprayHoursText.add(text.page, brief.spray(), text.say);
        text.fields();
        text.leftOut(tell("cli.morning.left-out-and-why"), brief.judged());
        text.leftOut(tell("page.morning.not-judged-and-why"), brief.notJudged());
        text.readings();
        text.cautions();
        return text.page.toString();
    }

    private void headline() {
        page.title(brief.farm() + ", " + Dates.full(brief.on()));
        List<Option> today =
                brief.passes().stream().filter(o -> o.date().equals(brief.on())).toList();
        if (!today.isEmpty()) {
            Map<Purpose, List<Option>> byKind = today.stream()
                    .collect(Collectors.groupingBy(Option::kind, LinkedHashMap::new, Collectors.toList()));
            page.say(tell(
                    "cli.morning.today",
                    "list",
                    byKind.entrySet().stream()
                            .map(e -> tell(
                                    "cli.morning.on",
                                    "name",
                                    e.getKey(),
                                    "list",
                                    e.getValue().stream()
                                            .map(MorningText::place)
                                            .collect(Collectors.joining("; "))))
                            .reduce((before, next) -> tell("cli.morning.also", "before", before, "next", next))
                            .orElse("")));
        } else if (!brief.passes().isEmpty()) {
            Option first = brief.passes().get(0);
            page.say(tell(
                    "cli.morning.nothing-has-to-be-done",
                    "kind",
                    first.kind(),
                    "place",
                    place(first),
                    "weekday",
                    Dates.weekday(first.date())));
        } else {
            nothing();
        }
    }

    /** What was not judged is never told as not worth it. */
    private void nothing() {
        boolean judged = brief.leftOut().stream().anyMatch(l -> l.answer() == NotProposed.DOES_NOT_PAY);
        page.say(tell(judged ? "cli.morning.no-pass-would-pay-now" : "cli.morning.nothing-to-do"));
        if (!brief.notJudged().isEmpty()) {
            page.say(tell(
                    "page.morning-headline.not-judged", "n", brief.notJudged().size()));
        }
    }

    private static String place(Option o) {
        return o.zone().isEmpty() ? o.field() : o.field() + ", " + o.zone();
    }

    private void passes() {
        if (brief.passes().isEmpty()) {
            return;
        }
        page.head(tell("cli.morning.passes-in-order"));
        for (Brief.Proposed p : brief.proposed()) {
            Option o = p.way();
            page.say(p.turn()
                    .map(t -> tell(
                            "cli.morning.turn",
                            "weekday",
                            Dates.weekday(o.date()),
                            "from",
                            Dates.clock(t.start().toLocalTime()),
                            "to",
                            Dates.clock(t.end().toLocalTime()),
                            "place",
                            say.say(t.pass().place())))
                    .orElseGet(() -> Dates.weekday(o.date()) + ": " + place(o)));
            page.say(OptionsText.act(o, say) + "; " + OptionsText.worth(o, say) + ".", "   ");
            String why = o.why().stream().map(r -> say.say(r.said())).collect(Collectors.joining(" "));
            page.say(tell("cli.morning.why", "why", why), "   ");
            p.own().ifPresent(own -> page.say(say.say(own.said()), "   "));
            if (!o.isNitrogen()) {
                page.say(ProtectionText.assumed(o), "   ");
            }
        }
    }

    private void fields() {
        page.head(tell("cli.morning.the-fields"));
        page.row(
                ROW,
                tell("cli.morning.field"),
                tell("cli.morning.stage"),
                tell("cli.morning.height", "unit", say.unit(Measure.HEIGHT)),
                tell("cli.morning.nitrogen-runs-short"));
        for (Outlook o : brief.outlooks()) {
            String height = tell(
                    "cli.morning.to",
                    "height",
                    say.number(Measure.HEIGHT, o.height_cm().p50(), 0),
                    "height2",
                    say.number(Measure.HEIGHT, o.height_cm().p10(), 0),
                    "height3",
                    say.number(Measure.HEIGHT, o.height_cm().p90(), 0));
            page.row(ROW, o.zone().label(), say.say(o.stage()), height, Say.shortOn(o.nShort()));
        }
        soonOutOfReach();
    }

    private void soonOutOfReach() {
        boolean any = brief.outlooks().stream().anyMatch(o -> soon(o).isPresent());
        if (!any) {
            return;
        }
        page.head(tell("cli.morning.soon-out-of-reach"));
        for (Outlook o : brief.outlooks()) {
            soon(o).ifPresent(text -> page.say(o.zone().label() + ": " + text));
        }
    }

    private static Optional<String> soon(Outlook o) {
        String text = o.reach().stream()
                .filter(r -> r.date().isPresent())
                .map((OutOfReach r) -> FieldText.reach(r))
                .collect(Collectors.joining(" "));
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }

    private void leftOut(String head, List<Brief.LeftOut> all) {
        if (all.isEmpty()) {
            return;
        }
        page.head(head);
        all.forEach(l -> page.say((l.zone().isEmpty() ? l.field() : l.field() + ", " + l.zone()) + ", "
                + say.say(l.kind()) + ": " + say.say(l.reason())));
    }

    private void readings() {
        if (brief.readings().isEmpty()) {
            return;
        }
        page.head(tell("cli.morning.readings-worth-the-drive"));
        brief.readings()
                .forEach(r -> page.say((r.zone().isEmpty() ? r.field() : r.field() + ", " + r.zone()) + ", "
                        + say.say(r.take()) + worth(r) + ": " + say.say(r.because())));
    }

    private String worth(Brief.ReadingWorthTaking r) {
        return Double.isNaN(r.worth_usdHa())
                ? ""
                : tell("cli.morning.worth", "amount", say.amount(Measure.MONEY_RATE, r.worth_usdHa(), 2));
    }

    private void alarms() {
        if (!brief.alarms().isEmpty()) {
            page.head(tell("page.morning.look-first"));
            brief.alarms().forEach(a -> page.say(say.say(a)));
        }
    }

    private void cautions() {
        page.head(tell("cli.morning.caution"));
        brief.usualCautions().forEach(c -> page.say(say.say(c)));
        page.gap()
                .say(tell(
                        "cli.morning.simulated-seasons-stand",
                        "seasonsSimulated",
                        Say.number(brief.seasonsSimulated(), 0)));
    }
}
