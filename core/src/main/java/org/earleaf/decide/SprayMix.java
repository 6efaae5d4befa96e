// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Product;
import org.earleaf.farm.ProductKind;
import org.earleaf.farm.RateUnit;
import org.earleaf.farm.Recipe;
import org.earleaf.field.Purpose;
import org.earleaf.label.ProductLabel;

/**
 * What goes together in a pass against disease or insects. Products and rates are those of the farm's own recipes; Earleaf
 * proposes no rate.
 *
 * @param recipe the recipe it comes from
 * @param carrier_LHa finished spray; NaN: not given
 * @param parts in the order of the recipe
 */
public record SprayMix(String recipe, double carrier_LHa, List<Part> parts) {
    private static final String CORN = "corn";
    private static final Set<String> SURFACTANTS = Set.of("NIS", "HSOC", "COC", "MSO");

    public SprayMix {
        parts = List.copyOf(parts);
    }

    /**
     * One product of it.
     *
     * @param label what advice needs of its label for corn
     * @param rate as entered, in its unit
     */
    public record Part(Product product, ProductLabel label, double rate, RateUnit unit) {
        /** L/ha of a volume, kg/ha of a mass, of a share of the tank what it comes to. */
        public double inside(double carrier_LHa) {
            return unit == RateUnit.PERCENT_VV ? unit.inside(rate) * carrier_LHa : unit.inside(rate);
        }

        private boolean is(ProductKind kind) {
            return product.kind() == kind;
        }

        private boolean protects() {
            return is(ProductKind.FUNGICIDE) || is(ProductKind.INSECTICIDE);
        }

        private boolean helps() {
            return is(ProductKind.HELPER) || SURFACTANTS.contains(product.form());
        }
    }

    /**
     * Every mix that the farm's recipes speak of: each fungicide alone and with each insecticide, each insecticide alone,
     * with the helpers of their recipe. Recipes that hold anything else, such as a herbicide, are left alone.
     */
    public static List<SprayMix> of(Farm farm) {
        List<SprayMix> whole = farm.shelf().recipes().stream()
                .map(r -> of(farm, r))
                .filter(m -> m.parts.stream().anyMatch(Part::protects)
                        && m.parts.stream().allMatch(p -> p.protects() || p.helps()))
                .toList();
        Set<Part> insecticides = new LinkedHashSet<>();
        whole.forEach(
                m -> m.parts.stream().filter(p -> p.is(ProductKind.INSECTICIDE)).forEach(insecticides::add));
        Set<SprayMix> all = new LinkedHashSet<>();
        for (SprayMix m : whole) {
            if (m.has(ProductKind.FUNGICIDE)) {
                SprayMix alone = m.without(ProductKind.INSECTICIDE);
                all.add(alone);
                insecticides.forEach(i -> all.add(m.parts.contains(i) ? m : alone.with(i)));
            }
            if (m.has(ProductKind.INSECTICIDE)) {
                all.add(m.without(ProductKind.FUNGICIDE));
            }
        }
        return List.copyOf(all);
    }

    private static SprayMix of(Farm farm, Recipe recipe) {
        List<Part> parts = new ArrayList<>();
        for (Recipe.Line line : recipe.lines()) {
            Optional<Product> product = farm.findProduct(line.product());
            Optional<RateUnit> unit = RateUnit.findByWord(line.rateUnit());
            if (product.isEmpty() || unit.isEmpty()) {
                return new SprayMix(recipe.name(), recipe.carrier_LHa(), List.of());
            }
            ProductLabel label = farm.labels().advice(line.product(), CORN);
            parts.add(new Part(product.get(), label, line.rate(), unit.get()));
        }
        return new SprayMix(recipe.name(), recipe.carrier_LHa(), parts);
    }

    private SprayMix without(ProductKind kind) {
        return new SprayMix(
                recipe, carrier_LHa, parts.stream().filter(p -> !p.is(kind)).toList());
    }

    private SprayMix with(Part part) {
        List<Part> more = new ArrayList<>(parts);
        int at = (int) parts.stream().filter(Part::protects).count();
        more.add(at, part);
        return new SprayMix(recipe, carrier_LHa, more);
    }

    boolean has(ProductKind kind) {
        return parts.stream().anyMatch(p -> p.is(kind));
    }

    List<Part> parts(ProductKind kind) {
        return parts.stream().filter(p -> p.is(kind)).toList();
    }

    /** The products against disease and insects, without helpers. */
    public List<Part> protecting() {
        return parts.stream().filter(Part::protects).toList();
    }

    boolean hasSurfactant() {
        return parts.stream().anyMatch(p -> SURFACTANTS.contains(p.product().form()));
    }

    public Purpose kind() {
        boolean fungicide = has(ProductKind.FUNGICIDE);
        boolean insecticide = has(ProductKind.INSECTICIDE);
        if (fungicide && insecticide) {
            return Purpose.FUNGICIDE_AND_INSECTICIDE;
        }
        return fungicide ? Purpose.FUNGICIDE : Purpose.INSECTICIDE;
    }

    /** "Demo F1 + Demo I1". */
    public String names() {
        return protecting().stream().map(p -> p.product().name()).collect(Collectors.joining(" + "));
    }

    /** What some of its parts cost on a hectare; NaN when a price, density or carrier is missing. */
    double cost_usdHa(List<Part> of) {
        return of.stream()
                .mapToDouble(p -> p.product().cost_usdHa(p.rate(), p.unit(), carrier_LHa))
                .sum();
    }

    /** Of which products the price cannot be told. */
    List<String> withoutPrice() {
        return parts.stream()
                .filter(p -> Double.isNaN(p.product().cost_usdHa(p.rate(), p.unit(), carrier_LHa)))
                .map(p -> p.product().name())
                .toList();
    }
}
