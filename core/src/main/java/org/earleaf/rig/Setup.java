// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import java.util.List;

/**
 * One way to set a rig for a pass.
 *
 * @param outlet on every drop or nozzle
 * @param outletsPerRow drop hoses a row; 0 when outlets are not by row
 * @param outlets on the whole rig
 * @param setting at the speed to set for
 * @param slowest_ms slowest speed that holds the rate
 * @param fastest_ms fastest speed that holds the rate
 * @param slowestBinds what ends the range below ("lowest pressure", "slowest speed")
 * @param fastestBinds what ends it above
 * @param total_m3s flow of all outlets
 * @param pump_m3s what the pump must deliver, with agitation and reserve
 * @param room distance of the cruise point from the nearer end of the range, logarithm of speed
 * @param remarks unmatched rows, low pressure, assumptions
 */
public record Setup(
        Outlet outlet,
        int outletsPerRow,
        int outlets,
        FlowSetting setting,
        double slowest_ms,
        double fastest_ms,
        String slowestBinds,
        String fastestBinds,
        double total_m3s,
        double pump_m3s,
        double room,
        List<String> remarks) {
    public Setup {
        remarks = List.copyOf(remarks);
    }

    /** "plate with a hole of 0.079 in (2 mm), 1 a row" */
    public String outletText() {
        return outletsPerRow == 0 ? outlet.text() : outlet.text() + ", " + outletsPerRow + " a row";
    }
}
