// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.field.Inhibitor;
import org.earleaf.field.Placement;

/**
 * Nitrogen put on, as the season sees it.
 *
 * @param nitrogen_kgHa on the area of the field, 0 to 300
 * @param urea share of it
 * @param ammonium share of it
 * @param nitrate share of it; the three sum to 1
 */
public record NitrogenPass(
        double nitrogen_kgHa, double urea, double ammonium, double nitrate, Placement placement, Inhibitor inhibitor) {}
