// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.earleaf.farm.Farm;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Pass;
import org.earleaf.record.Amount;
import org.earleaf.record.Applicator;
import org.earleaf.record.Chain;
import org.earleaf.record.FiledRecord;
import org.earleaf.record.ProductUse;
import org.earleaf.units.EarleafException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.dao.DataAccessException;
import org.springframework.dao.DuplicateKeyException;

class RecordBookTest {
    @TempDir
    Path folder;

    private FarmStore store;
    private final LocalDate day = LocalDate.of(2026, 6, 8);

    @BeforeEach
    void open() {
        store = FarmStore.create(folder.resolve("earleaf.db"));
        FarmStoreTest.put(store, Farms.small());
    }

    @AfterEach
    void close() {
        store.close();
    }

    static Function<Pass, FiledRecord> account(String id, String corrects, String person) {
        return pass -> new FiledRecord(
                new FiledRecord.Filing(
                        id,
                        corrects,
                        corrects.isEmpty() ? "" : "wrong amount",
                        Instant.parse("2026-06-08T23:00:00Z"),
                        person),
                pass.id(),
                new FiledRecord.Treated(new FieldPart(pass.field(), ""), "", "corn", Amount.parse("79 ac", "area")),
                new FiledRecord.Work(
                        pass.placement().word(), "highboy", pass.date(), Optional.empty(), Optional.empty()),
                List.of(ProductUse.fertiliser(pass.product(), Amount.parse("1500 gal", "amount"), "60 kg N/ha")),
                Applicator.onOwnGround(person, ""),
                new TreeMap<>());
    }

    private Pass planned() {
        return store.farm().passes().get(1);
    }

    private int count() {
        return store.records().size();
    }

    @Test
    void a_pass_marked_made_and_its_record_come_together() {
        Chain.Entry entry = store.fileMade(planned(), account("r1", "", "A. Grower"));
        assertThat(planned().state()).isEqualTo(Pass.State.MADE);
        assertThat(store.records()).containsExactly(entry);
        assertThat(store.findRecord("1")).contains(entry);
        assertThat(store.findRecord("r1").orElseThrow().record().passId()).isEqualTo("passes.csv row 3");
    }

    @Test
    void an_incomplete_record_leaves_the_pass_as_it_was() {
        Farm before = store.farm();
        assertThatThrownBy(() -> store.fileMade(planned(), account("r1", "", "")))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("record.no-applicator");
        assertThat(store.farm()).isEqualTo(before);
        assertThat(store.records()).isEmpty();
    }

    @Test
    void a_pass_that_was_not_planned_is_kept_under_a_new_id() {
        Pass fresh = Farms.pass("", "Sand Hill", day, 30, Pass.State.PLANNED);
        Chain.Entry entry = store.fileMade(fresh, account("r1", "", "A. Grower"));
        Pass kept = store.farm().passes().get(2);
        assertThat(kept.id()).isNotEmpty().isEqualTo(entry.record().passId());
        assertThat(kept.state()).isEqualTo(Pass.State.MADE);
    }

    @Test
    void a_pass_is_filed_once_and_then_corrected_by_a_further_record() {
        store.fileMade(planned(), account("r1", "", "A. Grower"));
        assertThatThrownBy(() -> store.fileMade(planned(), account("r2", "", "A. Grower")))
                .hasMessageContaining("record.filed-already");
        Pass right = Farms.pass(planned().id(), "Home Eighty", planned().date(), 55, Pass.State.MADE);
        store.correct(account("r2", "r1", "A. Grower").apply(right), right);
        assertThat(count()).isEqualTo(2);
        assertThat(planned().nitrogen_kgHa()).isEqualTo(55);
        assertThat(Chain.verify(store.records())).isEmpty();
        assertThatThrownBy(() ->
                        store.correct(account("r3", "nothing", "A. Grower").apply(right), right))
                .hasMessageContaining("record.unknown");
    }

    @Test
    void an_import_does_not_touch_a_pass_that_was_filed() {
        store.fileMade(planned(), account("r1", "", "A. Grower"));
        ImportReport same = FarmStoreTest.put(store, Farms.small());
        assertThat(same.differences())
                .as("the folder still plans it; that is no difference")
                .isEmpty();
        Farm changed = FarmStoreTest.withPasses(
                Farms.small(), List.of(Farms.pass("x", "Home Eighty", day, 99, Pass.State.PLANNED)));
        ImportReport report = FarmStoreTest.put(store, changed);
        assertThat(report.differences())
                .extracting(d -> d.sentence(true))
                .contains(
                        "pass Home Eighty 2026-06-08 UAN 32: rate 60 -> 99 (kept as filed; correct the record instead)");
        assertThat(planned().rate().entered()).isEqualTo(60);
        assertThat(planned().state()).isEqualTo(Pass.State.MADE);
    }

    @Test
    void the_database_itself_refuses_to_change_or_delete_a_record() {
        store.fileMade(planned(), account("r1", "", "A. Grower"));
        store.fileMade(Farms.pass("", "Sand Hill", day, 30, Pass.State.MADE), account("r2", "", "A. Grower"));
        List<Chain.Entry> before = store.records();
        store.close();
        List<String> attempts = List.of(
                "update application_record set entry = 'x' where number = 1",
                "update application_record set hash = 'x'",
                "delete from application_record where number = 2",
                "delete from application_record",
                "insert or replace into application_record select number, id, pass, 'x', previous, hash from application_record where number = 1",
                "insert into application_record select 7, 'r7', pass, entry, hash, 'h' from application_record where number = 2",
                "insert into application_record select 3, 'r3', pass, entry, 'p', 'h' from application_record where number = 2",
                "delete from pass");
        try (Database db = Database.open(folder.resolve("earleaf.db"))) {
            for (String attempt : attempts) {
                assertThatThrownBy(() -> db.sql().update(attempt)).as(attempt).isInstanceOf(DataAccessException.class);
            }
        }
        open();
        assertThat(store.records()).isEqualTo(before);
    }

    @Test
    void a_doubled_key_is_told_as_such() {
        store.fileMade(planned(), account("r1", "", "A. Grower"));
        assertThatThrownBy(() -> store.fileMade(
                        Farms.pass("", "Sand Hill", day, 30, Pass.State.MADE), account("r1", "", "A. Grower")))
                .isInstanceOf(DuplicateKeyException.class);
        assertThat(store.farm().passes())
                .as("the pass of the refused record is not kept either")
                .hasSize(2);
    }
}
