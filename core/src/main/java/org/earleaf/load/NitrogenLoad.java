// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.OverTheTop;
import org.earleaf.farm.Rig;
import org.earleaf.field.Placement;
import org.earleaf.mix.Dose;
import org.earleaf.mix.LoadJob;
import org.earleaf.mix.MixForm;
import org.earleaf.mix.MixLine;
import org.earleaf.rig.Setup;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.earleaf.units.Units;

/** Loads of a nitrogen solution that goes on alone: product only, no water. */
public final class NitrogenLoad {
    private NitrogenLoad() {}

    /** The plan for a rig and an amount of nitrogen on an area; its heel and lines are counted once. */
    public static LoadPlan plan(
            Rig rig, NitrogenProduct product, double nitrogen_kgHa, double area_m2, LoadJob.Split split) {
        if (!product.isLiquid()) {
            throw new EarleafException(
                    Problem.of("load.not-a-solution", Said.of("where.product"), Said.text(product.name())));
        }
        MixForm form = MixForm.parse("SL", Said.text("SL"));
        Dose dose = Dose.parse(Units.lbAc(nitrogen_kgHa), "lb N/ac", form, product, Said.of("where.rate"));
        MixLine line = new MixLine(product.name(), dose, form, product);
        return LoadPlanner.plan(new LoadJob(
                List.of(line),
                area_m2,
                Double.NaN,
                rig.tank_m3(),
                rig.tank().heel_m3(),
                rig.tank().prime_m3(),
                split,
                Set.of()));
    }

    /** The sheets for it, with the settings of the rig. */
    public static List<LoadSheet> sheets(
            LoadPlan plan, String field, Rig rig, Optional<Setup> setup, List<Said> limits, boolean metric) {
        return LoadSheet.of(plan, field, setup.map(s -> LoadSheet.Settings.of(rig.name(), s)), limits, metric);
    }

    /**
     * What the outer fence says to nitrogen sprayed over leaves.
     *
     * @param within whether it allows so much
     */
    public record Fence(boolean within, Said said) {}

    /** Empty where it does not go on leaves. */
    public static Optional<Fence> overTheTop(Placement placement, double collars, double nitrogen_kgHa) {
        if (placement != Placement.BROADCAST && placement != Placement.OVER_THE_TOP) {
            return Optional.empty();
        }
        double most_kgHa = OverTheTop.most_kgHa(collars, false);
        String stage = "V" + (int) collars;
        if (most_kgHa == 0) {
            return Optional.of(new Fence(false, Said.of("fence.none", "stage", stage)));
        }
        boolean within = nitrogen_kgHa <= most_kgHa * (1 + 1e-9);
        Measured asked = Measure.NITROGEN_RATE.of(nitrogen_kgHa);
        Measured most = Measure.NITROGEN_RATE.of(most_kgHa);
        return Optional.of(new Fence(
                within,
                within
                        ? Said.of("fence.within", "stage", stage, "asked", asked, "most", most)
                        : Said.of("fence.above", "stage", stage, "asked", asked, "most", most)));
    }
}
