// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

class SaidJsonTest {
    private static final JsonMapper JSON =
            JsonMapper.builder().addModule(SaidJson.module()).build();

    private static Said read(String text) {
        return JSON.readValue(text, Said.class);
    }

    @Test
    void what_was_told_of_a_load_comes_back_as_it_was() {
        Said aside = Said.of("override.rule", "rule", "C02", "person", "C. Adviser", "reason", "2 rows");
        Said said = Said.of(
                "load.event.handed-over",
                "volume",
                Measure.VOLUME.of(.1),
                "step",
                2,
                "products",
                List.of("Demo F1", "Demo I2"),
                "aside",
                aside);
        assertThat(read(JSON.writeValueAsString(said))).isEqualTo(said);
    }

    @Test
    void a_sentence_kept_before_there_were_codes_is_told_as_it_is() {
        assertThat(read("\"step 1: INVENTED-3 confirmed\"")).isEqualTo(Said.text("step 1: INVENTED-3 confirmed"));
    }
}
