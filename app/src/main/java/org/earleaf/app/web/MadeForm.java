// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.TreeMap;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.text.Format;
import org.earleaf.decide.Option;
import org.earleaf.entry.Draft;
import org.earleaf.entry.PassEntry;
import org.earleaf.entry.Plots;
import org.earleaf.entry.RecordEntry;
import org.earleaf.entry.Shelf;
import org.earleaf.farm.Farm;
import org.earleaf.field.Pass;
import org.earleaf.field.Zone;
import org.earleaf.record.Applicator;
import org.earleaf.record.Hours;
import org.earleaf.record.Told;
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
        @Nullable String note,
        @Nullable String sure) {

    /** What is known before it is told. */
    static MadeForm proposed(FarmDay today, Option o, Zone zone, String person, Format format) {
        String rate = format.nitrogen(o.nitrogen_kgHa()) + format.typed(" lb N/ac", " kg N/ha");
        String area = Format.number(format.areaValue(zone.area_ha()), 1).replace(",", "") + format.typed(" ac", " ha");
        String day = (o.date().isAfter(today.on()) ? today.on() : o.date()).toString();
        return new MadeForm(person, day, rate, area, "", "", "", "", "");
    }

    /** The pass as it was made, after the option it was proposed by. */
    Pass pass(Option o, Farm farm, LocalDate today) {
        Draft draft = Draft.of(
                "field", o.field(),
                "zone", o.zone(),
                "date", ReadingForm.text(date),
                "product", o.product(),
                "rate", ReadingForm.text(rate),
                "placement", o.placement().word());
        return PassEntry.of(draft, Plots.of(farm), Shelf.of(farm), Optional.of(today), Pass.State.MADE)
                .orThrow("yes".equals(sure));
    }

    /** What only a person knows of it. */
    Told told(String rig, Option o, Farm farm, Instant filed) {
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
                RecordEntry.area(ReadingForm.text(area), "area", farm, o.field(), o.zone()),
                Optional.empty(),
                new Hours(
                        RecordEntry.time(ReadingForm.text(start), "start"),
                        RecordEntry.time(ReadingForm.text(end), "end")),
                extras,
                filed);
    }
}
