// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.store.LoadJobs;
import org.earleaf.app.store.LoadStore.Kept;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Amounts;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.decide.Option;
import org.earleaf.field.Zone;
import org.earleaf.load.LoadState;
import org.earleaf.load.TankLoad;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Said;

/**
 * The loads that are kept, and what would have to be loaded for the passes that are proposed.
 *
 * @param open loads with something still to do, in the order in which they were made
 * @param done filed or dropped, newest first
 */
public record LoadsView(String date, Markup headline, List<Tank> open, List<Tank> done, List<Row> rows) {
    /** How many that are done are shown. */
    private static final int DONE_SHOWN = 20;

    /** @param act what comes next */
    public record Tank(
            String number,
            String what,
            String name,
            String ground,
            String volume,
            String rig,
            String date,
            Markup state,
            String act) {}

    /** @param loads how many of what size, or why none */
    public record Row(String when, String name, String place, String choice, Markup what, String rig, String loads) {}

    public static LoadsView of(FarmDay day, List<Kept> kept, List<LoadJobs.Job> jobs, Format format) {
        Places places = Places.of(day.farm());
        List<Row> rows = new ArrayList<>();
        int now = 0;
        for (Option o : day.brief().passes().stream().filter(Option::isNitrogen).toList()) {
            Optional<Zone> zone = places.find(places.of(o.field(), o.zone()));
            if (zone.isPresent()) {
                now += o.date().isAfter(day.on()) ? 0 : 1;
                rows.add(row(day, zone.get(), o, places, format));
            }
        }
        List<Tank> open = new ArrayList<>();
        List<Tank> done = new ArrayList<>();
        for (Kept k : kept) {
            boolean over = k.filed().isPresent() || k.load().state() == LoadState.CANCELLED;
            if (over) {
                done.add(0, tank(k, jobs, format));
            } else {
                open.add(tank(k, jobs, format));
            }
        }
        return new LoadsView(
                Dates.weekday(day.on()),
                open.isEmpty() ? headline(now, rows.size()) : headline(open),
                open,
                done.subList(0, done.size() < DONE_SHOWN ? done.size() : DONE_SHOWN),
                rows);
    }

    private static Markup headline(List<Tank> open) {
        Tank first = open.get(0);
        return new Markup(Words.here()
                .html(Said.of(
                        "page.loads.next-load",
                        "n",
                        open.size(),
                        "act",
                        first.act().toLowerCase(Words.here().locale()),
                        "number",
                        first.number(),
                        "field",
                        first.name())));
    }

    private static Tank tank(Kept k, List<LoadJobs.Job> jobs, Format format) {
        TankLoad load = k.load();
        return new Tank(
                load.id(),
                jobs.stream()
                        .filter(j -> j.job().equals(load.job()))
                        .map(LoadJobs.Job::recipe)
                        .findFirst()
                        .orElse(load.job()),
                load.grounds().get(0).label(),
                TankView.area(load, format),
                Amounts.volume(load.volume_m3(), format.isMetric()),
                load.rig(),
                Dates.brief(load.date()),
                TankView.mark(k),
                act(TankView.word(k)));
    }

    private static String act(String state) {
        return switch (state) {
            case "planned" -> tell("page.loads.lock-it");
            case "locked" -> tell("page.loads.mix-it");
            case "mixing" -> tell("page.loads.go-on-mixing");
            case "mixed" -> tell("page.loads.put-it-on");
            case "empty" -> tell("page.loads.file-it");
            default -> tell("page.loads.look");
        };
    }

    private static Markup headline(int now, int all) {
        if (all == 0) {
            return new Say()
                    .sentence(tell("page.loads.nothing-to-load-no-pass"))
                    .done();
        }
        return new Markup(Words.here()
                .html(
                        now == 0
                                ? Said.of("page.loads.nothing-today", "n", all)
                                : Said.of("page.loads.load-today", "n", now)));
    }

    private static Row row(FarmDay day, Zone zone, Option o, Places places, Format format) {
        return new Row(
                Dates.brief(o.date()),
                zone.label(),
                places.of(zone),
                Choice.key(o),
                new Say()
                        .markup(Phrases.rate(o, format))
                        .text(" " + Phrases.where(o.placement()) + ", " + o.product())
                        .done(),
                o.rig(),
                loads(day, zone, o, format));
    }

    private static String loads(FarmDay day, Zone zone, Option o, Format format) {
        try {
            LoadView.Job job = LoadView.job(day, zone, o, format);
            int n = job.plan().loads().size();
            String each = Amounts.volume(job.plan().loads().get(0).volume_m3(), format.isMetric());
            return tell("page.loads.of", "n", n, "each", each);
        } catch (EarleafException cannot) {
            return format.words().told(cannot.problems().get(0)).todo();
        }
    }
}
