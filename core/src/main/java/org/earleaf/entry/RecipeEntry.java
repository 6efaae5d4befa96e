// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.util.List;
import java.util.Optional;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Product;
import org.earleaf.farm.Recipe;
import org.earleaf.mix.Dose;
import org.earleaf.mix.MixForm;
import org.earleaf.mix.MixLine;
import org.earleaf.units.EarleafException;
import org.earleaf.units.NumberText;
import org.earleaf.units.Said;

/** One product of a recipe as a person enters it: product, rate and rate_unit. */
public final class RecipeEntry {
    public static final String FORM = "form";
    /** Overrides the form's place in the mixing order. */
    public static final String MIX_CLASS = "class";

    private RecipeEntry() {}

    /** Of a recipe of the farm, whose products stand on its shelf. */
    public static Entered<Recipe.Line> of(Draft draft, Shelf shelf) {
        Gathered gathered = new Gathered();
        String product = PassEntry.product(shelf, draft.text(PassEntry.PRODUCT), gathered);
        Optional<RateRule.Rate> rate = new RateRule(product, shelf, true, gathered).read(draft);
        return gathered.with(() -> new Recipe.Line(
                product, rate.orElseThrow().amount(), rate.orElseThrow().unit().word()));
    }

    /** The farm's recipe of that name; refused where there is none. */
    public static Recipe named(List<Recipe> recipes, String name) {
        return recipes.stream()
                .filter(r -> r.name().equals(name))
                .findFirst()
                .orElseThrow(() -> EarleafException.coded(
                        "recipe.unknown",
                        "recipe",
                        name,
                        "recipes",
                        recipes.stream().map(Recipe::name).toList()));
    }

    /** Of a recipe that stands alone: form, and class if wanted, say what the product is. */
    public static Entered<MixLine> alone(Draft draft) {
        Gathered gathered = new Gathered();
        String product = gathered.filled(draft, PassEntry.PRODUCT);
        Optional<NitrogenProduct> nitrogen = NitrogenProduct.findBuiltIn(product);
        Optional<MixForm> form = form(draft, nitrogen, gathered);
        String said = gathered.filled(draft, RateRule.RATE);
        double amount = said.isEmpty() ? Double.NaN : gathered.number(() -> NumberText.read(said, RateRule.RATE));
        if (amount <= 0) {
            gathered.wrong("rate.not-above-zero", RateRule.RATE, said);
        }
        String unit = gathered.filled(draft, RateRule.UNIT);
        Optional<Dose> dose = gathered.isClear()
                ? gathered.read(() ->
                        Dose.parse(amount, unit, form.orElseThrow(), nitrogen.orElse(null), Said.text(RateRule.UNIT)))
                : Optional.empty();
        if (dose.isPresent()) {
            Shelf shelf = new Alone(product, nitrogen.isPresent() ? Optional.empty() : form);
            new RateRule(product, shelf, true, gathered).check(amount, unit);
        }
        return gathered.with(() -> new MixLine(product, dose.orElseThrow(), form.orElseThrow(), nitrogen.orElse(null)));
    }

    /** The form, or the class that overrides it; a form that never goes in a tank stays refused under any class. */
    private static Optional<MixForm> form(Draft draft, Optional<NitrogenProduct> nitrogen, Gathered gathered) {
        Optional<MixForm> byForm = form(draft, FORM, gathered);
        Optional<MixForm> byClass = form(draft, MIX_CLASS, gathered);
        if (draft.has(FORM) || draft.has(MIX_CLASS)) {
            return byClass.or(() -> byForm);
        }
        if (nitrogen.filter(NitrogenProduct::isLiquid).isPresent()) {
            return MixForm.find("SL");
        }
        gathered.wrong("form.missing", FORM, "", "codes", MixForm.codes());
        return Optional.empty();
    }

    private static Optional<MixForm> form(Draft draft, String part, Gathered gathered) {
        return draft.has(part)
                ? gathered.read(() -> MixForm.parse(draft.text(part), Said.text(part)))
                : Optional.empty();
    }

    /** One product of a known form and nothing else; without a form one that is built in. */
    private record Alone(String product, Optional<MixForm> form) implements Shelf {
        @Override
        public Optional<Product> find(String name) {
            return form.map(f -> new Product(product, f.code(), Double.NaN, Double.NaN, "", null, "", ""));
        }

        @Override
        public List<NitrogenProduct> nitrogen() {
            return List.of();
        }

        @Override
        public List<String> names() {
            return List.of(product);
        }

        @Override
        public boolean isWhole() {
            return true;
        }
    }
}
