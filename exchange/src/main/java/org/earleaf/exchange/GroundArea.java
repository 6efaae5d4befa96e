// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.CoordinateSequenceFilter;
import org.locationtech.jts.geom.Geometry;

/**
 * Ground inside an outline in degrees, on the plane that touches the ellipsoid in its middle.
 *
 * <pre>
 * M = a (1 - e2) / (1 - e2 sin(lat)^2)^1.5       metres a radian northwards
 * N = a / (1 - e2 sin(lat)^2)^0.5                 metres a radian eastwards, times cos(lat)
 *
 * a, e2  half axis 6378137 m and squared eccentricity 0.00669438 of WGS 84
 * Range  outlines of some kilometres; a township (10 km) is right to 0.1 %
 * Source radii of curvature of an ellipsoid, as in Snyder 1987, USGS Professional Paper 1395, p. 24 (from memory)
 * Check  GroundAreaTest
 * </pre>
 */
final class GroundArea {
    private static final double A_M = 6_378_137;
    private static final double E2 = 0.00669437999014;

    private GroundArea() {}

    /** Hectares inside polygons given as longitude, latitude; not modified. */
    static double of_ha(Geometry lonLat) {
        Coordinate middle = lonLat.getEnvelopeInternal().centre();
        double lat = Math.toRadians(middle.y);
        double w = 1 - E2 * Math.sin(lat) * Math.sin(lat);
        double north = Math.toRadians(1) * A_M * (1 - E2) / Math.pow(w, 1.5);
        double east = Math.toRadians(1) * A_M / Math.sqrt(w) * Math.cos(lat);
        Geometry metres = lonLat.copy();
        metres.apply(new CoordinateSequenceFilter() {
            @Override
            public void filter(CoordinateSequence points, int k) {
                points.setOrdinate(k, 0, (points.getOrdinate(k, 0) - middle.x) * east);
                points.setOrdinate(k, 1, (points.getOrdinate(k, 1) - middle.y) * north);
            }

            @Override
            public boolean isDone() {
                return false;
            }

            @Override
            public boolean isGeometryChanged() {
                return true;
            }
        });
        return metres.getArea() / 10_000;
    }
}
