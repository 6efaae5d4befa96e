// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.util.Optional;
import org.earleaf.farm.Stock;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.NumberText;

/** Product on hand as a person enters it: product, amount and unit, and lot and place if wanted. */
public final class StockEntry {
    public static final String AMOUNT = "amount";
    public static final String UNIT = "unit";

    private StockEntry() {}

    public static Entered<Stock> of(Draft draft, Shelf shelf) {
        Gathered gathered = new Gathered();
        String product = PassEntry.product(shelf, draft.text(PassEntry.PRODUCT), gathered);
        String unit = draft.text(UNIT);
        double entered = gathered.number(() -> NumberText.read(draft.text(AMOUNT), AMOUNT));
        Optional<Double> m3 = Dimension.VOLUME.findInside(entered, unit);
        Optional<Double> kg = Dimension.MASS.findInside(entered, unit);
        if (m3.isEmpty() && kg.isEmpty()) {
            gathered.wrong(
                    "stock.unit-unknown",
                    UNIT,
                    unit,
                    "units",
                    Dimension.VOLUME.words() + ", " + Dimension.MASS.words());
        } else if (!Double.isNaN(entered)) {
            Allowed allowed = m3.isPresent() ? Ranges.STOCK_VOLUME : Ranges.STOCK_MASS;
            try {
                allowed.read(draft.text(AMOUNT), unit, AMOUNT);
            } catch (EarleafException wrong) {
                gathered.add(wrong);
            }
        }
        return gathered.with(() -> new Stock(
                product,
                entered,
                unit,
                m3.map(v -> v * 1000).orElse(Double.NaN),
                kg.orElse(Double.NaN),
                draft.text("lot"),
                draft.text("place")));
    }
}
