// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import java.time.Instant;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.earleaf.entry.Ranges;
import org.earleaf.entry.RecordEntry;
import org.earleaf.load.BeforeMixing;
import org.earleaf.load.LoadLine;
import org.earleaf.load.MixStart;
import org.earleaf.load.Overridden;
import org.earleaf.load.TankLoad;
import org.earleaf.mix.MixRules;
import org.earleaf.record.Applicator;
import org.earleaf.record.Hours;
import org.earleaf.record.Told;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Quantity;
import org.earleaf.units.Said;

/** What is told of a kept load at one of its steps, as it stands in the form. */
public record TankForm(Boxes boxes) {
    private static final String SAID =
            "labels read, protective gear on, nobody in the field, wind and inversion looked at, tank as expected";

    private static final Map<String, BeforeMixing> BOXES = Map.of(
            "read", BeforeMixing.LABELS_READ,
            "gear", BeforeMixing.GEAR_ON,
            "nobody", BeforeMixing.FIELD_EMPTY,
            "air", BeforeMixing.AIR_LOOKED_AT,
            "tank", BeforeMixing.TANK_AS_EXPECTED);

    static TankForm empty(String person) {
        return new TankForm(new Boxes(Map.of("person", person)));
    }

    /** What the law asks and an earlier record told, filled in. */
    TankForm knowing(String knownLicence, String knownLocation) {
        return new TankForm(boxes.knowing("licence", knownLicence).knowing("location", knownLocation));
    }

    public String box(String name) {
        return boxes.box(name);
    }

    String said(String name) {
        return boxes.said(name);
    }

    String who() {
        return said("person");
    }

    /** What is told when mixing begins: the boxes that were ticked, and why the rig goes out on a calibration that lapsed. */
    MixStart start(Optional<Said> lapsed) {
        Set<BeforeMixing> looked = EnumSet.noneOf(BeforeMixing.class);
        BOXES.forEach((name, look) -> {
            if (boxes.says(name)) {
                looked.add(look);
            }
        });
        return new MixStart(looked, lapsed, said("why"));
    }

    Overridden override(MixRules.Found stop, Instant now) {
        return Overridden.of(stop, who(), said("role"), said("why"), now);
    }

    int orderRead() {
        try {
            return Integer.parseInt(said("order"));
        } catch (NumberFormatException unreadable) {
            throw new EarleafException(
                    Problem.of("tank.the-number-of-a-step", Said.text("step"), Said.text("\"" + box("order") + "\"")));
        }
    }

    /** One key for a product; a bare number counts in the unit of the sheet. */
    LoadLine.Key key(TankLoad load, Instant now) {
        int step = orderRead();
        LoadLine line = load.lines().stream()
                .filter(l -> l.order() == step)
                .findFirst()
                .orElseThrow(() -> new EarleafException(
                        Problem.of("tank.a-step-of-this-load", Said.text("step"), Said.text(String.valueOf(step)))));
        String measured = said("amount");
        String withUnit =
                measured.matches("[0-9.,]+") ? measured + " " + line.planned().unit() : measured;
        double inside = Quantity.parse(
                        withUnit,
                        line.planned().dimension(),
                        tell("page.tank.measured-amount-of", "product", line.product()))
                .inside();
        return new LoadLine.Key(said("code"), inside, who(), now, said("reason"));
    }

    double moved_m3() {
        return Ranges.TANK.read(said("volume"), "volume");
    }

    /** What only a person knows of an applied load. */
    Told told(TankLoad load, Instant filed) {
        if (load.isLabelled() && (said("start").isEmpty() || said("end").isEmpty())) {
            throw new EarleafException(
                    Problem.of("tank.the-times-of-the-first", Said.text("start and stop"), Said.of("found.not-both")));
        }
        TreeMap<String, String> extras = new TreeMap<>();
        put(extras, "wind");
        put(extras, "temperature");
        put(extras, "note");
        if (load.isLabelled()) {
            extras.put("confirmed", SAID);
        }
        return new Told(
                Applicator.onOwnGround(who(), said("licence")),
                said("location"),
                "",
                load.rig(),
                Optional.empty(),
                Optional.empty(),
                new Hours(RecordEntry.time(said("start"), "start"), RecordEntry.time(said("end"), "end")),
                extras,
                filed);
    }

    private void put(TreeMap<String, String> extras, String name) {
        if (!boxes.isEmpty(name)) {
            extras.put(name, said(name));
        }
    }
}
