// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.time.LocalDate;
import org.earleaf.entry.Draft;
import picocli.CommandLine.Option;

/** What was done; the options of {@code record made} and {@code record correct}. */
final class PassOptions {
    @Option(names = "--field", paramLabel = "NAME", description = "The field, for a pass that was not planned.")
    private String field = "";

    @Option(names = "--zone", paramLabel = "NAME", description = "Its zone (default: the whole field).")
    private String zone = "";

    @Option(names = "--product", paramLabel = "NAME", description = "The product (default: as planned).")
    private String product = "";

    @Option(names = "--rate", paramLabel = "RATE", description = "'40 lb N/ac', '15 gal/ac' ... (default: as planned).")
    private String rate = "";

    @Option(names = "--placement", paramLabel = "WHERE", description = "'row-base dribble' ... (default: as planned).")
    private String placement = "";

    @Option(
            names = "--inhibitor",
            paramLabel = "KIND",
            description = "none, urease, nitrification or both (default: as planned, else none).")
    private String inhibitor = "";

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
