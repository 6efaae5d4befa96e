// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import java.util.List;
import org.earleaf.units.Said;

/**
 * One way to set a rig for a pass.
 *
 * @param outlet on every drop or nozzle
 * @param outletsPerRow drop hoses a row; 0 when outlets are not by row
 * @param outlets on the whole rig
 * @param setting at the speed to set for
 * @param speeds that hold the rate
 * @param total_m3s flow of all outlets
 * @param pump_m3s what the pump must deliver, with agitation and reserve
 * @param remarks unmatched rows, low pressure, assumptions
 */
public record Setup(
        Outlet outlet,
        int outletsPerRow,
        int outlets,
        FlowSetting setting,
        Speeds speeds,
        double total_m3s,
        double pump_m3s,
        List<Said> remarks) {
    /**
     * Speeds that hold the rate.
     *
     * @param slowestBinds what ends the range below
     * @param fastestBinds what ends it above
     * @param room distance of the cruise point from the nearer end of the range, logarithm of speed
     */
    public record Speeds(double slowest_ms, double fastest_ms, Bind slowestBinds, Bind fastestBinds, double room) {}

    public Setup {
        remarks = List.copyOf(remarks);
    }

    /** What ends a range of speeds. */
    public enum Bind {
        LOWEST_PRESSURE,
        HIGHEST_PRESSURE,
        SLOWEST_SPEED,
        FASTEST_SPEED,
        /** Droplets, or no class entered at less pressure. */
        DROPLETS_BELOW,
        DROPLETS_ABOVE
    }

    public Said outletSaid() {
        return outletsPerRow == 0
                ? outlet.said()
                : Said.of("outlet.a-row", "outlet", outlet.said(), "count", outletsPerRow);
    }
}
