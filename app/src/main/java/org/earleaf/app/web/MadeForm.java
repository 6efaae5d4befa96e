// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.TreeMap;
import org.earleaf.app.FarmDay;
import org.earleaf.app.web.text.Format;
import org.earleaf.decide.Option;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Pass;
import org.earleaf.field.Zone;
import org.earleaf.record.Amount;
import org.earleaf.record.Applicator;
import org.earleaf.record.Told;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Quantity;
import org.jspecify.annotations.Nullable;

/** What is told of a pass that was made, as it stands in the form. */
public record MadeForm(
        @Nullable String person,
        @Nullable String date,
        @Nullable String rate,
        @Nullable String area,
        @Nullable String start,
        @Nullable String end,
        @Nullable String wind,
        @Nullable String note) {

    /** What is known before it is told. */
    static MadeForm proposed(FarmDay today, Option o, Zone zone, String person, Format format) {
        String rate = format.nitrogen(o.nitrogen_kgHa()) + " " + format.nitrogenUnit();
        String area = Format.number(format.areaValue(zone.area_ha()), 1).replace(",", "") + " " + format.areaUnit();
        String day = (o.date().isAfter(today.on()) ? today.on() : o.date()).toString();
        return new MadeForm(person, day, rate, area, "", "", "", "");
    }

    /** The pass as it was made, after the option it was proposed by. */
    Pass pass(Option o, LocalDate today) {
        Quantity given = Quantity.parse(ReadingForm.text(rate), Dimension.MASS_RATE, "rate of nitrogen");
        return new Pass(
                "",
                o.field(),
                o.zone(),
                day(today),
                o.product(),
                given.entered(),
                given.unit(),
                given.inside(),
                o.placement(),
                Inhibitor.NONE,
                Pass.State.MADE);
    }

    private LocalDate day(LocalDate today) {
        try {
            LocalDate day = LocalDate.parse(ReadingForm.text(date));
            if (day.isAfter(today)) {
                throw EarleafException.of(
                        "day", day.toString(), "a day up to " + today, "File a pass when it has been made.");
            }
            return day;
        } catch (DateTimeParseException unreadable) {
            throw EarleafException.of("day", "\"" + date + "\"", "a date like 2026-06-30", "Give the day of the pass.");
        }
    }

    /** What only a person knows of it. */
    Told told(String rig, Instant filed) {
        TreeMap<String, String> extras = new TreeMap<>();
        if (!ReadingForm.text(wind).isEmpty()) {
            extras.put("wind", ReadingForm.text(wind));
        }
        if (!ReadingForm.text(note).isEmpty()) {
            extras.put("note", ReadingForm.text(note));
        }
        return new Told(
                Applicator.onOwnGround(ReadingForm.text(person), ""),
                "",
                "",
                rig,
                ReadingForm.text(area).isEmpty()
                        ? Optional.empty()
                        : Optional.of(Amount.parse(ReadingForm.text(area), "ground treated")),
                Optional.empty(),
                TankForm.time(start, "start"),
                TankForm.time(end, "stop"),
                extras,
                filed);
    }
}
