// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.farm.DropletClass;
import org.earleaf.units.RecordCopy;
import org.earleaf.units.Units;

/** A load like another but for one fact. */
final class Works {
    private Works() {}

    static LabelWork stage(LabelWork w, double stage) {
        return RecordCopy.with(w, "stage", stage);
    }

    static LabelWork carrier(LabelWork w, double galAc) {
        return RecordCopy.with(w, "carrier_LHa", galAc * Units.LHA_PER_GALAC);
    }

    static LabelWork carried(LabelWork w, boolean uan, boolean air) {
        return RecordCopy.with(RecordCopy.with(w, "nitrogenCarrier", uan), "byAir", air);
    }

    static LabelWork droplets(LabelWork w, Optional<DropletClass> c) {
        return RecordCopy.with(w, "droplets", c);
    }

    static LabelWork boom(LabelWork w, double boom_m) {
        return RecordCopy.with(w, "boom_m", boom_m);
    }

    static LabelWork water(LabelWork w, double water_m) {
        return RecordCopy.with(w, "water_m", water_m);
    }

    static LabelWork harvest(LabelWork w, Optional<LocalDate> harvest) {
        return RecordCopy.with(w, "harvest", harvest);
    }

    static LabelWork uncertified(LabelWork w) {
        return RecordCopy.with(w, "certified", false);
    }

    static LabelWork crop(LabelWork w, String crop) {
        return RecordCopy.with(w, "crop", crop);
    }
}
