// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import java.time.Instant;
import java.util.EnumMap;
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
import org.jspecify.annotations.Nullable;

/** What is told of a kept load at one of its steps, as it stands in the form. */
public record TankForm(
        @Nullable String person,
        @Nullable String version,
        @Nullable String order,
        @Nullable String code,
        @Nullable String amount,
        @Nullable String reason,
        @Nullable String volume,
        @Nullable String rig,
        @Nullable String why,
        @Nullable String kind,
        @Nullable String said,
        @Nullable String read,
        @Nullable String gear,
        @Nullable String nobody,
        @Nullable String air,
        @Nullable String tank,
        @Nullable String outcome,
        @Nullable String water,
        @Nullable String rule,
        @Nullable String role,
        @Nullable String start,
        @Nullable String end,
        @Nullable String wind,
        @Nullable String temperature,
        @Nullable String licence,
        @Nullable String location,
        @Nullable String note) {
    private static final String SAID =
            "labels read, protective gear on, nobody in the field, wind and inversion looked at, tank as expected";

    static TankForm empty(String person) {
        String no = "";
        return new TankForm(
                person, no, no, no, no, no, no, no, no, no, no, no, no, no, no, no, no, no, no, no, no, no, no, no, no,
                no, no);
    }

    /** What the law asks and an earlier record told, filled in. */
    TankForm knowing(String knownLicence, String knownLocation) {
        return new TankForm(
                person,
                version,
                order,
                code,
                amount,
                reason,
                volume,
                rig,
                why,
                kind,
                said,
                read,
                gear,
                nobody,
                air,
                tank,
                outcome,
                water,
                rule,
                role,
                start,
                end,
                wind,
                temperature,
                ReadingForm.text(licence).isEmpty() ? knownLicence : licence,
                ReadingForm.text(location).isEmpty() ? knownLocation : location,
                note);
    }

    String who() {
        return ReadingForm.text(person);
    }

    /** What is told when mixing begins: the boxes that were ticked, and why the rig goes out on a calibration that lapsed. */
    MixStart start(Optional<Said> lapsed) {
        Set<BeforeMixing> looked = EnumSet.noneOf(BeforeMixing.class);
        Map<BeforeMixing, @Nullable String> boxes = new EnumMap<>(BeforeMixing.class);
        boxes.put(BeforeMixing.LABELS_READ, read);
        boxes.put(BeforeMixing.GEAR_ON, gear);
        boxes.put(BeforeMixing.FIELD_EMPTY, nobody);
        boxes.put(BeforeMixing.AIR_LOOKED_AT, air);
        boxes.put(BeforeMixing.TANK_AS_EXPECTED, tank);
        boxes.forEach((look, box) -> {
            if (ReadingForm.text(box).equals("yes")) {
                looked.add(look);
            }
        });
        return new MixStart(looked, lapsed, ReadingForm.text(why));
    }

    Overridden override(MixRules.Found stop, Instant now) {
        return Overridden.of(stop, who(), ReadingForm.text(role), ReadingForm.text(why), now);
    }

    int orderRead() {
        try {
            return Integer.parseInt(ReadingForm.text(order));
        } catch (NumberFormatException unreadable) {
            throw new EarleafException(
                    Problem.of("tank.the-number-of-a-step", Said.text("step"), Said.text("\"" + order + "\"")));
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
        String measured = ReadingForm.text(amount);
        String withUnit =
                measured.matches("[0-9.,]+") ? measured + " " + line.planned().unit() : measured;
        double inside = Quantity.parse(
                        withUnit,
                        line.planned().dimension(),
                        tell("page.tank.measured-amount-of", "product", line.product()))
                .inside();
        return new LoadLine.Key(ReadingForm.text(code), inside, who(), now, ReadingForm.text(reason));
    }

    double moved_m3() {
        return Ranges.TANK.read(ReadingForm.text(volume), "volume");
    }

    /** What only a person knows of an applied load. */
    Told told(TankLoad load, Instant filed) {
        if (load.isLabelled()
                && (ReadingForm.text(start).isEmpty() || ReadingForm.text(end).isEmpty())) {
            throw new EarleafException(
                    Problem.of("tank.the-times-of-the-first", Said.text("start and stop"), Said.of("found.not-both")));
        }
        TreeMap<String, String> extras = new TreeMap<>();
        put(extras, "wind", wind);
        put(extras, "temperature", temperature);
        put(extras, "note", note);
        if (load.isLabelled()) {
            extras.put("confirmed", SAID);
        }
        return new Told(
                Applicator.onOwnGround(who(), ReadingForm.text(licence)),
                ReadingForm.text(location),
                "",
                load.rig(),
                Optional.empty(),
                Optional.empty(),
                new Hours(
                        RecordEntry.time(ReadingForm.text(start), "start"),
                        RecordEntry.time(ReadingForm.text(end), "end")),
                extras,
                filed);
    }

    private static void put(TreeMap<String, String> extras, String name, @Nullable String said) {
        if (!ReadingForm.text(said).isEmpty()) {
            extras.put(name, ReadingForm.text(said));
        }
    }
}
