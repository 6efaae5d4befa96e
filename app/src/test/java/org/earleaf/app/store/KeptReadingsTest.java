// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.earleaf.app.RecordCopy;
import org.earleaf.app.picture.Photograph;
import org.earleaf.farm.Farm;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Readings with their photographs, and those taken back. */
class KeptReadingsTest {
    @TempDir
    Path folder;

    @Test
    void a_photograph_is_kept_with_its_reading_or_not_at_all_and_a_further_import_leaves_both() throws Exception {
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB), "jpg", jpeg);
        Photograph picture = Photograph.of(jpeg.toByteArray());
        Farms.Written given = Farms.random(3);
        Reading reading = given.farm().readings().isEmpty()
                ? height(given.farm().zones().get(0).field(), "80 cm")
                : given.farm().readings().get(0);
        try (FarmStore store = FarmStore.create(folder.resolve("farm.db"))) {
            store.importFarm(given.farm(), given.observed());
            Reading kept = store.enter(reading, Optional.of(picture));
            Photograph wrong = new Photograph(picture.image(), picture.type(), picture.small(), 0, 40);
            int before = store.farm().readings().size();
            assertThatThrownBy(() -> store.enter(reading, Optional.of(wrong))).isInstanceOf(RuntimeException.class);
            assertThat(store.farm().readings()).hasSize(before);
            store.importFarm(given.farm(), given.observed());
            assertThat(store.photographs()).hasSize(1);
            Photograph.Note note = store.photographs().get(0);
            assertThat(note.reading()).isEqualTo(kept.id());
            assertThat(store.findPhotograph(note.id())).contains(picture);
        }
    }

    @Test
    void a_reading_withdrawn_counts_no_longer_until_an_import_says_otherwise_of_it() {
        Farms.Written given = Farms.random(3);
        String field = given.farm().zones().get(0).field();
        Farm farm = withReadings(given.farm(), List.of(height(field, "80 cm")));
        try (FarmStore store = FarmStore.create(folder.resolve("farm.db"))) {
            store.importFarm(farm, given.observed());
            Reading wrong = store.farm().readings().get(0);
            long changes = store.changes();
            assertThat(store.withdraw(wrong.id(), LocalDate.of(2026, 6, 21))).contains(wrong);
            assertThat(store.changes()).as("answers are worked out anew").isGreaterThan(changes);
            assertThat(store.farm().readings()).isEmpty();
            assertThat(store.withdraw(wrong.id(), LocalDate.of(2026, 6, 21))).isEmpty();
            assertThat(store.withdraw("none", LocalDate.of(2026, 6, 21))).isEmpty();
            store.importFarm(farm, given.observed());
            assertThat(store.farm().readings())
                    .as("the folder still says 80 cm")
                    .isEmpty();
            store.importFarm(withReadings(farm, List.of(height(field, "81 cm"))), given.observed());
            assertThat(store.farm().readings()).extracting(Reading::entered).containsExactly("81 cm");
        }
    }

    private static Reading height(String field, String entered) {
        double cm = Double.parseDouble(entered.replace(" cm", ""));
        return new Reading(
                "",
                new FieldPart(field, ""),
                LocalDate.of(2026, 6, 20),
                Reading.Kind.HEIGHT,
                cm,
                entered,
                Reading.Sampled.NO_SOIL,
                "",
                Scouted.NOTHING);
    }

    private static Farm withReadings(Farm f, List<Reading> readings) {
        return RecordCopy.with(f, "work.readings", readings);
    }
}
