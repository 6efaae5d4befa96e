// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.earleaf.app.store.Tanks.DAY;
import static org.earleaf.app.store.Tanks.T;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.app.RecordCopy;
import org.earleaf.app.store.LoadStore.Kept;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Product;
import org.earleaf.farm.ProductId;
import org.earleaf.farm.ProductKind;
import org.earleaf.farm.Rig;
import org.earleaf.farm.RigId;
import org.earleaf.field.FieldId;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Pass;
import org.earleaf.field.Placement;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneId;
import org.earleaf.field.ZoneName;
import org.earleaf.load.LotStock;
import org.earleaf.record.Amount;
import org.earleaf.record.Chain;
import org.earleaf.record.FiledRecord;
import org.earleaf.record.Hours;
import org.earleaf.record.RecordCorrection;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Said;
import org.earleaf.week.Week;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Names change in the middle of a season; nothing that was stored is lost by it. */
class RenameTest extends WithLoads {
    private static final String FIELD = Tanks.farm().zones().get(0).field();
    private static final String PRODUCT = Tanks.label().product();
    private static final String RIG = "highboy";

    @Test
    void a_field_takes_what_was_done_and_seen_with_it() {
        store.enter(reading(FIELD));
        reserved("1", "job-1", 6);
        Kept before = loads.get("1");
        store.renameField(FIELD, "Long Eighty");
        Farm farm = store.farm();
        assertThat(farm.zonesOf(FIELD)).isEmpty();
        assertThat(farm.zonesOf("Long Eighty")).extracting(Zone::id).allMatch(id -> id.field()
                .equals(new FieldId(FIELD)));
        assertThat(farm.readings()).extracting(Reading::field).containsOnly("Long Eighty");
        assertThat(farm.passes()).extracting(Pass::field).doesNotContain(FIELD);
        Kept after = loads.get("1");
        assertThat(after.version()).isEqualTo(before.version());
        assertThat(after.load().grounds()).extracting(g -> g.field()).containsOnly("Long Eighty");
        assertThat(after.load().isLocked()).isTrue();
        assertThat(mixed("1").load().grounds()).extracting(g -> g.field()).containsOnly("Long Eighty");
        store.enter(reading("Long Eighty"));
        store.renameField("Long Eighty", FIELD);
        assertThat(store.farm().readings()).extracting(Reading::field).containsOnly(FIELD);
    }

    @Test
    void what_was_poured_on_a_field_counts_under_its_new_name() {
        reserved("1", "job-1", 6);
        Kept second = planned("2", "job-2", 6);
        List<String> before = verdicts(second);
        store.renameField(FIELD, "Long Eighty");
        store.renameProduct(PRODUCT, "Late Guard");
        assertThat(verdicts(loads.get("2"))).isEqualTo(before);
    }

    private List<String> verdicts(Kept kept) {
        return loads.findings(kept.load()).stream()
                .map(f -> f.what() + " " + f.verdict())
                .toList();
    }

    @Test
    void a_product_takes_its_label_its_lots_and_its_loads_with_it() {
        reserved("1", "job-1", 6);
        List<LotStock> free = loads.free();
        store.renameProduct(PRODUCT, "Late Guard");
        Farm farm = store.farm();
        assertThat(farm.findProduct(PRODUCT)).isEmpty();
        assertThat(farm.findProduct("Late Guard").orElseThrow().id()).isEqualTo(new ProductId(PRODUCT));
        assertThat(farm.labels().find("Late Guard", "corn")).isPresent();
        assertThat(farm.shelf().stock())
                .extracting(s -> s.product())
                .contains("Late Guard")
                .doesNotContain(PRODUCT);
        assertThat(loads.free())
                .extracting(LotStock::lot, LotStock::free)
                .containsExactlyElementsOf(free.stream()
                        .map(l -> org.assertj.core.groups.Tuple.tuple(l.lot(), l.free()))
                        .toList());
        assertThat(loads.drawn("1")).extracting(d -> d.product()).containsOnly("Late Guard");
        assertThat(mixed("1").load().lines()).extracting(l -> l.product()).contains("Late Guard");
        loads.applied("1", loads.get("1").version(), "A", T);
        assertThat(loads.free()).allMatch(l -> l.free() >= 0);
    }

    @Test
    void a_rig_takes_its_tank_and_its_cleanouts_with_it() {
        reserved("1", "job-1", 6);
        reserved("2", "job-2", 6);
        mixed("1");
        store.renameRig(RIG, "Old Blue");
        Rig rig = store.farm().rigs().stream()
                .filter(r -> r.name().equals("Old Blue"))
                .findFirst()
                .orElseThrow();
        assertThat(rig.id()).isEqualTo(new RigId(RIG));
        assertThat(loads.get("1").load().rig()).isEqualTo("Old Blue");
        assertThatThrownBy(() -> loads.mixing("2", loads.get("2").version(), Tanks.LOOKED, "A", T))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("where.tank-of{rig=Old Blue}");
        loads.cleaned("Old Blue", "rinsed three times", "A", T);
        loads.applied("1", loads.get("1").version(), "A", T);
        loads.mixing("2", loads.get("2").version(), Tanks.LOOKED, "A", T);
    }

    @Test
    void what_was_filed_stays_as_it_was_filed() {
        Pass fresh = Farms.pass("", FIELD, DAY, 30, Pass.State.PLANNED);
        Chain.Entry filed = store.fileMade(fresh, RecordBookTest.account("r1", "", "A. Grower"));
        store.renameField(FIELD, "Long Eighty");
        assertThat(store.records()).containsExactly(filed);
        assertThat(filed.record().field()).isEqualTo(FIELD);
        assertThat(Chain.verify(store.records())).isEmpty();
        assertThat(store.farm().passes())
                .filteredOn(p -> p.id().equals(filed.record().passId()))
                .extracting(Pass::field)
                .containsExactly("Long Eighty");
        store.requireWhole();
    }

    @Test
    void a_record_of_a_product_that_is_called_otherwise_by_now_is_corrected() {
        Pass fresh = Farms.pass("", FIELD, DAY, 30, Pass.State.PLANNED);
        Chain.Entry filed = store.fileMade(fresh, RecordBookTest.account("r1", "", "A. Grower"));
        FarmStoreTest.put(store, farmOf());
        store.renameField(FIELD, "Long Eighty");
        RecordCorrection half = new RecordCorrection(
                filed.record(),
                List.of(Amount.parse("750 gal", "amount")),
                filed.record().area(),
                Hours.NOT_TOLD,
                "",
                "",
                java.util.Map.of(),
                "half of it",
                "A. Grower");
        List<Pass> right = half.passes(store.farm());
        assertThat(right).singleElement().satisfies(p -> assertThat(p.rate().entered())
                .isEqualTo(15));
        store.correct(
                half.record("r2", store.farm().timeZone(), T, store.loads().labels(), Said::code), right);
        assertThat(store.farm().passes())
                .filteredOn(p -> p.id().equals(filed.record().passId()))
                .extracting(Pass::field, p -> p.rate().entered())
                .containsExactly(org.assertj.core.groups.Tuple.tuple("Long Eighty", 15.0));
    }

    @Test
    void passes_of_a_load_are_corrected_under_the_new_name_of_their_product() {
        reserved("1", "job-1", 6);
        Kept k = mixed("1");
        loads.applied("1", k.version(), "A", T);
        List<Chain.Entry> filed =
                loads.file("1", store.farm(), Placement.OVER_THE_TOP, LoadFilingTest.told("5 mph from S", "C-1", T));
        store.renameProduct(PRODUCT, "Late Guard");
        store.renameProduct("Late Guard", "Later Guard");
        FiledRecord wrong = filed.get(0).record();
        List<Pass> right = new RecordCorrection(
                        wrong,
                        List.of(wrong.products().get(0).amount()),
                        wrong.area(),
                        Hours.NOT_TOLD,
                        "",
                        "",
                        java.util.Map.of(),
                        "as it was",
                        "A. Grower")
                .passes(store.farm());
        assertThat(right).singleElement().satisfies(p -> assertThat(p.product()).isEqualTo("Later Guard"));
    }

    @Test
    void a_plan_in_the_drivers_hands_follows_its_fields_and_rigs() {
        Week.Told north = new Week.Told(FIELD, "", "nitrogen, part 1 of 2", RIG, DAY);
        store.handed().keep(new HandedPlans.Handed(T, List.of(north)));
        assertThat(store.handed().findNewest().orElseThrow().passes()).containsExactly(north);
        store.renameField(FIELD, "Long Eighty");
        store.renameRig(RIG, "Old Blue");
        assertThat(store.handed().findNewest().orElseThrow().passes())
                .singleElement()
                .satisfies(t -> {
                    assertThat(t.pass()).isEqualTo("Long Eighty, nitrogen, part 1 of 2");
                    assertThat(t.rig()).isEqualTo("Old Blue");
                });
    }

    @Test
    void a_plan_handed_out_by_an_earlier_version_is_read_as_it_was() {
        store.handed().keep(new HandedPlans.Handed(T, List.of(new Week.Told("", "", "North, nitrogen", RIG, DAY))));
        assertThat(store.handed().findNewest().orElseThrow().passes())
                .extracting(Week.Told::pass)
                .containsExactly("North, nitrogen");
    }

    @Test
    void an_earlier_name_still_finds_its_thing() {
        store.renameField(FIELD, "Long Eighty");
        store.renameField("Long Eighty", "Third Name");
        store.enter(reading("Long Eighty"));
        store.enter(reading(FIELD));
        assertThat(store.farm().readings()).extracting(Reading::field).containsOnly("Third Name");
        String other = store.farm().zones().stream()
                .map(Zone::field)
                .filter(f -> !f.equals("Third Name"))
                .findFirst()
                .orElseThrow();
        assertThatThrownBy(() -> store.renameField(other, "Long Eighty")).hasMessageContaining("name.taken");
    }

    @Test
    void a_folder_that_still_has_the_first_name_adds_nothing_twice() {
        store.renameField(FIELD, "Long Eighty");
        store.renameProduct(PRODUCT, "Late Guard");
        store.renameRig(RIG, "Old Blue");
        Farm before = store.farm();
        ImportReport again = FarmStoreTest.put(store, farmOf());
        assertThat(again.added().values()).containsOnly(0);
        assertThat(store.farm()).isEqualTo(before);
    }

    @Test
    void a_folder_that_gives_an_id_may_change_the_name() {
        FarmStoreTest.put(store, called(FIELD, "f-1"));
        assertThat(store.farm().zones().get(0).id().field())
                .as("what was known by its name keeps that for its id")
                .isEqualTo(new FieldId(FIELD));
        ImportReport report = FarmStoreTest.put(store, called("Long Eighty", "f-1"));
        assertThat(report.differences())
                .extracting(d -> d.sentence(false))
                .contains("field Long Eighty: name " + FIELD + " -> Long Eighty");
        assertThat(report.added().values()).containsOnly(0);
        assertThat(store.farm().zonesOf("Long Eighty")).isNotEmpty();
        assertThat(store.farm().passes()).extracting(Pass::field).doesNotContain(FIELD);
    }

    /** The farm as a folder would tell it that calls its first field so. */
    private static Farm called(String name, String id) {
        List<Zone> zones = farmOf().zones().stream()
                .map(z -> z.field().equals(FIELD)
                        ? RecordCopy.with(z, "called", new ZoneName(ZoneId.named(id, z.zone()), name, z.zone()))
                        : z)
                .toList();
        List<Pass> passes = farmOf().passes().stream()
                .map(p -> p.field().equals(FIELD) ? RecordCopy.with(p, "part.field", name) : p)
                .toList();
        List<Reading> readings = farmOf().readings().stream()
                .map(r -> r.field().equals(FIELD) ? RecordCopy.with(r, "part.field", name) : r)
                .toList();
        return RecordCopy.with(
                RecordCopy.with(RecordCopy.with(farmOf(), "ground.zones", zones), "work.passes", passes),
                "work.readings",
                readings);
    }

    /** With the product of the loads on the shelf. */
    private static Farm farmOf() {
        Product product =
                new Product(PRODUCT, "SC", 1.1, Double.NaN, "", null, "INVENTED-7", "", ProductKind.FUNGICIDE);
        List<Product> products = new ArrayList<>(Tanks.farm().products());
        products.add(product);
        return RecordCopy.with(Tanks.farm(), "shelf.products", products);
    }

    @BeforeEach
    void shelve() {
        FarmStoreTest.put(store, farmOf());
    }

    @Test
    void a_name_that_is_taken_or_none_is_refused() {
        assertThatThrownBy(() -> store.renameField(FIELD, " "))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("name.unreadable");
        assertThatThrownBy(() -> store.renameField("No Such Field", "Other")).hasMessageContaining("name.unknown");
        Rig other = store.farm().rigs().get(store.farm().rigs().size() - 1);
        if (!other.name().equals(RIG)) {
            assertThatThrownBy(() -> store.renameRig(RIG, other.name())).hasMessageContaining("name.taken");
        }
        store.renameField(FIELD, "Long Eighty");
        store.renameField("Long Eighty", FIELD);
        assertThat(store.farm().zones().get(0).field()).isEqualTo(FIELD);
    }

    private static Reading reading(String field) {
        return new Reading(
                "",
                new FieldPart(field, ""),
                DAY,
                Reading.Kind.HEIGHT,
                80,
                "80 cm",
                Reading.Sampled.NO_SOIL,
                "",
                Scouted.NOTHING);
    }
}
