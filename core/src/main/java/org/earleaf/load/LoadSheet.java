// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.mix.Amount;
import org.earleaf.mix.Load;
import org.earleaf.mix.LoadCautions;
import org.earleaf.mix.MixOrder;
import org.earleaf.rig.Setup;
import org.earleaf.units.Said;
import org.earleaf.units.Units;

/**
 * One sheet for one load: what the person at the tank needs, in the order the hand needs it.
 *
 * @param field empty when it was not said
 * @param rate_m3m2 finished liquid on ground
 * @param settings how the rig is set; empty when no rig was given
 * @param limits what the load was checked against
 * @param part what goes with a part of the load moved to another rig
 * @param advice what is to be known of the mix before it is poured
 */
public record LoadSheet(
        String field,
        Load load,
        double rate_m3m2,
        Optional<Settings> settings,
        List<Said> limits,
        List<LoadCautions.Caution> cautions,
        PartLoad part,
        TankAdvice advice) {
    public LoadSheet {
        limits = List.copyOf(limits);
        cautions = List.copyOf(cautions);
    }

    /**
     * How the rig is set.
     *
     * @param outlet "size 05 (brown)", "plate with a hole of ..."
     */
    public record Settings(
            String rig,
            Said outlet,
            double speed_ms,
            double slowest_ms,
            double fastest_ms,
            double pressure_Pa,
            double flow_m3s,
            List<Said> remarks) {
        public Settings {
            remarks = List.copyOf(remarks);
        }

        public static Settings of(String rig, Setup setup) {
            return new Settings(
                    rig,
                    setup.outletSaid(),
                    setup.setting().speed_ms(),
                    setup.speeds().slowest_ms(),
                    setup.speeds().fastest_ms(),
                    setup.setting().pressure_Pa(),
                    setup.setting().flow_m3s(),
                    setup.remarks());
        }
    }

    /** One product that goes with a part load. */
    public record Goes(String product, Amount amount) {}

    /** For each {@code volume_m3} moved to another rig this much ground and product go with it. */
    public record PartLoad(double volume_m3, double area_m2, List<Goes> products) {
        public PartLoad {
            products = List.copyOf(products);
        }
    }

    /** Sheets of all loads of a plan, in order. */
    public static List<LoadSheet> of(
            LoadPlan plan, String field, Optional<Settings> settings, List<Said> limits, boolean metric) {
        List<LoadCautions.Caution> cautions = LoadCautions.of(plan.job().lines(), plan.rate_m3m2());
        TankAdvice advice = plan.advice();
        List<LoadSheet> sheets = new ArrayList<>();
        for (Load load : plan.loads()) {
            PartLoad part = part(plan, metric ? 0.5 : 100 * Units.M3_PER_GAL);
            sheets.add(new LoadSheet(field, load, plan.rate_m3m2(), settings, limits, cautions, part, advice));
        }
        return sheets;
    }

    private static PartLoad part(LoadPlan plan, double volume_m3) {
        List<Goes> products = MixOrder.of(plan.job().lines(), plan.job().order()).stream()
                .map(line -> new Goes(line.product(), line.dose().in(volume_m3, plan.rate_m3m2())))
                .toList();
        return new PartLoad(volume_m3, volume_m3 / plan.rate_m3m2(), products);
    }
}
