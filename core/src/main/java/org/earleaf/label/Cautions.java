// SPDX-License-Identifier: Apache-2.0
package org.earleaf.label;

import org.earleaf.units.Said;

/** Sentences that stand wherever a figure may be acted on. One place, so that every door says the same. */
public final class Cautions {
    /** The first caution, on every brief, option list and load sheet. */
    public static final Said LABEL = Said.of("caution.label");

    private Cautions() {}
}
