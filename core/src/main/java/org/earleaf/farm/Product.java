// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

/**
 * A product on the shelf that is not a nitrogen fertiliser, or a fertiliser of the farm's own.
 *
 * @param form two-letter formulation code of the international catalogue (SC, EC, WG, SL ...)
 * @param density_kgL NaN: not given
 * @param price amount of money a {@code priceUnit}, NaN: not given
 * @param nitrogen nitrogen facts; null when it carries none
 * @param registration registration number on its label, empty when none
 * @param caution short text for sheets
 */
public record Product(
        String name,
        String form,
        double density_kgL,
        double price,
        String priceUnit,
        @org.jspecify.annotations.Nullable NitrogenProduct nitrogen,
        String registration,
        String caution) {}
