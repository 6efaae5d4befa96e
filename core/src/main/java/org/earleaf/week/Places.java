// SPDX-License-Identifier: Apache-2.0
package org.earleaf.week;

import java.util.List;
import java.util.Optional;
import org.earleaf.farm.Farm;
import org.earleaf.field.Boundary;
import org.earleaf.field.Zone;
import org.earleaf.plan.Spot;
import org.locationtech.jts.geom.Point;

/**
 * Where fields lie, seen from the yard.
 *
 * <pre>
 * x = R cos(latitude) (longitude - longitude of the yard),  y = R (latitude - latitude of the yard)
 *
 * R      radius of the earth, 6 371 009 m
 * Range  some tens of km about the yard
 * Source plane chart of a small part of the globe, elementary geometry
 * Check  WeekTest
 * </pre>
 */
final class Places {
    private static final double EARTH_M = 6_371_009;
    /** A field without an outline is taken to lie so far from the yard (2 mi, own construct). */
    static final double UNKNOWN_M = 2 * org.earleaf.units.Units.M_PER_MI;

    private final Farm farm;

    Places(Farm farm) {
        this.farm = farm;
    }

    /** The middle of a zone. */
    Spot of(Zone zone) {
        return outline(zone).map(b -> local(b.shape_lonLat().getCentroid())).orElse(new Spot(UNKNOWN_M, 0));
    }

    boolean isKnown(Zone zone) {
        return outline(zone).isPresent();
    }

    private Optional<Boundary> outline(Zone zone) {
        List<Boundary> ofField = farm.ground().boundaries().stream()
                .filter(b -> b.field().equalsIgnoreCase(zone.field()))
                .toList();
        return ofField.stream()
                .filter(b -> b.zone().equalsIgnoreCase(zone.zone()))
                .findFirst()
                .or(() -> ofField.stream().filter(b -> b.zone().isEmpty()).findFirst());
    }

    private Spot local(Point middle) {
        double north = Math.toRadians(middle.getY() - farm.site().latitude_deg());
        double east = Math.toRadians(middle.getX() - farm.site().longitude_deg());
        return new Spot(EARTH_M * Math.cos(Math.toRadians(farm.site().latitude_deg())) * east, EARTH_M * north);
    }
}
