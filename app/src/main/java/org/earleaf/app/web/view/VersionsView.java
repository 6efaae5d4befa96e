// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.earleaf.app.store.LoadStore.Kept;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.words.Amounts;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.label.CropStages;
import org.earleaf.load.LoadGround;
import org.earleaf.load.TankLoad;
import org.earleaf.units.Dimension;

/**
 * Two versions of one load side by side.
 *
 * @param who changed it meanwhile, and what was done
 * @param version that stands
 */
public record VersionsView(String number, String who, String mine, long version, List<Row> rows) {
    /** One line of both. */
    public record Row(String what, String mine, String stands, boolean differs) {}

    public static VersionsView of(TankLoad mine, Kept now, String heading, Format format) {
        TankLoad stands = now.load();
        List<Row> rows = new ArrayList<>();
        add(rows, tell("page.versions.state"), TankView.word(new Kept(mine, 0, now.filed())), TankView.word(now));
        add(rows, tell("page.versions.field"), place(mine), place(stands));
        add(rows, tell("page.versions.ground"), TankView.area(mine, format), TankView.area(stands, format));
        add(rows, tell("page.versions.stage"), stage(mine), stage(stands));
        add(rows, tell("page.versions.rig"), mine.rig(), stands.rig());
        add(rows, tell("page.versions.day"), Dates.brief(mine.date()), Dates.brief(stands.date()));
        boolean metric = format.isMetric();
        add(
                rows,
                tell("page.versions.tank"),
                Amounts.volume(mine.volume_m3(), metric),
                Amounts.volume(stands.volume_m3(), metric));
        for (int k = 0; k < mine.lines().size() || k < stands.lines().size(); k++) {
            add(rows, tell("page.versions.product", "value", k + 1), line(mine, k, metric), line(stands, k, metric));
        }
        add(rows, tell("page.versions.droplets"), droplets(mine), droplets(stands));
        String unit = metric ? "cm" : "in";
        add(
                rows,
                tell("page.versions.boom-over-the-crop"),
                length(mine.driving().boom_m(), unit),
                length(stands.driving().boom_m(), unit));
        String far = metric ? "m" : "ft";
        add(
                rows,
                tell("page.versions.to-water"),
                length(ground(mine).ground().water_m(), far),
                length(ground(stands).ground().water_m(), far));
        String who = stands.events().isEmpty()
                ? tell("page.versions.somebody-else")
                : stands.events().get(stands.events().size() - 1).person() + ": "
                        + Words.in(metric)
                                .say(stands.events()
                                        .get(stands.events().size() - 1)
                                        .what());
        return new VersionsView(stands.id(), who, heading, now.version(), rows);
    }

    private static void add(List<Row> rows, String what, String mine, String stands) {
        rows.add(new Row(what, mine, stands, !mine.equals(stands)));
    }

    private static LoadGround ground(TankLoad load) {
        return load.grounds().get(0);
    }

    private static String place(TankLoad load) {
        return load.grounds().stream().map(LoadGround::label).collect(Collectors.joining(", "));
    }

    private static String stage(TankLoad load) {
        LoadGround g = ground(load);
        return Double.isNaN(g.stage()) ? tell("page.versions.not-told") : CropStages.word(g.crop(), g.stage());
    }

    private static String droplets(TankLoad load) {
        return load.driving().droplets().map(Enum::name).orElse(tell("page.versions.not-told"));
    }

    private static String length(double m, String unit) {
        return Double.isNaN(m)
                ? tell("page.versions.not-told")
                : Format.number(Dimension.LENGTH.outside(m, unit), 1) + " " + unit;
    }

    private static String line(TankLoad load, int k, boolean metric) {
        return k < load.lines().size()
                ? load.lines().get(k).product() + ", "
                        + Amounts.text(load.lines().get(k).planned(), metric)
                        + (load.lines().get(k).keys().isEmpty()
                                ? ""
                                : tell(
                                        "page.versions.keys",
                                        "keys",
                                        load.lines().get(k).keys().size()))
                : "none";
    }
}
