// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.Wiring;
import org.earleaf.app.web.Fixture;
import org.earleaf.exchange.FarmFolder;
import org.earleaf.farm.Farm;
import org.earleaf.field.Reading;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Replant;
import org.earleaf.outlook.Spread;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The keys that scripts rely on. */
class JsonKeysTest {
    private static void keys(JsonNode object, String... names) {
        assertThat(object.propertyNames()).contains(names);
    }

    @Test
    void field_prints_every_key_and_its_cells_add_up() {
        FarmDay day = new Fixture();
        JsonNode f = JsonMapper.shared()
                .readTree(Json.text(FieldJson.of(day.outlook(day.farm().zones().get(0)), false)));
        keys(
                f,
                "field",
                "zone",
                "on",
                "gdd_f",
                "stage",
                "leaf_collars",
                "height_in",
                "soil",
                "surface_n_lb_ac",
                "crop_n_lb_ac",
                "mineralised_lb_ac",
                "losses_lb_ac",
                "immobilised_lb_ac",
                "n_short",
                "yield_bu_ac",
                "limited_by",
                "emergence_date",
                "silk_date",
                "maturity_date",
                "not_ripe_probability",
                "balance");
        keys(f.get("height_in"), "p10", "p50", "p90");
        keys(f.get("losses_lb_ac"), "leached", "denitrified", "volatilised");
        keys(f.get("n_short"), "p10", "p50", "p90", "probability");
        keys(f.get("yield_bu_ac"), "p10", "p50", "p90");
        keys(f.get("balance"), "water_mm", "nitrogen_kg_ha");
        assertThat(f.get("soil")).hasSize(12);
        double sum = 0;
        for (JsonNode cell : f.get("soil")) {
            keys(cell, "column", "top_in", "bottom_in", "water_in", "nitrate_lb_ac", "ammonium_lb_ac", "urea_lb_ac");
            assertThat(cell.get("column").asString()).isIn("row", "middle");
            sum += cell.get("nitrate_lb_ac").asDouble()
                    + cell.get("ammonium_lb_ac").asDouble()
                    + cell.get("urea_lb_ac").asDouble();
        }
        // The fixture's season keeps its nitrogen: 45 kg/ha at the start and all that came, less all that went.
        double came = f.get("fertilised_lb_ac").asDouble()
                + f.get("mineralised_lb_ac").asDouble();
        double went = f.get("crop_n_lb_ac").asDouble()
                + f.get("losses_lb_ac").get("leached").asDouble()
                + f.get("losses_lb_ac").get("denitrified").asDouble()
                + f.get("surface_n_lb_ac").asDouble();
        double start = sum + went - came;
        JsonNode metric = JsonMapper.shared()
                .readTree(Json.text(FieldJson.of(day.outlook(day.farm().zones().get(0)), true)));
        keys(metric, "gdd_c", "height_cm", "surface_n_kg_ha", "crop_n_kg_ha", "losses_kg_ha", "yield_kg_ha");
        keys(metric.get("soil").get(0), "top_cm", "bottom_cm", "water_mm", "nitrate_kg_ha");
        double metricSum = 0;
        for (JsonNode cell : metric.get("soil")) {
            metricSum += cell.get("nitrate_kg_ha").asDouble()
                    + cell.get("ammonium_kg_ha").asDouble()
                    + cell.get("urea_kg_ha").asDouble();
        }
        assertThat(metricSum).isCloseTo(sum * 1.12085, within(1e-3 * metricSum));
        assertThat(start).isPositive();
    }

    @Test
    void a_second_planting_is_weighed_in_the_units_asked_for() {
        Replant r = new Replant(
                LocalDate.of(2026, 6, 2), 2, LocalDate.of(2026, 6, 5), 5000, 8000, 247, new Spread(-50, 250, 550));
        JsonNode us = JsonMapper.shared().readTree(Json.text(FieldJson.replant(Optional.of(r), false)));
        keys(us, "counted", "stand_plants_ac", "keep_bu_ac", "again_date", "again_bu_ac", "cost_usd_ac", "says");
        keys(us.get("gain_usd_ac"), "p10", "p50", "p90");
        assertThat(us.get("stand_plants_ac").asDouble()).isCloseTo(8094, within(1.0));
        assertThat(us.get("says").asString()).contains("8,100").contains("$100").contains("$101/ac better");
        JsonNode metric = JsonMapper.shared().readTree(Json.text(FieldJson.replant(Optional.of(r), true)));
        keys(metric, "stand_plants_ha", "keep_kg_ha", "cost_usd_ha");
        assertThat(FieldJson.replant(Optional.empty(), false)).isNull();
    }

    @Test
    void morning_and_options_print_every_key() {
        FarmDay day = new Fixture();
        JsonNode m = JsonMapper.shared().readTree(Json.text(MorningJson.of(day, false)));
        keys(
                m,
                "on",
                "weather_last_observed",
                "fields",
                "passes",
                "left_out",
                "not_judged",
                "spray_hours",
                "readings_worth_taking",
                "cautions");
        assertThat(m.get("weather_last_observed").asString()).isEqualTo("2026-06-29");
        keys(m.get("fields").get(0), "field", "stage", "height_in", "n_short", "replant", "out_of_reach");
        keys(m.get("fields").get(0).get("out_of_reach").get(0), "rig", "date");
        keys(m.get("left_out").get(0), "field", "kind", "answer", "reason");
        String[] pass = {
            "field",
            "kind",
            "product",
            "placement",
            "rate",
            "rate_unit",
            "product_rate",
            "product_rate_unit",
            "date",
            "rig",
            "gain_usd_ac",
            "chance_it_pays",
            "bad_case_usd_ac",
            "wait_cost_usd_ac_day",
            "why"
        };
        keys(m.get("passes").get(0), pass);
        assertThat(m.get("passes").get(0).get("rate").isNumber()).isTrue();
        JsonNode options = JsonMapper.shared()
                .readTree(Json.text(OptionsJson.of(
                        day.farm().zones().get(0),
                        day.on(),
                        day.options(day.farm().zones().get(0)),
                        List.of(),
                        false)));
        keys(options, "field", "zone", "on", "options");
        keys(options.get("options").get(0), pass);
        keys(options.get("options").get(0), "p10", "p90", "break_even_usd_bu");
        JsonNode metric = JsonMapper.shared().readTree(Json.text(MorningJson.of(day, true)));
        keys(metric.get("passes").get(0), "gain_usd_ha", "wait_cost_usd_ha_day");
        assertThat(metric.get("passes").get(0).get("rate_unit").asString()).isEqualTo("kg N/ha");
    }

    /**
     * What was there at the start is what is there and gone, less what came; so it is the same from every day of the
     * season. It closes only when no key leaves anything out.
     */
    @Test
    void field_accounts_for_all_nitrogen_of_a_season() {
        Farm farm = FarmFolder.read(Path.of(System.getProperty("earleaf.root", ".."), "demo-farm"));
        Zone zone = farm.zones().stream()
                .filter(z -> farm.readings().stream().noneMatch(r -> r.kind() == Reading.Kind.NITRATE && r.isOn(z)))
                .filter(Zone::isCorn)
                .findFirst()
                .orElseThrow();
        double may = start(farm, zone, LocalDate.of(2026, 5, 1));
        assertThat(may).isPositive();
        assertThat(start(farm, zone, LocalDate.of(2026, 6, 30))).isCloseTo(may, within(1e-4));
        assertThat(start(farm, zone, LocalDate.of(2026, 7, 14))).isCloseTo(may, within(1e-4));
    }

    private static double start(Farm farm, Zone zone, LocalDate on) {
        JsonNode f = JsonMapper.shared()
                .readTree(Json.text(
                        FieldJson.of(Wiring.live().day(farm, on, false).outlook(zone), false)));
        double there = f.get("surface_n_lb_ac").asDouble()
                + f.get("crop_n_lb_ac").asDouble()
                + f.get("immobilised_lb_ac").asDouble();
        for (JsonNode cell : f.get("soil")) {
            there += cell.get("nitrate_lb_ac").asDouble()
                    + cell.get("ammonium_lb_ac").asDouble()
                    + cell.get("urea_lb_ac").asDouble();
        }
        for (String loss : List.of("leached", "denitrified", "volatilised")) {
            there += f.get("losses_lb_ac").get(loss).asDouble();
        }
        return there
                - f.get("fertilised_lb_ac").asDouble()
                - f.get("deposited_lb_ac").asDouble()
                - f.get("mineralised_lb_ac").asDouble();
    }
}
