// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import java.util.Locale;

/** What a pass is for. */
public enum Purpose {
    NITROGEN,
    FUNGICIDE,
    INSECTICIDE,
    FUNGICIDE_AND_INSECTICIDE;

    /** The word by which plans and programs hold it; people read that of the catalogue. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
