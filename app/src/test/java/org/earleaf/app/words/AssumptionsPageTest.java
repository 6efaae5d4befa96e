// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.earleaf.season.parameter.Parameter;
import org.junit.jupiter.api.Test;

/** docs/assumptions.md is written from {@link Parameter}, so that it cannot lag behind. */
class AssumptionsPageTest {
    @Test
    void the_page_of_assumptions_is_what_the_code_says() throws IOException {
        Path file = CatalogueTest.house().resolve("docs/assumptions.md");
        String now = page();
        if (System.getProperty("earleaf.write") != null) {
            Files.writeString(file, now);
        }
        assertThat(Files.exists(file) ? Files.readString(file) : "")
                .as("docs/assumptions.md; write it anew with: "
                        + "mvn -pl core,exchange,vision,app test -Dtest=AssumptionsPageTest -Dearleaf.write")
                .isEqualTo(now);
    }

    @Test
    void every_default_lies_within_its_range_and_every_spread_has_room() {
        for (Parameter p : Parameter.values()) {
            assertThat(p.usual()).as(p.name()).isBetween(p.low(), p.high());
            assertThat(p.cv() == 0 || p.sd() == 0)
                    .as("%s has one kind of spread", p)
                    .isTrue();
            if (p.cv() > 0) {
                assertThat(p.usual() * (1 + p.cv())).as(p.name()).isLessThanOrEqualTo(p.high());
                assertThat(p.usual() / (1 + p.cv())).as(p.name()).isGreaterThanOrEqualTo(p.low());
            }
            assertThat(Words.US.say(p)).as(p.name()).isNotBlank();
            assertThat(p.unit()).as(p.name()).isNotBlank();
        }
    }

    private static String page() {
        StringBuilder page = new StringBuilder("""
                # Assumptions of the season model

                Written by AssumptionsPageTest from the list in the code and the catalogue of texts. Spread: how far a value may stray between
                the members of an ensemble, as coefficient of variation (CV) or as standard deviation in its unit.
                Own constructs are chosen so that the model falls within published ranges (the comments of the
                equations name them); they are defaults to calibrate, not facts about a field.

                | id | meaning | unit | default | range | source | spread |
                |---|---|---|---|---|---|---|
                """);
        for (Parameter p : Parameter.values()) {
            page.append("| ").append(p.name());
            page.append(" | ").append(Words.US.say(p));
            page.append(" | ").append(p.unit());
            page.append(" | ").append(number(p.usual()));
            page.append(" | ").append(number(p.low())).append(" to ").append(number(p.high()));
            page.append(" | ").append(Words.US.say(p.tag()));
            page.append(" | ").append(spread(p)).append(" |\n");
        }
        return page.toString();
    }

    private static String spread(Parameter p) {
        if (p.cv() > 0) {
            return "CV " + Math.round(100 * p.cv()) + " %";
        }
        return p.sd() > 0 ? number(p.sd()) + " " + p.unit() : "none";
    }

    private static String number(double value) {
        return java.math.BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
