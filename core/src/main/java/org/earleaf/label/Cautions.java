// SPDX-License-Identifier: Apache-2.0
package org.earleaf.label;

import org.earleaf.units.Said;

/** Sentences that stand wherever a figure may be acted on. One place, so that every door says the same. */
public final class Cautions {
    /** The first caution, on every brief, option list and load sheet. */
    public static final String LABEL =
            "The label is the law: read and follow it. These figures are estimates and replace neither the label,"
                    + " local rules nor a licensed applicator or adviser.";

    /** The same, to be put into words. */
    public static final Said SAID = Said.of("caution.label");

    private Cautions() {}
}
