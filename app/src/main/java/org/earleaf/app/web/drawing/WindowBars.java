// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.words.Dates;
import org.earleaf.outlook.DateSpread;

/**
 * One field on the calendar: when its crop can use nitrogen, with passes on it; until when each rig fits; how long
 * nitrogen lasts; silk and ripe corn.
 *
 * @param usesFrom first day that nitrogen is of use
 * @param usesTo last such day; empty: beyond the run
 * @param turns days on which rigs come by the plan of the week, in their order
 */
public record WindowBars(
        LocalDate usesFrom,
        Optional<LocalDate> usesTo,
        List<Mark> marks,
        List<RigLine> rigs,
        DateSpread lasts,
        List<Event> events,
        List<Turn> turns) {
    private static final double TOP = 32;
    private static final double LANE = 24;
    private static final double LAST = 28;
    private static final double ABOVE = 14;
    private static final double LETTER = 7.6;

    public WindowBars {
        marks = List.copyOf(marks);
        rigs = List.copyOf(rigs);
        events = List.copyOf(events);
        turns = List.copyOf(turns);
    }

    /** A pass on its day; by rank: proposed red, made black, planned an open box. */
    public record Mark(LocalDate date, Rank rank, String label) {}

    /** What stands behind a pass on the calendar. */
    public enum Rank {
        MADE("k", "bo"),
        PLANNED("plan", "bo"),
        PROPOSED("rf", "rd");

        private final String box;
        private final String word;

        Rank(String box, String word) {
            this.box = box;
            this.word = word;
        }
    }

    /**
     * @param last last day on which the rig fits; empty: it fits no more, and only its words stand there
     * @param ends whether it is out of reach after that day; false: it fits to the end of the season
     */
    public record RigLine(Optional<LocalDate> last, boolean ends, String words) {}

    /** Something that the crop reaches. */
    public record Event(String word, DateSpread when) {}

    /** A day on which a rig comes by the plan of the week: a wedge that points at it. */
    public record Turn(LocalDate date, String words) {}

    /** @param spoken all of it in a sentence */
    public Markup draw(DaySpan span, String spoken) {
        List<Event> drawn = events.stream()
                .filter(e -> e.when().p50().filter(span::isDrawn).isPresent())
                .toList();
        double lanes = rigs.stream().mapToDouble(r -> lane(span, r)).sum();
        List<Turn> coming = turns.stream().filter(t -> span.isDrawn(t.date())).toList();
        double top = coming.isEmpty() ? TOP : TOP + LANE;
        double height = top + lanes + LAST + (drawn.isEmpty() ? 0 : LANE);
        Ink ink = new Ink().put("<svg width=\"100%\" height=\"").put(height);
        ink.put("\" role=\"img\" aria-label=\"").text(spoken).put("\">");
        span.rule(ink, height);
        window(ink, span);
        turns(ink, span, coming);
        double y = top;
        for (RigLine rig : rigs) {
            y += lane(span, rig);
            rig(ink, span, rig, y - 12);
        }
        lasts(ink, span, y + 3);
        y += LAST;
        double free = 0;
        for (Event e : drawn) {
            free = event(ink, span, e, y + 8, free);
        }
        return ink.close("svg").done();
    }

    private void window(Ink ink, DaySpan span) {
        LocalDate to = usesTo.orElse(span.to());
        if (!usesFrom.isAfter(span.to()) && !to.isBefore(span.from())) {
            box(ink, "ag", span.morning(usesFrom), span.evening(to), 5, 22);
        }
        double free = 0;
        List<Mark> drawn = marks.stream()
                .filter(m -> span.isDrawn(m.date()))
                .sorted((a, b) -> a.date().compareTo(b.date()))
                .toList();
        for (int k = 0; k < drawn.size(); k++) {
            Mark mark = drawn.get(k);
            double left = span.morning(mark.date());
            double right = Math.max(span.evening(mark.date()), left + span.share(6));
            box(ink, mark.rank().box, left, right, 3, 26);
            double room = (k + 1 < drawn.size() ? span.morning(drawn.get(k + 1).date()) : 100) - right;
            double wanted = span.share(14 + LETTER * mark.label().length());
            if (room >= wanted) {
                label(ink, right, 6, 21, mark.rank().word, mark.label());
                free = right + wanted;
            } else if (left - free >= wanted) {
                label(ink, left, -6, 21, "end " + mark.rank().word, mark.label());
                free = right;
            } else {
                free = right;
            }
        }
    }

    private static void turns(Ink ink, DaySpan span, List<Turn> coming) {
        double free = 0;
        for (Turn t : coming) {
            double x = span.noon(t.date());
            ink.put("<svg x=\"").put(x).put("%\" overflow=\"visible\">");
            ink.path("M0 32l7 14h-14z", "k").close("svg");
            double wanted = span.share(16 + LETTER * t.words().length());
            if (100 - x >= wanted && free <= x) {
                label(ink, x, 11, 46, "", t.words());
                free = x + wanted;
            }
        }
    }

    /** On a phone words that find no room beside their line stand on it. */
    private static double lane(DaySpan span, RigLine rig) {
        boolean above = rig.last().isPresent() && !span.wide() && !fitsBeside(span, rig);
        return above ? LANE + ABOVE : LANE;
    }

    private static boolean fitsBeside(DaySpan span, RigLine rig) {
        double end = rig.last().map(span::evening).orElse(0.0);
        return isSeen(span, rig)
                && 100 - end >= span.share(16 + LETTER * rig.words().length());
    }

    /** Whether the day on which it ends is drawn. */
    private static boolean isSeen(DaySpan span, RigLine rig) {
        return rig.ends() && rig.last().filter(d -> !d.isAfter(span.to())).isPresent();
    }

    private static void rig(Ink ink, DaySpan span, RigLine rig, double y) {
        if (rig.last().isEmpty() || rig.last().get().isBefore(span.from())) {
            ink.labelAt(0, y + 5, "so halo", rig.words());
            return;
        }
        LocalDate last = rig.last().get();
        double end = span.evening(last);
        boolean seen = isSeen(span, rig);
        ink.lineAt(0, y, end, y, "k2f");
        if (seen) {
            ink.lineAt(end, y - 9, end, y + 9, "k4");
        }
        if (fitsBeside(span, rig)) {
            label(ink, end, 10, y + 5, "", rig.words());
        } else if (!span.wide()) {
            label(ink, end < 60 ? 0 : end, 0, y - 8, end < 60 ? "" : "end", rig.words());
        } else {
            over(ink, end, seen ? -10 : 0, y, rig.words());
        }
    }

    /** Words that end at a place and interrupt the line they stand on. */
    private static void over(Ink ink, double percent, double px, double y, String words) {
        double wide = LETTER * .9 * words.length() + 6;
        ink.put("<svg x=\"").put(percent).put("%\" overflow=\"visible\">");
        ink.rect(px - wide, y - 9, wide, 18, "pf");
        ink.label(px, y + 5, "end", words).close("svg");
    }

    /** Solid while nine in ten futures still have enough, hatched to the last of nine in ten, upright at the middle. */
    private void lasts(Ink ink, DaySpan span, double y) {
        LocalDate never = span.to().plusDays(1);
        double sure = span.morning(lasts.p10().orElse(never));
        double perhaps = span.morning(lasts.p90().orElse(never));
        if (sure > 0) {
            box(ink, "k", 0, sure, y, 14);
        }
        if (perhaps > sure) {
            box(ink, "hxf", sure, perhaps, y, 14);
        }
        lasts.p50().filter(d -> span.isDrawn(d) && perhaps > 0).ifPresent(d -> {
            double x = span.morning(d);
            ink.lineAt(x, y - 6, x, y + 20, "k4");
        });
        if (perhaps <= 0) {
            ink.labelAt(
                    0,
                    y + 12,
                    "bo halo",
                    lasts.p50()
                            .map(d -> tell("page.window-bars.short-since", "d", Dates.day(d)))
                            .orElse(""));
        }
    }

    /** Words before it where there is room, else after it; gives back where the next may begin. */
    private static double event(Ink ink, DaySpan span, Event e, double y, double free) {
        LocalDate likely = e.when().p50().orElseThrow();
        double from = span.morning(e.when().p10().orElse(likely));
        double to = span.evening(e.when().p90().orElse(span.to()));
        double x = span.noon(likely);
        ink.lineAt(from, y, to, y, "kn").lineAt(from, y - 4, from, y + 4, "kn").lineAt(to, y - 4, to, y + 4, "kn");
        ink.dotAt(x, y, 4.5, "k");
        String word = e.word() + " " + Dates.tight(likely);
        double wanted = span.share(16 + LETTER * word.length());
        if (from - free >= wanted) {
            label(ink, from, -8, y + 5, "end so", word);
            return to;
        }
        if (100 - to >= wanted) {
            label(ink, to, 8, y + 5, "so", word);
            return to + wanted;
        }
        if (from - free >= span.share(16 + LETTER * e.word().length())) {
            label(ink, from, -8, y + 5, "end so", e.word());
        }
        return to;
    }

    private static void box(Ink ink, String cls, double left, double right, double y, double height) {
        ink.put("<rect class=\"").put(cls).put("\" x=\"").put(left).put("%\" width=\"");
        ink.put(right - left)
                .put("%\" y=\"")
                .put(y)
                .put("\" height=\"")
                .put(height)
                .put("\"/>");
    }

    /** A label so many px beside a place in per cent. */
    private static void label(Ink ink, double percent, double px, double y, String cls, String plain) {
        ink.labelBeside(percent, px, y, (cls + " halo").strip(), plain);
    }
}
