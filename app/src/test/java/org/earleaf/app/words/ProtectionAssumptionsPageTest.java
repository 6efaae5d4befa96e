// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.pressure.ProtectionSettings;
import org.earleaf.protection.KnownFact;
import org.junit.jupiter.api.Test;

/** docs/protection-assumptions.md is written from the code, so that it cannot lag behind. */
class ProtectionAssumptionsPageTest {
    @Test
    void the_page_of_assumptions_is_what_the_code_says() throws IOException {
        Path file = CatalogueTest.house().resolve("docs/protection-assumptions.md");
        String now = page();
        if (System.getProperty("earleaf.write") != null) {
            Files.writeString(file, now);
        }
        assertThat(Files.exists(file) ? Files.readString(file) : "")
                .as("docs/protection-assumptions.md; write it anew with: "
                        + "mvn -pl core,exchange,vision,app test -Dtest=ProtectionAssumptionsPageTest -Dearleaf.write")
                .isEqualTo(now);
    }

    @Test
    void every_default_lies_within_its_range() {
        for (ProtectionAssumption a : ProtectionAssumption.values()) {
            assertThat(a.usual()).as(a.name()).isBetween(a.low(), a.high());
            assertThat(Words.US.say(a)).as(a.name()).isNotBlank();
            assertThat(ProtectionSettings.USUAL.of(a)).isEqualTo(a.usual());
        }
    }

    @Test
    void everything_known_from_trials_names_its_source() {
        assertThat(KnownFact.listAll())
                .extracting(KnownFact::known)
                .containsExactlyInAnyOrder(KnownFact.Known.values());
        assertThat(KnownFact.listAll()).allSatisfy(f -> {
            assertThat(f.source()).isNotBlank();
            assertThat(f.said().values()).containsEntry("source", f.source());
        });
    }

    private static String page() {
        StringBuilder page = new StringBuilder("""
                # Assumptions about disease and insects

                Written by ProtectionAssumptionsPageTest from the list in the code and the catalogue of texts. A farm may set each within its range.
                The published numbers lie in the tables beside the code, each with its source: disease-thresholds.csv,
                infection-conditions.csv, severity-loss.csv, fungicide-response.csv, protection-evidence.csv.
                The weather model of tar spot is off: its coefficients are recalled and not confirmed against the paper.

                | id | meaning | unit | default | range | source |
                |---|---|---|---|---|---|
                """);
        for (ProtectionAssumption a : ProtectionAssumption.values()) {
            page.append("| ").append(a.name());
            page.append(" | ").append(Words.US.say(a));
            page.append(" | ").append(a.unit());
            page.append(" | ").append(number(a.usual()));
            page.append(" | ").append(number(a.low())).append(" to ").append(number(a.high()));
            page.append(" | ").append(Words.US.say(a.support())).append(" |\n");
        }
        return page.toString();
    }

    private static String number(double value) {
        return java.math.BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
