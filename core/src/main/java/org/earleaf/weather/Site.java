// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

/**
 * Where a farm or station stands.
 *
 * @param latitude_deg north positive, model range 25 to 55
 * @param longitude_deg east positive
 * @param elevation_m above sea, model range -50 to 2500
 */
public record Site(double latitude_deg, double longitude_deg, double elevation_m) {}
