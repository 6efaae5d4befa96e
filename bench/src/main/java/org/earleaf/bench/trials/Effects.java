// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.units.BundledTable;

/**
 * Estimates from the trials, with the parameters as they are, the table of what the season model leaves unexplained, and
 * prints it beside the one in use, with each farm left out in turn.
 */
public final class Effects {
    private Effects() {}

    /** @param args the folder of measured corn, and the file that the estimate is written to */
    public static void main(String[] args) throws IOException {
        List<BundledTable.Row> inUse = BundledTable.rows("trial-effects.csv");
        List<Parameter> effects = inUse.stream()
                .map(row -> Parameter.valueOf(row.text("parameter")))
                .toList();
        List<SiteYear> trials = SiteYear.readAll(Path.of(args[0]));
        Residuals residuals = Residuals.of(trials, effects);
        EffectsTable table = new EffectsTable(effects, residuals.found());
        System.out.printf("%d site-years, error of a point %.0f kg/ha%n", trials.size(), residuals.error_kgHa());
        System.out.printf("%nestimated, 90 %% interval, in use%n%s", table.beside(inUse, residuals.again()));
        for (String farm :
                trials.stream().map(at -> at.farm().name()).distinct().toList()) {
            System.out.printf("%nwithout %s%n%s", farm, new EffectsTable(effects, residuals.without(farm)).text());
        }
        String head = String.format(
                "# Estimated from %d site-years by bench/trials effects; error of a measured point %.0f kg/ha.%n",
                trials.size(), residuals.error_kgHa());
        Files.writeString(Path.of(args[1]), head + table.text());
    }
}
