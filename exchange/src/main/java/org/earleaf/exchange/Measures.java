// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import org.earleaf.exchange.table.Measure;
import org.earleaf.units.Dimension;
import org.earleaf.units.Units;

/** The quantities of a farm folder with their inside units. */
final class Measures {
    static final Measure ELEVATION_M = Measure.of(Dimension.LENGTH, 1);
    static final Measure LENGTH_M = Measure.of(Dimension.LENGTH, 1);
    static final Measure SOIL_DEPTH_MM = Measure.of(Dimension.LENGTH, 1000);
    static final Measure WATER_MM = Measure.of(Dimension.WATER_DEPTH, 1);
    static final Measure AREA_HA = Measure.of(Dimension.AREA, 1e-4);
    static final Measure TEMPERATURE_C = Measure.of(Dimension.TEMPERATURE, 1);
    static final Measure SOLAR_MJM2 = Measure.of(Dimension.RADIATION, 1);
    static final Measure SPEED_MS = Measure.of(Dimension.SPEED, 1)
            .and("m_s", 1)
            .and("ms", 1)
            .and("kmh", 1 / 3.6)
            .and("kph", 1 / 3.6);
    static final Measure PERCENT = Measure.of(Dimension.SHARE, 100);
    static final Measure SHARE = Measure.of(Dimension.SHARE, 1);
    /** A share with or without its unit in the header. */
    static final Measure PLAIN_SHARE = SHARE.and("", 1);

    static final Measure DENSITY_GCM3 = Measure.of(Dimension.DENSITY, 1e-3);
    static final Measure DENSITY_KGL = Measure.of(Dimension.DENSITY, 1e-3);
    static final Measure VOLUME_M3 = Measure.of(Dimension.VOLUME, 1);
    static final Measure CARRIER_LHA = Measure.of(Dimension.VOLUME_RATE, 1e7);
    static final Measure PRESSURE_PA = Measure.of(Dimension.PRESSURE, 1);
    static final Measure NITROGEN_KGHA = Measure.of(Dimension.MASS_RATE, 1);
    static final Measure DAYS = Measure.of("d", 1).and("days", 1).and("", 1);
    static final Measure HOURS = Measure.of("h", 1).and("", 1);
    static final Measure MINUTES = Measure.of("min", 1).and("h", 60);
    static final Measure PLANTS_M2 =
            Measure.of("ac", 1 / Units.M2_PER_AC).and("ha", 1e-4).and("m2", 1);
    static final Measure CEC_CMOLKG =
            Measure.of("cmol_kg", 1).and("meq_100g", 1).and("cmolc_kg", 1);
    /** Growing degree days as hybrids are rated, °F d. */
    static final Measure GDD_F = Measure.of("", 1).and("f", 1).and("c", 1.8);
    /** Grain at 15.5 % moisture, turned into dry grain. */
    static final Measure DRY_GRAIN_KGHA = Measure.of(Dimension.GRAIN, Units.DRY_SHARE_OF_TRADE_CORN);

    static final Measure DEGREES = Measure.of("deg", 1).and("", 1);
    static final Measure CORN_USDBU =
            Measure.of("usd_bu", 1).and("usd_t", Units.LB_PER_BU_CORN * Units.KG_PER_LB / 1000);
    static final Measure USD_KG = Measure.of("usd_lb", 1 / Units.KG_PER_LB).and("usd_kg", 1);
    static final Measure NITRATE_MGKG = Measure.of("ppm", 1).and("mg_kg", 1);
    static final Measure USD_HA = Measure.of("usd_ac", 1 / Units.HA_PER_AC).and("usd_ha", 1);

    private Measures() {}
}
