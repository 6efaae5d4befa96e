// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.store.Catches;
import org.earleaf.app.store.LoadJobs;
import org.earleaf.app.store.LoadStore;
import org.earleaf.app.store.LoadStore.Kept;
import org.earleaf.app.store.Tanks;
import org.earleaf.farm.Rig;
import org.earleaf.field.Placement;
import org.earleaf.label.DropletClass;
import org.earleaf.load.LoadDraft;
import org.earleaf.load.LoadLine;
import org.earleaf.load.TankLoad;
import org.earleaf.mix.LabelWork;
import org.earleaf.record.Applicator;
import org.earleaf.record.Hours;
import org.earleaf.record.Told;
import org.earleaf.units.Units;

/** Loads 1 to 6 of the preview: planned, locked, mixing, mixed, empty and filed. */
final class SeededLoads {
    /** As it was written down at a catch test. */
    static final String OUTLET = "size 05 (brown) at 40 psi, water";

    private final Preview preview;
    private final LoadStore loads;

    private SeededLoads(Preview preview) {
        this.preview = preview;
        this.loads = preview.store().loads();
    }

    static void in(Preview preview) {
        new SeededLoads(preview).all();
    }

    private void all() {
        List<String> rigs =
                List.of("tall sprayer", "tall sprayer", "pull sprayer", "tall sprayer", "highboy", "highboy");
        for (int k = 1; k <= 6; k++) {
            step(k, rigs.get(k - 1));
        }
        // A set with one worn and one clogged outlet, in gal/min.
        double[] gpm = {.492, .505, .510, .498, .571, .503, .495, .441, .507, .500};
        preview.store()
                .catches()
                .keep(new Catches.Caught(
                        "highboy",
                        now(),
                        "A. Grower",
                        OUTLET,
                        .5 * Units.M3S_PER_GPM,
                        Arrays.stream(gpm).mapToObj(g -> g * Units.M3S_PER_GPM).toList(),
                        998.2));
    }

    private void step(int k, String rig) {
        FarmDay day = preview.day(Fixture.TODAY);
        String job = "job " + k + ", " + FixtureShelf.RECIPE;
        preview.store().jobs().keep(new LoadJobs.Job(job, FixtureShelf.RECIPE, Placement.OVER_THE_TOP));
        TankLoad plan = draft(day, job, k, rig).loads(() -> String.valueOf(k)).get(0);
        Kept kept = loads.add(plan);
        String id = String.valueOf(k);
        if (k > 1) {
            kept = loads.reserve(id, kept.version(), "A. Grower", now());
        }
        if (k > 2) {
            kept = loads.mixing(id, kept.version(), Tanks.LOOKED, "A. Grower", now());
            kept = loads.key(id, kept.version(), 1, key(kept.load().lines().get(0), "A. Grower"));
        }
        if (k > 3) {
            for (LoadLine line : kept.load().lines()) {
                if (line.order() > 1) {
                    kept = loads.key(id, kept.version(), line.order(), key(line, "A. Grower"));
                }
                kept = loads.key(id, kept.version(), line.order(), key(line, "B. Helper"));
            }
            kept = loads.mixed(id, kept.version(), Fixture.TODAY, true, "A. Grower", now());
        }
        if (k > 4) {
            loads.applied(id, kept.version(), "A. Grower", now());
        }
        if (k > 5) {
            TreeMap<String, String> extras = new TreeMap<>();
            extras.put("wind", "6 mph from SW");
            extras.put("temperature", "75 °F");
            loads.file(
                    id,
                    day.farm(),
                    Placement.OVER_THE_TOP,
                    new Told(
                            Applicator.onOwnGround("A. Grower", "PA-1234"),
                            "Story County, T83N R24W, section 12",
                            "",
                            rig,
                            Optional.empty(),
                            Optional.empty(),
                            new Hours(Optional.of(LocalTime.of(7, 10)), Optional.of(LocalTime.of(8, 5))),
                            extras,
                            now()));
        }
    }

    private Instant now() {
        preview.pass(Duration.ofSeconds(40));
        return preview.now();
    }

    private LoadLine.Key key(LoadLine line, String person) {
        String code = line.codes().stream().sorted().findFirst().orElseThrow();
        return new LoadLine.Key(code, line.planned().inside(), person, now(), "");
    }

    private static LoadDraft draft(FarmDay day, String job, int k, String rigName) {
        Rig rig = day.farm().rigs().stream()
                .filter(r -> r.name().equals(rigName))
                .findFirst()
                .orElseThrow();
        LoadDraft.Seen seen = new LoadDraft.Seen(
                10,
                day.on(),
                1.4,
                Optional.of(day.on().plusDays(90)),
                new LabelWork.Driving(Optional.of(DropletClass.M), .5, 4, true),
                60,
                90);
        return new LoadDraft(
                day.farm(),
                new org.earleaf.label.LabelBook(FixtureShelf.labels()),
                new LoadDraft.Trip(job, day.farm().zones().get(k % 5), rig, day.on()),
                LoadDraft.lines(day.farm(), day.farm().shelf().recipes().get(0)),
                new LoadDraft.Tanks(15 * Units.M3M2_PER_GALAC, 15 * Units.M2_PER_AC, rig.tank_m3(), 0),
                seen);
    }
}
