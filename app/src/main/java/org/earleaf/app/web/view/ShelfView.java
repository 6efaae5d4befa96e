// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import org.earleaf.app.Amounts;
import org.earleaf.load.Amount;

/** What is on the shelf. */
public final class ShelfView {
    private ShelfView() {}

    /** An amount in the unit in which it is measured out. */
    static String amount(double inside, boolean isMass, String unit, boolean metric) {
        return Amounts.text(new Amount(inside, isMass, unit), metric);
    }
}
