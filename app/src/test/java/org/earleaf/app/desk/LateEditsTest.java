// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.RecordCopy;
import org.earleaf.app.store.FarmStore;
import org.earleaf.exchange.FarmFolder;
import org.earleaf.farm.Farm;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Pass;
import org.earleaf.field.Placement;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Outlook;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.soil.SoilProfile;
import org.earleaf.weather.WeatherDay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is entered, corrected or withdrawn late changes everything after its day and leaves nothing of what stood before:
 * to the last bit as on a farm that always had it, or never. A definition; it needs no source.
 */
class LateEditsTest {
    private static final Path DEMO = Path.of(System.getProperty("earleaf.root", ".."), "demo-farm");
    private static final LocalDate ON = LocalDate.of(2026, 6, 30);
    private static final LocalDate LATE = LocalDate.of(2026, 6, 16);
    private static final String FIELD = "Oxbow";

    @Test
    void a_reading_entered_corrected_or_withdrawn_two_weeks_late(@TempDir Path temp) {
        Farm farm = FarmFolder.read(DEMO);
        List<WeatherDay> written = FarmFolder.readWeather(DEMO).observed();
        try (FarmStore store = FarmStore.create(temp.resolve("farm.db"))) {
            store.importFarm(farm, written);
            StoredDays days = new StoredDays(store, Wiring.live().days(), Clock.systemUTC(), Optional.of(ON), false);
            double[] never = all(days.day(ON));
            assertThat(never).isEqualTo(all(Wiring.live().day(farm, ON, false)));

            Reading low = store.enter(height(24));
            double[] entered = all(days.day(ON));
            assertThat(entered).isEqualTo(all(always(with(farm, height(24))))).isNotEqualTo(never);

            store.importFarm(with(farm, height(22)), written);
            assertThat(store.farm().readings())
                    .filteredOn(r -> r.id().equals(low.id()))
                    .hasSize(1);
            assertThat(all(days.day(ON)))
                    .isEqualTo(all(always(with(farm, height(22)))))
                    .isNotEqualTo(entered);

            store.withdraw(low.id(), ON);
            assertThat(all(days.day(ON))).isEqualTo(never);
        }
    }

    @Test
    void a_pass_entered_two_weeks_late(@TempDir Path temp) {
        Farm farm = FarmFolder.read(DEMO);
        List<WeatherDay> written = FarmFolder.readWeather(DEMO).observed();
        Pass late = new Pass(
                "late",
                new FieldPart(FIELD, ""),
                LATE,
                "UAN 28",
                new Pass.Rate(12, "gal/ac", 40),
                Placement.ROW_BASE,
                Inhibitor.NONE,
                Pass.State.MADE);
        List<Pass> passes = new ArrayList<>(farm.passes());
        passes.add(late);
        Farm had = with(farm, passes, farm.readings());
        try (FarmStore store = FarmStore.create(temp.resolve("farm.db"))) {
            store.importFarm(farm, written);
            StoredDays days = new StoredDays(store, Wiring.live().days(), Clock.systemUTC(), Optional.of(ON), false);
            double[] never = all(days.day(ON));
            store.importFarm(had, written);
            assertThat(all(days.day(ON))).isEqualTo(all(always(had))).isNotEqualTo(never);
        }
    }

    private static FarmDay always(Farm farm) {
        return Wiring.live().day(farm, ON, false);
    }

    @Test
    void what_a_field_is_called_changes_no_number_of_it(@TempDir Path temp) {
        Farm farm = FarmFolder.read(DEMO);
        try (FarmStore store = FarmStore.create(temp.resolve("farm.db"))) {
            store.importFarm(farm, FarmFolder.readWeather(DEMO).observed());
            StoredDays days = new StoredDays(store, Wiring.live().days(), Clock.systemUTC(), Optional.of(ON), false);
            double[] before = all(days.day(ON));
            store.renameField(FIELD, "A Name That Begins Otherwise");
            assertThat(all(days.day(ON), "A Name That Begins Otherwise")).isEqualTo(before);
        }
    }

    /** Every value of the field's season, and what is told of its futures. */
    private static double[] all(FarmDay day) {
        return all(day, FIELD);
    }

    private static double[] all(FarmDay day, String field) {
        Zone zone = day.farm().zones().stream()
                .filter(z -> z.field().equals(field))
                .findFirst()
                .orElseThrow();
        Outlook o = day.outlook(zone);
        List<Double> all = new ArrayList<>(List.of(
                o.yield_kgHa().p10(),
                o.yield_kgHa().p50(),
                o.yield_kgHa().p90(),
                o.height_cm().p10(),
                o.height_cm().p90(),
                o.nShort().probability()));
        SeasonTrace t = o.trace();
        for (int k = 0; k < t.days(); k++) {
            for (Daily d : Daily.values()) {
                all.add(t.at(k, d));
            }
            for (Cell c : Cell.values()) {
                for (int layer = 0; layer < SoilProfile.LAYERS; layer++) {
                    all.add(t.at(k, c, SeasonTrace.ROW, layer));
                    all.add(t.at(k, c, SeasonTrace.MIDDLE, layer));
                }
            }
        }
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static Reading height(int inches) {
        return new Reading(
                "late",
                new FieldPart(FIELD, ""),
                LATE,
                Reading.Kind.HEIGHT,
                2.54 * inches,
                inches + " in",
                Reading.Sampled.NO_SOIL,
                "",
                Scouted.NOTHING);
    }

    private static Farm with(Farm f, Reading more) {
        List<Reading> readings = new ArrayList<>(f.readings());
        readings.add(more);
        return with(f, f.passes(), readings);
    }

    private static Farm with(Farm f, List<Pass> passes, List<Reading> readings) {
        return RecordCopy.with(RecordCopy.with(f, "work.passes", passes), "work.readings", readings);
    }
}
