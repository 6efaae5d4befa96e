// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import org.earleaf.app.RecordCopy;
import org.earleaf.farm.Farm;
import org.earleaf.field.FieldPart;
import org.earleaf.field.PastYear;
import org.earleaf.field.PreviousCrop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PastYearsTest {
    private static final String FIELD = "Home Eighty";

    @TempDir
    Path folder;

    private static PastYear corn(int year, double yield_kgHa) {
        return new PastYear(new FieldPart(FIELD, ""), year, PreviousCrop.CORN, yield_kgHa, Double.NaN);
    }

    private static Farm with(PastYear... past) {
        return RecordCopy.with(Farms.small(), "work.past", List.of(past));
    }

    private FarmStore stored(Farm farm) {
        FarmStore store = FarmStore.create(folder.resolve("farm.db"));
        store.importFarm(farm, farm.weather().observed().days());
        return store;
    }

    @Test
    void a_year_kept_again_takes_the_place_of_what_was_known_of_it() {
        try (FarmStore store = stored(with(corn(2010, 9000)))) {
            long changes = store.changes();
            store.past().keep(corn(2010, 9500));
            store.past().keep(corn(2011, 8000));
            assertThat(store.farm().work().past()).containsExactly(corn(2010, 9500), corn(2011, 8000));
            assertThat(store.changes()).as("answers are worked out anew").isGreaterThan(changes);
        }
    }

    @Test
    void a_year_taken_out_is_gone_and_another_stays() {
        try (FarmStore store = stored(with(corn(2010, 9000), corn(2011, 8000)))) {
            PastYear named = corn(2010, Double.NaN);
            assertThat(store.past().takeOut(named)).isEqualTo(corn(2010, 9000));
            assertThatThrownBy(() -> store.past().takeOut(named)).hasMessageContaining("past.unknown");
            assertThat(store.farm().work().past()).containsExactly(corn(2011, 8000));
            store.requireWhole();
        }
    }

    @Test
    void a_further_import_adds_years_takes_newer_values_and_removes_none() {
        try (FarmStore store = stored(with(corn(2010, 9000)))) {
            ImportReport report = store.importFarm(
                    with(corn(2010, 9100), corn(2011, 8000)),
                    Farms.small().weather().observed().days());
            assertThat(report.added()).containsEntry("past years", 1);
            assertThat(report.differences()).extracting(Difference::what).containsExactly(FIELD + ", 2010");
            store.importFarm(with(), Farms.small().weather().observed().days());
            assertThat(store.farm().work().past()).containsExactly(corn(2010, 9100), corn(2011, 8000));
        }
    }

    @Test
    void a_field_takes_its_past_years_with_it_when_it_is_called_otherwise() {
        try (FarmStore store = stored(with(corn(2010, 9000)))) {
            store.renameField(FIELD, "Big Eighty");
            assertThat(store.farm().past(store.farm().zones().get(0)))
                    .extracting(PastYear::field)
                    .containsExactly("Big Eighty");
            store.importFarm(
                    with(corn(2010, 9000)), Farms.small().weather().observed().days());
            assertThat(store.farm().work().past()).hasSize(1);
        }
    }
}
