// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.label.DropletClass;
import org.earleaf.mix.LabelWork;
import org.earleaf.units.RecordCopy;
import org.earleaf.units.Units;

/** A load like another but for one fact. */
public final class Works {
    private Works() {}

    public static LabelWork stage(LabelWork w, double stage) {
        return RecordCopy.with(w, "standing.stage", stage);
    }

    public static LabelWork carrier(LabelWork w, double galAc) {
        return RecordCopy.with(w, "carrier.rate_LHa", galAc * Units.LHA_PER_GALAC);
    }

    public static LabelWork carried(LabelWork w, boolean uan, boolean air) {
        return RecordCopy.with(RecordCopy.with(w, "carrier.nitrogen", uan), "carrier.byAir", air);
    }

    public static LabelWork droplets(LabelWork w, Optional<DropletClass> c) {
        return RecordCopy.with(w, "driving.droplets", c);
    }

    public static LabelWork boom(LabelWork w, double boom_m) {
        return RecordCopy.with(w, "driving.boom_m", boom_m);
    }

    public static LabelWork water(LabelWork w, double water_m) {
        return RecordCopy.with(w, "ground.water_m", water_m);
    }

    public static LabelWork harvest(LabelWork w, Optional<LocalDate> harvest) {
        return RecordCopy.with(w, "standing.harvest", harvest);
    }

    public static LabelWork uncertified(LabelWork w) {
        return RecordCopy.with(w, "driving.certified", false);
    }

    public static LabelWork crop(LabelWork w, String crop) {
        return RecordCopy.with(w, "standing.crop", crop);
    }
}
