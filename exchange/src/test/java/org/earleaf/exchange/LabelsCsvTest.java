// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import org.earleaf.farm.Farm;
import org.earleaf.label.ActiveIngredient;
import org.earleaf.label.DropletClass;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelItem;
import org.earleaf.label.LabelLimit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What labels.csv says is read as written, and nothing is added to it. */
class LabelsCsvTest {
    @TempDir
    private Path dir;

    private Farm read(String labels) {
        return FarmFolder.read(
                LabelFaults.label(TinyFolder.us()).with("labels.csv", labels).write(dir));
    }

    @Test
    void the_rows_of_a_product_and_crop_make_one_entry() {
        Farm farm = read(LabelFaults.GOOD);
        assertThat(farm.labels().entries()).extracting(LabelEntry::crop).containsExactly("corn", "wheat");
        LabelEntry corn = farm.labels().find("leaf guard", "Corn").orElseThrow();
        assertThat(corn.product()).isEqualTo("Leaf Guard");
        assertThat(corn.dry()).isFalse();
        assertThat(corn.registration()).isEqualTo("INV-12");
        assertThat(corn.version()).isEqualTo("12-A");
        assertThat(corn.clock()).isEqualTo(LabelEntry.Clock.DAYS_365);
        assertThat(corn.limit(LabelItem.WIND_LEAST)).isEqualTo(LabelLimit.noneStated());
        assertThat(corn.limit(LabelItem.WIND_MOST).value()).isCloseTo(4.4704, within(1e-9));
        assertThat(corn.limit(LabelItem.AIR_MOST)).isEqualTo(LabelLimit.notEntered());
        assertThat(corn.limit(LabelItem.FINEST)).isEqualTo(LabelLimit.of(DropletClass.M.ordinal()));
        assertThat(corn.limit(LabelItem.HARVEST)).isEqualTo(LabelLimit.of(30));
        assertThat(corn.figure(LabelItem.SINGLE).entered()).isEqualTo("12 fl oz/ac");
        assertThat(corn.limit(LabelItem.LAST_STAGE)).isEqualTo(LabelLimit.of(34));
        assertThat(corn.neverWith()).containsExactly("COC", "calcium");
        assertThat(corn.after()).containsExactly("WC");
        assertThat(corn.plantBack_d()).isEqualTo(Map.of("alfalfa", 30.0));
        assertThat(corn.look())
                .isEqualTo(new LabelEntry.Look(
                        "Ann", Instant.parse("2012-02-01T06:00:00Z"), "Ben", Instant.parse("2012-02-02T06:00:00Z")));
        LabelEntry wheat = farm.labels().find("Leaf Guard", "wheat").orElseThrow();
        assertThat(wheat.limit(LabelItem.LAST_STAGE)).isEqualTo(LabelLimit.of(69));
        assertThat(wheat.limit(LabelItem.HARVEST)).isEqualTo(LabelLimit.notEntered());
        assertThat(wheat.actives()).isEqualTo(corn.actives());
    }

    @Test
    void an_active_ingredient_is_gathered_from_its_rows() {
        ActiveIngredient a =
                read(LabelFaults.GOOD).labels().activesOf("Leaf Guard").get(0);
        assertThat(a.name()).isEqualTo("guardin");
        // 1 lb/gal is 0.119826427 kg/L (NIST Special Publication 811, appendix B.8)
        assertThat(a.content()).isCloseTo(1.2 * .119826427, within(1e-9));
        assertThat(a.counts()).isCloseTo(.8, within(1e-12));
        assertThat(a.groups()).containsExactly("FRAC 11", "FRAC 3");
        assertThat(a.single_kgHa()).isEqualTo(LabelLimit.noneStated());
        assertThat(a.season_kgHa().value()).isCloseTo(.26 * 1.120851, within(1e-6));
    }

    @Test
    void a_dry_product_is_by_weight_and_its_content_a_share() {
        Farm farm = FarmFolder.read(LabelFaults.label(TinyFolder.us()
                        .edit("products.csv", "Leaf Guard,SC,9,180,usd/gal", "Leaf Guard,WG,,3,usd/oz")
                        .edit("recipes.csv", "fl oz/ac", "oz/ac"))
                .with(
                        "labels.csv",
                        LabelFaults.GOOD
                                .replace("1.2,lb/gal", "50,%")
                                .replace("12,fl oz/ac", "2,oz/ac")
                                .replace("8,fl oz/ac", "1,oz/ac"))
                .write(dir));
        LabelEntry e = farm.labels().find("Leaf Guard", "corn").orElseThrow();
        assertThat(e.dry()).isTrue();
        assertThat(e.actives().get(0).content()).isEqualTo(.5);
        assertThat(e.limit(LabelItem.SINGLE).value()).isCloseTo(2 / 16.0 * 1.120851, within(1e-6));
    }

    @Test
    void without_a_form_the_unit_tells_whether_it_is_dry() {
        TinyFolder bare = TinyFolder.us().edit("products.csv", "Leaf Guard,SC,9,180,usd/gal", "Leaf Guard,,,3,usd/oz");
        String dry = LabelFaults.GOOD
                .replace("1.2,lb/gal", "50,%")
                .replace("12,fl oz/ac", "2,oz/ac")
                .replace("8,fl oz/ac", "1,oz/ac");
        assertThat(FarmFolder.read(
                                LabelFaults.label(bare).with("labels.csv", dry).write(dir))
                        .labels()
                        .find("Leaf Guard", "corn")
                        .orElseThrow()
                        .dry())
                .isTrue();
    }

    @Test
    void an_entry_that_nobody_looked_at_again_waits() {
        Farm farm = read(LabelFaults.GOOD.replace("Ben,2012-02-02", ","));
        assertThat(farm.labels().find("Leaf Guard", "corn")).isEmpty();
        assertThat(farm.labels().findWaiting("Leaf Guard", "corn")).isPresent();
    }

    @Test
    void who_looked_again_alone_is_kept_as_single() {
        LabelEntry e = read(LabelFaults.GOOD.replace("Ben", "Ann"))
                .labels()
                .find("Leaf Guard", "corn")
                .orElseThrow();
        assertThat(e.look().isSingle()).isTrue();
    }

    @Test
    void a_crop_without_known_stages_is_taken_and_told() {
        Farm farm = read(LabelFaults.GOOD.replace("Guard,wheat,last_stage,,Z69", "Guard,sunflower,height,,30 in"));
        assertThat(farm.labels().find("Leaf Guard", "sunflower")).isPresent();
        assertThat(farm.flags())
                .extracting(f -> f.what().toString())
                .anyMatch(w -> w.contains("label.stages-unknown{crop=sunflower}"));
    }

    @Test
    void nothing_of_a_label_is_filled_in() {
        assertThat(FarmFolder.read(TinyFolder.us().write(dir)).labels().entries())
                .isEmpty();
    }
}
