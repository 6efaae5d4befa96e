// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Amounts;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.decide.Option;
import org.earleaf.farm.Rig;
import org.earleaf.field.Zone;
import org.earleaf.load.LoadSheet;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/** The farm's rigs, and how they are set for the passes that are proposed. */
public record RigsView(String date, Markup headline, List<Setting> sets, List<Row> rigs) {

    /** @param why what stops it; empty when it can be set */
    public record Setting(
            String when, String name, String place, String choice, Markup what, String rig, SetTo setTo, String why) {}

    /** What a rig is set to for a pass; empty where it cannot be set. */
    public record SetTo(String outlet, String speed, String pressure, String flow) {
        private static final SetTo NOTHING = new SetTo("", "", "", "");
    }

    public record Row(
            String name, String kind, String clears, String width, String tank, String speeds, String places) {}

    public static RigsView of(FarmDay day, Format format) {
        Places places = Places.of(day.farm());
        List<Setting> sets = new ArrayList<>();
        for (Option o : day.brief().passes().stream().filter(Option::isNitrogen).toList()) {
            places.find(places.of(o.field(), o.zone())).ifPresent(z -> sets.add(setting(day, z, o, places, format)));
        }
        return new RigsView(
                Dates.weekday(day.on()),
                headline(day, sets),
                sets,
                day.farm().rigs().stream().map(r -> row(r, format)).toList());
    }

    private static Markup headline(FarmDay day, List<Setting> sets) {
        String today = Dates.brief(day.on());
        Optional<Setting> first = sets.stream()
                .filter(s -> s.when().equals(today) && s.why().isEmpty())
                .findFirst();
        if (first.isPresent()) {
            Setting s = first.get();
            return new Markup(Words.here()
                    .html(Said.of(
                            "page.rigs.set-today",
                            "rig",
                            s.rig(),
                            "pressure",
                            s.setTo().pressure(),
                            "speed",
                            s.setTo().speed().replaceAll(" \\(.*", ""),
                            "field",
                            s.name())));
        }
        return sets.isEmpty()
                ? new Say().sentence(tell("page.rigs.no-rig-has-to-be")).done()
                : new Markup(Words.here()
                        .html(Said.of(
                                "page.rigs.none-today",
                                "rig",
                                sets.get(0).rig(),
                                "when",
                                sets.get(0).when())));
    }

    private static Setting setting(FarmDay day, Zone zone, Option o, Places places, Format format) {
        Optional<LoadSheet.Settings> s = Optional.empty();
        String why;
        try {
            LoadView.Job job = LoadView.job(day, zone, o, format);
            s = job.sheets().get(0).settings();
            why = String.join(" ", job.notSet());
        } catch (EarleafException cannot) {
            why = format.words().told(cannot.problems().get(0)).todo();
        }
        return new Setting(
                Dates.brief(o.date()),
                zone.label(),
                places.of(zone),
                Choice.key(o),
                new Say()
                        .markup(Phrases.rate(o, format))
                        .text(" " + Phrases.where(o.placement()) + ", " + o.product())
                        .done(),
                o.rig(),
                s.map(k -> setTo(k, format.words())).orElse(SetTo.NOTHING),
                why);
    }

    private static SetTo setTo(LoadSheet.Settings s, Words words) {
        return new SetTo(
                words.say(s.outlet()),
                tell(
                        "page.rigs.speed-and-range",
                        "speed",
                        Measure.SPEED.of(s.speed_ms()),
                        "from",
                        Measure.SPEED.of(s.slowest_ms()),
                        "to",
                        Measure.SPEED.of(s.fastest_ms())),
                words.say(Measure.PRESSURE.of(s.pressure_Pa())),
                words.say(Measure.FLOW.of(s.flow_m3s())));
    }

    private static Row row(Rig r, Format format) {
        boolean metric = format.isMetric();
        String unit = " " + format.lengthUnit();
        return new Row(
                Phrases.capital(r.name()),
                r.kind(),
                r.clearance_m() > 0 ? format.length(100 * r.clearance_m()) + unit : "",
                r.width_m() > 0 ? format.width(r.width_m()) : "",
                r.tank_m3() > 0 ? Amounts.volume(r.tank_m3(), metric) : "",
                r.pace().fastest_ms() > 0
                        ? tell(
                                "page.rigs.speeds",
                                "from",
                                Measure.SPEED.of(r.pace().slowest_ms()),
                                "to",
                                Measure.SPEED.of(r.pace().fastest_ms()))
                        : "",
                r.placements().stream().sorted().map(format::say).collect(Collectors.joining(", ")));
    }
}
