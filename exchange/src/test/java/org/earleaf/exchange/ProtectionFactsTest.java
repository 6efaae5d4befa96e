// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Product;
import org.earleaf.farm.ProductKind;
import org.earleaf.field.Disease;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.field.Incidence;
import org.earleaf.field.Placement;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a folder tells of disease and scouting is read as written, and nothing is added to it. */
class ProtectionFactsTest {
    @TempDir
    private Path dir;

    private Farm read(TinyFolder folder) {
        return FarmFolder.read(folder.write(dir));
    }

    @Test
    void a_field_tells_rating_history_and_wet_place() {
        Farm farm = read(ProtectionFaults.disease(TinyFolder.us(), "6,4,gray leaf spot; tar spot,yes"));
        DiseaseFacts home = farm.zones().get(0).disease();
        assertThat(home)
                .isEqualTo(new DiseaseFacts(
                        6,
                        Map.of(Disease.GRAY_LEAF_SPOT, 4.0),
                        Set.of(Disease.GRAY_LEAF_SPOT, Disease.TAR_SPOT),
                        true));
        assertThat(home.rating(Disease.GRAY_LEAF_SPOT)).isEqualTo(4);
        assertThat(home.rating(Disease.SOUTHERN_RUST)).isEqualTo(6);
        assertThat(farm.zones().get(1).disease()).isEqualTo(DiseaseFacts.NOT_GIVEN);
    }

    @Test
    void a_product_says_what_it_is_for() {
        assertThat(read(TinyFolder.us().wider("products.csv", "kind", 3, "Fungicide"))
                        .products())
                .extracting(Product::kind)
                .containsExactly(ProductKind.OTHER, ProductKind.FUNGICIDE);
    }

    @Test
    void plants_with_lesions_need_no_other_value_and_are_kept_beside_the_note() {
        Farm farm = read(ProtectionFaults.count(TinyFolder.us(), "lesions", "", "low spots first", "GLS,58,100,-3"));
        Reading r = farm.readings().get(5);
        assertThat(r.value()).isEqualTo(0.58);
        assertThat(r.entered()).isEqualTo("58/100");
        assertThat(r.note()).isEqualTo("low spots first");
        assertThat(r.scouted().disease()).contains(Disease.GRAY_LEAF_SPOT);
        assertThat(r.scouted().counted()).contains(new Incidence(58, 100));
        assertThat(r.scouted().leaf()).hasValue(-3);
    }

    @Test
    void a_count_of_aphids_keeps_its_plants_and_their_enemies() {
        Farm farm = read(TinyFolder.us()
                .with(
                        "readings.csv",
                        "field,date,kind,value,unit,found,positive,plants,lady_beetles,mummies,note\n"
                                + "Home,2012-07-05,insects,60,,aphids,40,100,0.3,2,\"lacewings 9, tar spot\"\n"));
        Scouted seen = farm.readings().get(0).scouted();
        assertThat(seen.isAphids()).isTrue();
        assertThat(seen.counted()).contains(new Incidence(40, 100));
        assertThat(seen.enemies()).isEqualTo(new Scouted.Enemies(0.3, 0, 2));
    }

    @Test
    void lesions_may_be_a_share_of_plants_or_of_the_leaf() {
        Farm farm = read(TinyFolder.us()
                .with(
                        "readings.csv",
                        "field,date,kind,value,unit,found\n"
                                + "Home,2012-07-05,lesions,8,% of leaf,tar spot\n"
                                + "Home,2012-07-05,lesions,40,% of plants,tar spot\n"));
        assertThat(farm.readings()).extracting(Reading::value).containsExactly(.08, .4);
        assertThat(farm.readings())
                .extracting(r -> r.scouted().by())
                .containsExactly(Scouted.By.OF_LEAF, Scouted.By.OF_PLANTS);
    }

    @Test
    void a_rig_may_be_driven_for_spraying_in_taller_corn() {
        Farm farm = read(TinyFolder.us().wider("rigs.csv", "spray_clearance_in", 2, "110"));
        assertThat(farm.rigs().get(0).clearance_m(Placement.OVER_THE_TOP)).isCloseTo(110 * .0254, within(1e-9));
        assertThat(farm.rigs().get(0).clearance_m(Placement.ROW_BASE)).isCloseTo(72 * .0254, within(1e-9));
    }
}
