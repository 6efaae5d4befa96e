// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import org.earleaf.farm.Farm;
import org.earleaf.field.Pass;
import org.earleaf.field.Zone;
import org.earleaf.record.Amount;
import org.earleaf.record.FiledRecord;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Figure;

/** What only a person knows of a pass made, part by part; a blank text is "not told". */
public final class RecordEntry {
    /** Ground is measured a little differently each time. */
    private static final double MEASURED = 1.05;

    private RecordEntry() {}

    /**
     * Ground treated, of a field and zone of the farm (zone empty: the whole field); where the farm knows the field no
     * more, any ground.
     */
    public static Optional<Amount> area(String text, String where, Farm farm, String field, String zone) {
        if (text.isBlank()) {
            return Optional.empty();
        }
        Ranges.RECORD_AREA.read(text, where);
        Amount area = Amount.parse(text, where);
        List<Zone> zones = farm.zonesOf(field).stream()
                .filter(z -> zone.isEmpty() || z.zone().equals(zone))
                .toList();
        double there_m2 = zones.stream().mapToDouble(Zone::area_ha).sum() / 1e-4;
        if (!zones.isEmpty() && area.inside(Dimension.AREA, where) > there_m2 * MEASURED) {
            double there = Dimension.AREA.outside(there_m2, area.unit());
            throw new EarleafException(Gathered.problem(
                    "record.area-above-field",
                    where,
                    text.strip(),
                    "most",
                    Figure.text(there, 4) + " " + area.unit(),
                    "field",
                    field));
        }
        return Optional.of(area);
    }

    /** Likewise, of the ground of a record, which is known by its pass: its field may be called otherwise by now. */
    public static Optional<Amount> area(String text, String where, Farm farm, FiledRecord record) {
        String field = farm.passes().stream()
                .filter(p -> p.id().equals(record.passId()))
                .map(Pass::field)
                .findFirst()
                .orElse(record.field());
        return area(text, where, farm, field, record.zone());
    }

    /** Total of the product. */
    public static Optional<Amount> amount(String text, String where) {
        if (text.isBlank()) {
            return Optional.empty();
        }
        Amount amount = Amount.parse(text, where);
        boolean volume = Dimension.VOLUME.findInside(1, amount.unit()).isPresent();
        if (!volume && Dimension.MASS.findInside(1, amount.unit()).isEmpty()) {
            String units = Dimension.VOLUME.words() + ", " + Dimension.MASS.words();
            throw new EarleafException(Gathered.problem("stock.unit-unknown", where, amount.unit(), "units", units));
        }
        (volume ? Ranges.RECORD_VOLUME : Ranges.RECORD_MASS).read(text, where);
        return Optional.of(amount);
    }

    /** A time of day, "14:30" or "6:05". */
    public static Optional<LocalTime> time(String text, String where) {
        String said = text.strip();
        if (said.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalTime.parse(said.length() == 4 ? "0" + said : said));
        } catch (DateTimeParseException notATime) {
            throw new EarleafException(Gathered.problem("time.unreadable", where, said));
        }
    }
}
