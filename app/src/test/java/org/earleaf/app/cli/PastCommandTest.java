// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.app.Main;
import org.earleaf.app.store.FarmStore;
import org.earleaf.app.store.Farms;
import org.earleaf.farm.Farm;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PastCommandTest {
    @TempDir
    Path folder;

    @BeforeEach
    void keep() {
        Farm farm = Farms.small();
        try (FarmStore store = FarmStore.create(folder.resolve("farm.db"))) {
            store.importFarm(farm, farm.weather().observed().days());
        }
    }

    private Ran past(String... args) {
        List<String> all = new ArrayList<>(
                List.of("past", "--farm", folder.resolve("farm.db").toString()));
        all.addAll(List.of(args));
        return Ran.of(Main.commandLine(), all.toArray(String[]::new));
    }

    private static JsonNode json(Ran ran) {
        assertThat(ran.exit()).as(ran.err()).isZero();
        return JsonMapper.shared().readTree(ran.out());
    }

    @Test
    void a_year_is_entered_listed_entered_again_and_taken_out() {
        assertThat(past().out()).contains("No past years are entered.");
        assertThat(past("--field=home eighty", "--year=2021", "--yield=200 bu/ac", "--nitrogen=160 lb N/ac")
                        .out())
                .isEqualToIgnoringNewLines("Kept: Home Eighty, 2021: corn, 200 bu/ac, 160 lb N/ac.");
        assertThat(past("--field=Home Eighty", "--year=2020", "--crop=soybean").exit())
                .isZero();
        past("--field=Home Eighty", "--year=2021", "--yield=190 bu/ac");
        assertThat(past().out().lines())
                .containsExactly("Home Eighty, 2021: corn, 190 bu/ac", "Home Eighty, 2020: soybeans");
        assertThat(past("--field=Sand Hill").out()).contains("No past years are entered.");
        assertThat(past("--field=Home Eighty", "--year=2020", "--out").out()).contains("Taken out", "2020");
        assertThat(past("--field=Home Eighty").out().lines()).hasSize(1);
        Ran gone = past("--field=Home Eighty", "--year=2020", "--out", "--json");
        assertThat(gone.exit()).isEqualTo(2);
        assertThat(gone.err()).contains("past.unknown");
    }

    @Test
    void programs_read_the_years_in_the_units_asked_for_and_null_where_nothing_is_known() {
        past("--field=Home Eighty", "--year=2021", "--yield=200 bu/ac");
        JsonNode us = json(past("--json")).get("past").get(0);
        assertThat(us.get("year").asInt()).isEqualTo(2021);
        assertThat(us.get("crop").asString()).isEqualTo("corn");
        assertThat(us.get("yield_bu_ac").asDouble()).isCloseTo(200, within(1e-6));
        assertThat(us.get("nitrogen_lb_ac").isNull()).isTrue();
        JsonNode metric = json(past("--json", "--units=metric")).get("past").get(0);
        assertThat(metric.get("yield_kg_ha").asDouble()).isCloseTo(12_553.5, within(.1));
    }

    @Test
    void what_may_be_a_slip_is_kept_with_a_word_that_it_is_so() {
        Ran asked = past("--field=Home Eighty", "--year=2021", "--yield=330 bu/ac");
        assertThat(asked.exit()).isEqualTo(2);
        assertThat(asked.err()).contains("--yield", "330 bu/ac", "--sure");
        assertThat(past("--field=Home Eighty", "--year=2021", "--yield=330 bu/ac", "--sure")
                        .exit())
                .isZero();
    }

    @Test
    void a_field_that_is_not_there_is_told_with_those_that_are_in_a_list_too() {
        assertThat(past("--field=Away").err()).contains("Home Eighty or Sand Hill");
    }
}
