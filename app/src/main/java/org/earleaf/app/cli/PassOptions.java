// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.time.LocalDate;
import org.earleaf.entry.Draft;
import picocli.CommandLine.Option;

/** What was done; the options of {@code record made} and {@code record correct}. */
final class PassOptions {
    @Option(names = "--field", paramLabel = "NAME", descriptionKey = "cli.pass-options.option.field")
    private String field = "";

    @Option(names = "--zone", paramLabel = "NAME", descriptionKey = "cli.pass-options.option.zone")
    private String zone = "";

    @Option(names = "--product", paramLabel = "NAME", descriptionKey = "cli.pass-options.option.product")
    private String product = "";

    @Option(names = "--rate", paramLabel = "RATE", descriptionKey = "cli.pass-options.option.rate")
    private String rate = "";

    @Option(names = "--placement", paramLabel = "WHERE", descriptionKey = "cli.pass-options.option.placement")
    private String placement = "";

    @Option(names = "--inhibitor", paramLabel = "KIND", descriptionKey = "cli.pass-options.option.inhibitor")
    private String inhibitor = "";

    @Option(names = "--sure", descriptionKey = "cli.pass-options.option.sure")
    private boolean sure;

    /** Whether what may be a slip is meant so. */
    boolean isSure() {
        return sure;
    }

    Draft draft(String passId, LocalDate date) {
        return Draft.of(
                "pass", passId,
                "field", field,
                "zone", zone,
                "date", date.toString(),
                "product", product,
                "rate", rate,
                "placement", placement,
                "inhibitor", inhibitor);
    }
}
