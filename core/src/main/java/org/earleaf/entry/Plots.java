// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.farm.Farm;
import org.earleaf.field.Zone;
import org.earleaf.soil.SoilProfile;

/** The fields and zones that a draft may name, as a farm, or a folder that is still being read, knows them. */
public interface Plots {
    /**
     * A field, or a zone of one.
     *
     * @param zone empty: the field is one zone
     * @param planted empty: not known
     */
    record Plot(String field, String zone, Optional<LocalDate> planted, boolean corn, Optional<SoilProfile> soil) {}

    /** Those of a field, as the farm spells them; empty: there is no such field. */
    List<Plot> of(String field);

    /** Every field, once. */
    List<String> fields();

    /** Whether a field that is not among them is wrong; not so while a row of fields.csv could not be read. */
    boolean isWhole();

    static Plots of(Farm farm) {
        return new Plots() {
            @Override
            public List<Plot> of(String field) {
                return farm.zonesOf(field).stream().map(Plots::plot).toList();
            }

            @Override
            public List<String> fields() {
                return farm.zones().stream().map(Zone::field).distinct().toList();
            }

            @Override
            public boolean isWhole() {
                return true;
            }
        };
    }

    private static Plot plot(Zone z) {
        return new Plot(z.field(), z.zone(), Optional.of(z.planted()), z.isCorn(), Optional.of(z.soil()));
    }
}
