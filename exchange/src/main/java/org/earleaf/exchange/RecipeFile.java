// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.earleaf.entry.Allowed;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Findings;
import org.earleaf.exchange.table.Measure;
import org.earleaf.exchange.table.Place;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.mix.Dose;
import org.earleaf.mix.MixForm;
import org.earleaf.mix.MixLine;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Said;

/**
 * A recipe as a file of its own: {@code product,rate,rate_unit,form} and, if wanted, {@code class}, which overrides the
 * form's place in the mixing order. The form may be left empty for a nitrogen product that is built in.
 */
public final class RecipeFile {
    private final Findings findings = new Findings();
    private final Set<String> seen = new HashSet<>();

    private RecipeFile() {}

    /** The lines of a recipe; throws an {@link EarleafException} with every problem found. */
    public static List<MixLine> read(Path file) {
        return new RecipeFile().lines(file);
    }

    private List<MixLine> lines(Path file) {
        if (!Files.isRegularFile(file)) {
            findings.problem(Place.of(file.toString()), "no such file", "a recipe as CSV", "Check the name.");
            findings.refuseIfAny();
        }
        List<MixLine> lines = Sheet.open(file, findings).map(this::lines).orElse(List.of());
        findings.refuseIfAny();
        return lines;
    }

    private List<MixLine> lines(Sheet sheet) {
        Column product = sheet.text("product");
        Column rate = sheet.number("rate", Measure.PLAIN, Allowed.ANY);
        Column unit = sheet.text("rate_unit");
        Column form = sheet.optionalText("form");
        Column mixClass = sheet.optionalText("class");
        List<MixLine> lines = new ArrayList<>();
        if (!sheet.isComplete()) {
            return lines;
        }
        if (sheet.rows().isEmpty()) {
            sheet.refuseNoRows();
        }
        for (Row row : sheet.rows()) {
            String name = row.text(product);
            if (!name.isEmpty() && !seen.add(name.toLowerCase(Locale.ROOT))) {
                row.refuse(product, name + " a second time", "every product once", "Put both amounts in one row.");
            }
            Optional<NitrogenProduct> nitrogen = NitrogenProduct.findBuiltIn(name);
            Optional<MixForm> place = form(row, form, mixClass, nitrogen);
            double amount = row.number(rate);
            String word = row.text(unit);
            if (row.isGood() && place.isPresent()) {
                dose(row, rate, unit, amount, word, place.get(), nitrogen)
                        .ifPresent(dose -> lines.add(new MixLine(name, dose, place.get(), nitrogen.orElse(null))));
            }
        }
        return lines;
    }

    /** The form, or the class that overrides it; a form that never goes in a tank stays refused under any class. */
    private static Optional<MixForm> form(Row row, Column form, Column mixClass, Optional<NitrogenProduct> nitrogen) {
        Optional<MixForm> byForm = parse(row, form);
        Optional<MixForm> byClass = parse(row, mixClass);
        if (row.isGood() && byForm.isEmpty() && byClass.isEmpty()) {
            if (nitrogen.filter(NitrogenProduct::isLiquid).isPresent()) {
                return MixForm.find("SL");
            }
            row.refuse(
                    form,
                    "an empty cell",
                    "a formulation code: " + String.join(" ", MixForm.codes()),
                    "Write the code of the label.");
        }
        return byClass.or(() -> byForm);
    }

    private static Optional<MixForm> parse(Row row, Column column) {
        String cell = row.cell(column);
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(MixForm.parse(cell, Said.text("")));
        } catch (EarleafException e) {
            row.refuse(column, e);
            return Optional.empty();
        }
    }

    private static Optional<Dose> dose(
            Row row,
            Column rate,
            Column unit,
            double amount,
            String word,
            MixForm form,
            Optional<NitrogenProduct> nitrogen) {
        if (!(amount > 0)) {
            row.refuse(rate, EarleafException.coded("rate.not-above-zero", "rate", row.cell(rate)));
            return Optional.empty();
        }
        try {
            return Optional.of(Dose.parse(amount, word, form, nitrogen.orElse(null), Said.text("")));
        } catch (EarleafException e) {
            row.refuse(unit, e);
            return Optional.empty();
        }
    }
}
