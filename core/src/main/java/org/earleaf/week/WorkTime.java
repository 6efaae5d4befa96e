// SPDX-License-Identifier: Apache-2.0
package org.earleaf.week;

import org.earleaf.decide.Option;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Rig;
import org.earleaf.farm.Setting;
import org.earleaf.farm.WorkingSpeed;
import org.earleaf.plan.Spot;
import org.earleaf.rig.FieldCapacity;
import org.earleaf.units.Units;

/**
 * What a pass takes a rig.
 *
 * <pre>
 * t = A / (v w e) + n fill,   n = ceil(V A / tank);   without a tender + (n - 1) (road to the yard and back)
 *
 * A      ground                                        [m2]
 * v, w   speed, width                                  [m/s], [m]
 * e      share of the time in the field at full width, fills not counted
 * V      finished liquid                               [m3/m2]
 * Range  all above 0
 * Source arithmetic, as farm machinery handbooks have it
 * Check  WeekTest
 * </pre>
 */
final class WorkTime {
    private static final double M2_PER_HA = 10_000;
    /** Of a hired rig whose width and speed nobody told (40 ac/h, common practice, no source). */
    static final double HIRED_HA_H = 40 * Units.HA_PER_AC;

    private static final double HIRED_M2S = HIRED_HA_H * M2_PER_HA / 3600;

    private final Farm farm;
    private final boolean tender;

    WorkTime(Farm farm) {
        this.farm = farm;
        tender = farm.rigs().stream().anyMatch(Rig::isTender);
    }

    static boolean isPaceTold(Rig rig) {
        return rig.width_m() > 0 && rig.pace().fastest_ms() > 0;
    }

    /** NaN: the rig cannot go so slowly, or so fast, as the placement asks for. */
    double of_s(Rig rig, Option way, FieldPass pass, Spot at) {
        double area_m2 = pass.area_ha() * M2_PER_HA;
        double pace_m2s = HIRED_M2S;
        if (isPaceTold(rig)) {
            WorkingSpeed speed = WorkingSpeed.of(
                            way.placement(), pass.outlook().height_cm().p90() / 100)
                    .within(rig);
            double known = rig.pace().fieldEfficiency();
            double efficiency = known > 0 ? known : FieldCapacity.SPRAYER_EFFICIENCY;
            pace_m2s = speed.isEmpty()
                    ? Double.NaN
                    : FieldCapacity.capacity_m2s(speed.cruise_ms(), rig.width_m(), efficiency);
        }
        int loads = loads(rig, pass.area_ha(), way);
        double home_s = tender || loads < 2 ? 0 : (loads - 1) * 2 * road_s(at);
        return area_m2 / pace_m2s + loads * fill_s() + home_s;
    }

    double fill_s() {
        return 60 * farm.settings().of(Setting.FILL_TIME);
    }

    /** Between the yard and a place, without folding. */
    double road_s(Spot at) {
        return (Math.abs(at.x_m()) + Math.abs(at.y_m())) / farm.settings().of(Setting.ROAD_SPEED);
    }

    /** Tanks filled; 0: nothing liquid, or the tank is not known. */
    static int loads(Rig rig, double area_ha, Option way) {
        double litres = FieldPass.litresHa(way) * area_ha;
        return litres > 0 && rig.tank_m3() > 0 ? (int) Math.ceil(litres / 1000 / rig.tank_m3() - 1e-9) : 0;
    }
}
