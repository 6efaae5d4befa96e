// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.earleaf.field.Disease;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.pressure.ProtectionOption;

/** Which assumptions stand behind an option. */
final class AssumptionsUsed {
    private static final Set<ProtectionAssumption> GROWTH =
            EnumSet.range(ProtectionAssumption.SCOUTED_PLANTS, ProtectionAssumption.DRY_DAY_NIGHT);
    private static final Set<ProtectionAssumption> DISEASE_MODEL = EnumSet.of(
            ProtectionAssumption.EFFICACY,
            ProtectionAssumption.FULL_EFFECT,
            ProtectionAssumption.NO_EFFECT,
            ProtectionAssumption.BLEND,
            ProtectionAssumption.SAVED_MOST,
            ProtectionAssumption.LOSS_CAP);
    private static final Set<ProtectionAssumption> UNSEEN =
            EnumSet.range(ProtectionAssumption.LATE_PLANTING, ProtectionAssumption.SEVERE_HIGH);
    private static final Set<ProtectionAssumption> TAR_SPOT =
            EnumSet.of(ProtectionAssumption.TAR_SPOT_GROWTH, ProtectionAssumption.TAR_SPOT_DOUBT);
    private static final Set<ProtectionAssumption> APHIDS =
            EnumSet.range(ProtectionAssumption.APHID_GROWTH, ProtectionAssumption.APHIDS_START);

    private static final Set<ProtectionAssumption> RIG =
            EnumSet.range(ProtectionAssumption.TYRE_WIDTH, ProtectionAssumption.LOST_PER_HURT);

    private AssumptionsUsed() {}

    static List<ProtectionAssumption> of(ProtectionOption o, TrialFields fields) {
        Set<ProtectionAssumption> used = EnumSet.noneOf(ProtectionAssumption.class);
        if (o.fungicide().isPresent()) {
            used.add(ProtectionAssumption.SEVERE);
            used.add(ProtectionAssumption.BEFORE_TASSEL);
            boolean scouted = fields.severity().isScouted();
            used.addAll(scouted ? GROWTH : Set.of());
            used.addAll(scouted ? DISEASE_MODEL : Set.of());
            used.addAll(fields.countsSite() ? UNSEEN : Set.of());
            used.addAll(fields.severity().isOf(Disease.TAR_SPOT) ? TAR_SPOT : Set.of());
        }
        used.addAll(APHIDS);
        used.addAll(o.trackShare() + o.injuryShare() > 0 ? RIG : Set.of());
        return new ArrayList<>(used);
    }
}
