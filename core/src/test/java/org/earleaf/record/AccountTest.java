// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Prices;
import org.earleaf.farm.Product;
import org.earleaf.farm.WeatherBook;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.field.Drainage;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Hybrid;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Pass;
import org.earleaf.field.Placement;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Tillage;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneName;
import org.earleaf.soil.Horizon;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Units;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherSeries;
import org.junit.jupiter.api.Test;

class AccountTest {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 30);
    private static final Instant FILED = Instant.parse("2026-06-30T22:00:00Z");

    private static Zone zone(String zone, double acres) {
        double unknown = Double.NaN;
        SoilProfile soil = SoilProfile.of(
                List.of(new Horizon(0, 1524, 20, 25, 3, 6.5, unknown, Horizon.Measured.NOT_GIVEN)),
                "test",
                new ArrayList<>());
        return new Zone(
                ZoneName.of("Home", zone),
                acres * Units.HA_PER_AC,
                new Zone.Planting("corn", LocalDate.of(2026, 5, 1), Hybrid.ofMaturity(108), 8, .76, unknown),
                new Zone.Land(soil, Drainage.TILED, unknown),
                new Zone.Seedbed(PreviousCrop.SOYBEAN, Tillage.REDUCED, unknown),
                DiseaseFacts.NOT_GIVEN);
    }

    private static Farm farm() {
        Product demo = new Product("Demo F1", "SC", Double.NaN, Double.NaN, "", null, "DEMO-0001", "");
        return new Farm(
                "Test",
                new Site(40, -88, 220),
                Records.CENTRAL,
                new Farm.Ground(List.of(zone("east", 40), zone("west", 32)), List.of()),
                Farm.Work.NONE,
                new Farm.Shelf(List.of(), List.of(demo), List.of(), List.of(), List.of()),
                new WeatherBook(new WeatherSeries(List.of()), List.of(), List.of(), List.of(), List.of(), List.of()),
                Farm.Rules.usual(new Prices(4, .5, 1, Map.of())),
                List.of());
    }

    private static Pass pass(String zone, String product, double rate, String unit, double n_kgHa) {
        return new Pass(
                "p1",
                new FieldPart("Home", zone),
                DAY,
                product,
                new Pass.Rate(rate, unit, n_kgHa),
                Placement.ROW_BASE,
                Inhibitor.NONE,
                Pass.State.MADE);
    }

    private static String amount(Pass pass) {
        return Account.of("r", farm(), pass, Told.by("A. Grower", FILED))
                .products()
                .get(0)
                .amount()
                .text();
    }

    /** 40 lb N/ac on 72 ac are 2,880 lb N; UAN 32 holds .32 x 11.06 = 3.539 lb N a gallon: 813.7 gal, by hand. */
    @Test
    void an_amount_that_nobody_measured_is_rate_times_area_and_says_so() {
        FiledRecord record =
                Account.of("r", farm(), pass("", "UAN 32", 40, "lb N/ac", Units.kgHa(40)), Told.by("A. Grower", FILED));
        assertThat(record.area().text()).isEqualTo("72.0 ac");
        assertThat(record.products().get(0).amount().text()).isEqualTo("813.7 gal");
        assertThat(record.products().get(0).rate()).isEqualTo("40 lb N/ac");
        assertThat(record.extras()).containsEntry("amount from", "rate times area");
        assertThat(record.problems()).isEmpty();
    }

    /** By hand: 15 x 40 = 600 gal; 12 x 40 = 480 fl oz; 100 kg N/ha of urea (46 %) on 12.95 ha, 40 ac, half of it each: below. */
    @Test
    void each_unit_of_rate_gives_the_amount_in_its_own_unit() {
        assertThat(amount(pass("east", "UAN 32", 15, "gal/ac", 60))).isEqualTo("600.0 gal");
        assertThat(amount(pass("east", "Demo F1", 12, "fl oz/ac", 0))).isEqualTo("480.0 fl oz");
        // 100 kg N/ha x 16.187 ha / .46 = 3,519 kg; area is rounded to .1 ha first: 16.2 ha, 3,521.7 kg.
        assertThat(amount(pass("east", "urea", 100, "kg N/ha", 100))).isEqualTo("3521.7 kg");
    }

    @Test
    void the_shelf_gives_the_registration_number_and_the_record_then_asks_for_more() {
        FiledRecord record =
                Account.of("r", farm(), pass("", "Demo F1", 12, "fl oz/ac", 0), Told.by("A. Grower", FILED));
        assertThat(record.products().get(0).registration()).isEqualTo("DEMO-0001");
        assertThat(record.problems()).isNotEmpty();
    }

    @Test
    void work_past_midnight_ends_on_the_next_day() {
        Told told = new Told(
                Applicator.onOwnGround("A. Grower", ""),
                "",
                "",
                "highboy",
                Optional.of(Amount.parse("30 ac", "area")),
                Optional.of(Amount.parse("340 gal", "amount")),
                new Hours(Optional.of(LocalTime.of(20, 30)), Optional.of(LocalTime.of(1, 15))),
                new TreeMap<>(Map.of("wind", "6 mph")),
                FILED);
        FiledRecord record =
                Account.correction("r2", "r1", "rain stopped it", farm(), pass("", "UAN 32", 40, "lb N/ac", 45), told);
        assertThat(record.end().orElseThrow()).hasToString("2026-07-01T01:15-05:00[America/Chicago]");
        assertThat(record.extras()).containsOnlyKeys("wind");
        assertThat(record.isCorrection()).isTrue();
        assertThat(record.problems()).isEmpty();
    }

    @Test
    void a_share_of_the_tank_needs_the_amount_told() {
        assertThatThrownBy(() -> amount(pass("", "Demo F1", .25, "% v/v", 0)))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("record.amount-needed");
    }
}
