// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.earleaf.entry.Allowed;
import org.earleaf.entry.Entered;
import org.earleaf.entry.RecipeEntry;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Findings;
import org.earleaf.exchange.table.Measure;
import org.earleaf.exchange.table.Place;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
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
            findings.problem("recipe.no-file", Place.of(file.toString()), Said.of("found.no-file"));
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
        List<Column> columns = List.of(product, rate, unit, form, mixClass);
        for (Row row : sheet.rows()) {
            Entered<MixLine> line = RecipeEntry.alone(row.draft(columns));
            String name = row.cell(product);
            if (!name.isEmpty() && !seen.add(name.toLowerCase(Locale.ROOT))) {
                row.refuse("recipe.product-twice", product, Said.of("found.second-time", "what", name));
            }
            row.told(line, columns).ifPresent(lines::add);
        }
        return lines;
    }
}
