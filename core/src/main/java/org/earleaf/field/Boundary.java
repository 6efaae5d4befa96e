// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import org.locationtech.jts.geom.Geometry;

/**
 * The outline of a field or zone.
 *
 * @param zone empty: the whole field
 * @param shape_lonLat polygon or polygons, longitude before latitude in degrees (WGS 84); not to be modified
 */
public record Boundary(String field, String zone, Geometry shape_lonLat) {}
