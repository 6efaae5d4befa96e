// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.util.Optional;
import org.earleaf.farm.Recipe;

/** One product of a recipe as a person enters it: product, rate and rate_unit. */
public final class RecipeEntry {
    private RecipeEntry() {}

    public static Entered<Recipe.Line> of(Draft draft, Shelf shelf) {
        Gathered gathered = new Gathered();
        String product = PassEntry.product(shelf, draft.text(PassEntry.PRODUCT), gathered);
        Optional<RateRule.Rate> rate = new RateRule(product, shelf, true, gathered).read(draft);
        return gathered.with(() -> new Recipe.Line(
                product, rate.orElseThrow().amount(), rate.orElseThrow().unit().word()));
    }
}
