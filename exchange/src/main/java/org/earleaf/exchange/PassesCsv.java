// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Limits;
import org.earleaf.exchange.table.Measure;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.exchange.table.Texts;
import org.earleaf.farm.RateUnit;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Pass;
import org.earleaf.field.Placement;

/** passes.csv: passes made and planned. */
final class PassesCsv {
    private final Sheet sheet;
    private final Names names;
    private final Shelf shelf;
    private final Column field;
    private final Column date;
    private final Column product;
    private final Column rate;
    private final Column rateUnit;
    private final Column placement;
    private final Column zone;
    private final Column inhibitor;
    private final Column made;
    private final Column planned;

    private PassesCsv(Sheet sheet, Names names, Shelf shelf) {
        this.sheet = sheet;
        this.names = names;
        this.shelf = shelf;
        field = sheet.text("field");
        date = sheet.text("date");
        product = sheet.text("product");
        rate = sheet.number("rate", Measure.PLAIN, Limits.NOT_NEGATIVE);
        rateUnit = sheet.text("rate_unit");
        placement = sheet.text("placement");
        zone = sheet.optionalText("zone");
        inhibitor = sheet.optionalText("inhibitor");
        made = sheet.optionalText("made");
        planned = sheet.optionalText("planned");
    }

    static List<Pass> read(Sheet sheet, Names names, Shelf shelf) {
        PassesCsv file = new PassesCsv(sheet, names, shelf);
        List<Pass> passes = new ArrayList<>();
        if (sheet.isComplete()) {
            sheet.rows().forEach(row -> file.read(row).ifPresent(passes::add));
        }
        return passes;
    }

    private Optional<Pass> read(Row row) {
        String f = names.field(row, field);
        String z = names.zone(row, zone, f);
        Optional<LocalDate> day = row.date(date);
        day.ifPresent(d -> names.refuseOutOfSeason(row, date, d, f, z, "a pass"));
        String p = shelf.name(row, product);
        double amount = row.number(rate);
        Optional<RateUnit> unit = row.word(rateUnit, RateUnit::findByWord, RateUnit.words());
        Optional<Placement> where = row.word(placement, Placement::findByWord, Placement.words());
        Inhibitor slowed =
                row.word(inhibitor, Inhibitor::findByWord, Inhibitor.words()).orElse(Inhibitor.NONE);
        Pass.State state = state(row);
        where.ifPresent(w -> refuseWrongPlace(row, p, w));
        double kgHa = unit.isEmpty() || Double.isNaN(amount) ? Double.NaN : nitrogen(row, p, amount, unit.get());
        if (!row.isGood() || day.isEmpty() || unit.isEmpty() || where.isEmpty()) {
            return Optional.empty();
        }
        String id = sheet.name() + " row " + row.line();
        return Optional.of(
                new Pass(id, f, z, day.get(), p, amount, unit.get().word(), kgHa, where.get(), slowed, state));
    }

    private double nitrogen(Row row, String p, double amount, RateUnit unit) {
        if (amount == 0) {
            row.flag(rate, "zero", "a pass with a rate of 0; it puts nothing on");
        }
        double kgHa = shelf.nitrogen_kgHa(row, rateUnit, p, amount, unit);
        Limits limits = Measures.NITROGEN_PASS;
        if (kgHa > limits.most()) {
            row.refuse(
                    rate,
                    row.cell(rate) + " " + unit.word() + ", which is " + Texts.number(kgHa) + " kg N/ha",
                    "at most " + Texts.number(limits.high()) + " kg N/ha (268 lb N/ac) in one pass",
                    "Check the rate and its unit.");
        } else if (kgHa > limits.high()) {
            row.flag(
                    rate,
                    "outside the model",
                    Texts.number(kgHa) + " kg N/ha is more than the model holds for; 300 is taken");
            return limits.high();
        }
        return kgHa;
    }

    private void refuseWrongPlace(Row row, String p, Placement where) {
        boolean ammonia = p.toLowerCase(Locale.ROOT).equals("anhydrous ammonia");
        if (ammonia && where != Placement.AMMONIA) {
            row.refuse(
                    placement,
                    where.word() + " of anhydrous ammonia",
                    Placement.AMMONIA.word(),
                    "Ammonia is a gas: it can only be knifed in.");
        }
    }

    private Pass.State state(Row row) {
        Optional<Boolean> isPlanned = row.word(planned, YesNo::find, YesNo.WORDS);
        Optional<Boolean> isMade = row.word(made, YesNo::find, YesNo.WORDS);
        if (isPlanned.orElse(false) && isMade.orElse(false)) {
            row.refuse(planned, "a pass both planned and made", "one of the two", "Keep yes in one of the columns.");
        }
        return isMade.orElse(!isPlanned.orElse(false)) ? Pass.State.MADE : Pass.State.PLANNED;
    }
}
