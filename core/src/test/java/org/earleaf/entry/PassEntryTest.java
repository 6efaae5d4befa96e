// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import org.earleaf.units.Problem;
import org.earleaf.units.Units;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherSeries;
import org.junit.jupiter.api.Test;

class PassEntryTest {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 10);
    private static final Pass PLANNED = new Pass(
            "passes.csv row 2",
            new FieldPart("Home", ""),
            DAY.plusDays(3),
            "UAN 32",
            new Pass.Rate(40, "lb N/ac", Units.kgHa(40)),
            Placement.ROW_BASE,
            Inhibitor.NONE,
            Pass.State.PLANNED);

    private static Farm farm() {
        double unknown = Double.NaN;
        SoilProfile soil = SoilProfile.of(
                List.of(new Horizon(0, 1524, 20, 25, 3, 6.5, unknown, new Horizon.Measured(1.4, unknown, unknown))),
                "test",
                new ArrayList<>());
        Zone zone = new Zone(
                ZoneName.of("Home", ""),
                10,
                new Zone.Planting("corn", LocalDate.of(2026, 5, 1), Hybrid.ofMaturity(108), 8, .76, unknown),
                new Zone.Land(soil, Drainage.TILED, unknown),
                new Zone.Seedbed(PreviousCrop.SOYBEAN, Tillage.REDUCED, unknown),
                DiseaseFacts.NOT_GIVEN);
        Product demo = new Product("Demo F1", "SC", unknown, unknown, "", null, "DEMO-0001", "");
        return new Farm(
                "Test",
                new Site(40, -88, 220),
                ZoneId.of("America/Chicago"),
                new Farm.Ground(List.of(zone), List.of()),
                new Farm.Work(List.of(PLANNED), List.of(), List.of(), List.of()),
                new Farm.Shelf(List.of(), List.of(demo), List.of(), List.of(), List.of()),
                new WeatherBook(new WeatherSeries(List.of()), List.of(), List.of(), List.of(), List.of(), List.of()),
                Farm.Rules.usual(new Prices(4, .5, 1, Map.of())),
                List.of());
    }

    private static Pass pass(String id, String field, String product, String rate, String placement) {
        Draft draft = Draft.of(
                "pass",
                id,
                "field",
                field,
                "date",
                DAY.toString(),
                "product",
                product,
                "rate",
                rate,
                "placement",
                placement);
        Draft whole = PassEntry.asPlanned(draft, farm().passes());
        return PassEntry.of(whole, Plots.of(farm()), Shelf.of(farm()), Optional.of(DAY), Pass.State.MADE)
                .orThrow();
    }

    @Test
    void a_planned_pass_is_as_planned_where_nothing_else_is_said() {
        Pass made = pass(PLANNED.id(), "", "", "35 lb N/ac", "");
        assertThat(made.id()).isEqualTo(PLANNED.id());
        assertThat(made.date()).isEqualTo(DAY);
        assertThat(made.rate().entered()).isEqualTo(35);
        assertThat(made.placement()).isEqualTo(Placement.ROW_BASE);
        assertThat(made.state()).isEqualTo(Pass.State.MADE);
    }

    /** 15 gal/ac of UAN 32 at 3.539 lb N a gallon is 53.1 lb N/ac, 59.5 kg/ha. */
    @Test
    void the_nitrogen_follows_from_product_and_rate() {
        assertThat(pass("", "home", "uan 32", "15 gal/ac", "mid-row coulter").nitrogen_kgHa())
                .isCloseTo(59.5, within(.05));
        assertThat(pass("", "Home", "Demo F1", "12 fl oz/ac", "over the top").nitrogen_kgHa())
                .isZero();
    }

    @Test
    void every_problem_is_told_at_once() {
        assertThatThrownBy(() -> pass("", "Holm", "UAN 33", "40", "beside"))
                .isInstanceOfSatisfying(
                        EarleafException.class, e -> assertThat(e.problems()).hasSize(4))
                .hasMessageContaining("field.unknown")
                .hasMessageContaining("product.unknown")
                .hasMessageContaining("rate.unreadable")
                .hasMessageContaining("placement.unknown");
        refuses("pass.unknown", () -> pass("nothing", "", "", "", ""));
        refuses("rate.no-nitrogen", () -> pass("", "Home", "Demo F1", "12 lb N/ac", "over the top"));
        refuses("rate.not-above-zero", () -> pass("", "Home", "UAN 32", "0 lb N/ac", "broadcast"));
    }

    private static void refuses(String code, org.assertj.core.api.ThrowableAssert.ThrowingCallable entry) {
        assertThatThrownBy(entry).isInstanceOfSatisfying(EarleafException.class, e -> assertThat(e.problems())
                .extracting(Problem::code)
                .containsExactly(code));
    }

    @Test
    void rates_that_nobody_drives_are_refused_and_high_ones_are_asked_about() {
        refuses("rate.above-most-nitrogen", () -> pass("", "Home", "anhydrous ammonia", "2000 lb N/ac", "knifed"));
        refuses("pass.ammonia-not-knifed", () -> pass("", "Home", "anhydrous ammonia", "150 lb N/ac", "broadcast"));
        refuses("pass.dry-dribbled", () -> pass("", "Home", "urea", "100 lb N/ac", "row-base dribble"));
        refuses("rate.above-most-of-unit", () -> pass("", "Home", "Demo F1", "28000 fl oz/ac", "over the top"));
        refuses("rate.ounces-of-liquid", () -> pass("", "Home", "Demo F1", "12 oz/ac", "over the top"));
        Draft high = Draft.of(
                "field",
                "Home",
                "date",
                DAY.toString(),
                "product",
                "UAN 32",
                "rate",
                "300 lb N/ac",
                "placement",
                "broadcast");
        Entered<Pass> entered =
                PassEntry.of(high, Plots.of(farm()), Shelf.of(farm()), Optional.of(DAY), Pass.State.MADE);
        assertThat(entered.orThrow().rate().entered()).isEqualTo(300);
        assertThat(entered.orThrow().nitrogen_kgHa()).isEqualTo(RateRule.MODEL_KGHA);
        assertThat(entered.remarks()).extracting(r -> r.said().code()).containsExactly("rate.beyond-the-model");
    }
}
