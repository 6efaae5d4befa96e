// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.Wiring;
import org.earleaf.decide.Option;
import org.earleaf.decide.ProtectionAnswer;
import org.earleaf.exchange.FarmFolder;
import org.earleaf.farm.Farm;
import org.earleaf.field.Purpose;
import org.earleaf.field.Zone;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Passes against disease on the invented farm; what is checked is that rules hold, there is no outside source. */
class ProtectionJsonTest {
    private static final Farm FARM = FarmFolder.read(Path.of(System.getProperty("earleaf.root", ".."), "demo-farm"));

    private static Zone zone(String field) {
        return FARM.zones().stream()
                .filter(z -> z.field().equals(field))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_field_above_its_threshold_gets_a_fungicide_with_every_key_and_an_unread_label_none() {
        FarmDay day = Wiring.live().day(FARM, LocalDate.of(2026, 6, 30), false);
        ProtectionAnswer answer = day.protection(zone("Weir Sixty"));
        Option go = answer.proposed().orElseThrow();
        assertThat(go.kind()).isEqualTo(Purpose.FUNGICIDE);
        assertThat(go.mayBeMade()).isTrue();
        assertThat(answer.options()).anyMatch(o -> o.kind().name().contains("INSECTICIDE") && !o.mayBeMade());
        assertThat(answer.leftOut()).extracting(ProtectionAnswer.LeftOut::kind).contains(Purpose.INSECTICIDE);
        JsonNode json = JsonMapper.shared().readTree(Json.text(OptionsJson.option(go, false)));
        assertThat(json.propertyNames())
                .contains("gain_usd_ac", "p10", "p90", "chance_it_pays", "bad_case_usd_ac", "break_even_usd_bu")
                .contains("products", "recipe", "carrier_gal_ac", "refusals", "assumptions", "may_be_made");
        assertThat(json.get("rate").asDouble()).isEqualTo(10);
        assertThat(json.get("rate_unit").asString()).isEqualTo("fl oz/ac");
        List<Object> assumed = OptionsJson.assumptions(List.of(go));
        assertThat(assumed).isNotEmpty();
        // Nobody has scouted the other field: looking is worth something, spraying is not allowed.
        ProtectionAnswer unseen = day.protection(zone("Schoolhouse"));
        assertThat(unseen.proposed()).isEmpty();
        assertThat(unseen.options()).noneMatch(Option::mayBeMade);
        assertThat(unseen.readings())
                .anyMatch(r -> r.kind() == org.earleaf.field.Reading.Kind.LESIONS
                        && r.worth_usdHa() > 0
                        && r.because().code().equals("scout.walk"));
    }
}
