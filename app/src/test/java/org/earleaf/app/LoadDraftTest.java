// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.earleaf.app.store.Tanks;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Rig;
import org.earleaf.label.LabelBook;
import org.earleaf.load.LoadDraft;
import org.earleaf.load.LoadGround;
import org.earleaf.load.LoadLine;
import org.earleaf.load.TankLoad;
import org.earleaf.mix.Dose;
import org.earleaf.mix.MixForm;
import org.earleaf.mix.MixLine;
import org.earleaf.units.Said;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** Sums of loads by their own arithmetic: rate times ground, and the strength of the tank times heel and lines. */
class LoadDraftTest {
    private static final Farm FARM = Tanks.farm();

    private static LoadDraft draft(MixLine line, double area_ac, double galAc, double tank_gal, double stays_gal) {
        Rig rig = FARM.rigs().get(0);
        return new LoadDraft(
                FARM,
                LabelBook.EMPTY,
                new LoadDraft.Trip("job", FARM.zones().get(0), rig, Tanks.DAY),
                List.of(line),
                new LoadDraft.Tanks(
                        galAc * Units.M3M2_PER_GALAC,
                        area_ac * Units.M2_PER_AC,
                        tank_gal * Units.M3_PER_GAL,
                        stays_gal * Units.M3_PER_GAL),
                LoadDraft.Seen.of(12, Tanks.DAY));
    }

    private static MixLine line(double rate, String unit) {
        MixForm form = MixForm.parse("SC", Said.text(""));
        return new MixLine("Demo P", Dose.parse(rate, unit, form, null, Said.text("")), form, null);
    }

    @Test
    void products_of_all_loads_are_rate_times_ground_and_what_stays_in_heel_and_lines() {
        SplittableRandom random = new SplittableRandom(7);
        for (int k = 0; k < 500; k++) {
            double area = 5 + 70 * random.nextDouble();
            double galAc = 8 + 12 * random.nextDouble();
            double stays = 20 * random.nextDouble();
            double flozAc = 1 + 20 * random.nextDouble();
            List<TankLoad> loads = draft(line(flozAc, "fl oz/ac"), area, galAc, 100 + 900 * random.nextDouble(), stays)
                    .loads(() -> "x");
            double floz = loads.stream()
                    .flatMap(l -> l.lines().stream())
                    .mapToDouble(l -> l.planned().in("fl oz"))
                    .sum();
            assertThat(floz).isCloseTo(flozAc * (area + stays / galAc), within(1e-9 * floz));
            double acres = loads.stream()
                            .flatMap(l -> l.grounds().stream())
                            .mapToDouble(LoadGround::area_ha)
                            .sum()
                    / Units.HA_PER_AC;
            assertThat(acres).isCloseTo(area, within(1e-9 * area));
            assertThat(loads.get(0).unapplied_m3() / Units.M3_PER_GAL).isCloseTo(stays, within(1e-9));
            assertThat(loads.stream().skip(1)).allMatch(l -> l.unapplied_m3() == 0);
        }
    }

    // Worked by hand: 147 ac at 15 gal/ac with 14 gal in heel and lines are 2219 gal, three loads of 739.67; the first
    // covers 725.67/15 = 48.38 ac. Here on the 79 acres of the small farm: 75 ac, 1125 + 14 = 1139 gal, two of 569.5.
    @Test
    void the_first_load_covers_less_ground_by_what_stays() {
        List<TankLoad> loads = draft(line(.25, "% v/v"), 75, 15, 600, 14).loads(() -> "x");
        assertThat(loads).hasSize(2);
        assertThat(loads.get(0).grounds().get(0).area_ha() / Units.HA_PER_AC).isCloseTo(555.5 / 15, within(1e-9));
        assertThat(loads.get(1).grounds().get(0).area_ha() / Units.HA_PER_AC).isCloseTo(569.5 / 15, within(1e-9));
        LoadLine spreader = loads.get(0).lines().get(0);
        assertThat(spreader.planned().in("gal")).isCloseTo(.0025 * 569.5, within(1e-9));
    }
}
