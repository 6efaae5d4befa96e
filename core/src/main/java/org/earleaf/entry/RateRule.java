// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.util.Locale;
import java.util.Optional;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Product;
import org.earleaf.farm.ProductKind;
import org.earleaf.farm.RateUnit;
import org.earleaf.mix.MixForm;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Figure;
import org.earleaf.units.Measure;
import org.earleaf.units.NumberText;
import org.earleaf.units.Quantity;
import org.earleaf.units.Said;

/**
 * How much of a product may go on the ground at once, in passes and recipes alike. The most of each unit and of each kind
 * of product is common practice, no source: several times the highest rate in use, so that only a slip of the pen or the
 * unit is refused. What a label allows is asked where the tank is filled.
 */
final class RateRule {
    static final String RATE = "rate";
    static final String UNIT = "rate_unit";

    /** The nitrogen for which the season model holds in one pass [kg/ha]. */
    static final double MODEL_KGHA = 300;
    /** 446 lb N/ac: twice the usual rate of a whole season. */
    static final double MOST_NITROGEN_KGHA = 500;

    /** A product against weeds, disease or insects, or what helps one: 4 gal/ac. */
    private static final double MOST_PROTECTION_LHA = 37.5;
    /** And by weight: 10 lb/ac. */
    private static final double MOST_PROTECTION_KGHA = 11.3;

    /** A share of the finished spray. */
    private static final double MOST_PROTECTION_SHARE = .1;

    private final Gathered gathered;
    private final String product;
    private final boolean inTank;
    private final Optional<Product> own;
    private final Optional<NitrogenProduct> nitrogen;

    /**
     * A rate as read.
     *
     * @param nitrogen_kgHa that it puts on; 0 without nitrogen, NaN where that is not known
     */
    record Rate(double amount, RateUnit unit, double nitrogen_kgHa) {}

    /** @param inTank whether a share of the finished spray says enough: so in recipes, not on the ground */
    RateRule(String product, Shelf shelf, boolean inTank, Gathered gathered) {
        this.inTank = inTank;
        this.product = product;
        this.own = shelf.find(product);
        this.nitrogen = shelf.findNitrogen(product);
        this.gathered = gathered;
    }

    /** The rate of a draft; empty, with its problem noted, where it is refused. */
    Optional<Rate> read(Draft draft) {
        String text = draft.text(RATE);
        Optional<Rate> rate = gathered.read(() -> split(draft, text)).flatMap(this::checked);
        return gathered.isClear() ? rate : Optional.empty();
    }

    /** The same of a rate that is read already, where its unit is one in which rates on the ground are given. */
    void check(double amount, String unit) {
        RateUnit.findByWord(unit).ifPresent(known -> checked(new Rate(amount, known, Double.NaN)));
    }

    private Rate split(Draft draft, String text) {
        boolean beside = draft.has(UNIT);
        String[] parts = beside
                ? new String[] {text, draft.text(UNIT)}
                : Quantity.split(text, RATE).orElseThrow(() -> unreadable(text));
        RateUnit unit = RateUnit.findByWord(parts[1])
                .orElseThrow(() -> new EarleafException(Gathered.problem(
                        "rate.unit-unknown", beside ? UNIT : RATE, parts[1], "units", RateUnit.words())));
        double amount = NumberText.read(parts[0], RATE);
        if (!(amount > 0)) {
            throw new EarleafException(Gathered.problem("rate.not-above-zero", RATE, text));
        }
        return new Rate(amount, unit, Double.NaN);
    }

    private static EarleafException unreadable(String text) {
        return new EarleafException(Gathered.problem("rate.unreadable", RATE, text, "units", RateUnit.words()));
    }

    private Optional<Rate> checked(Rate rate) {
        if (own.isEmpty() && nitrogen.isEmpty()) {
            return Optional.of(withinUnit(rate));
        }
        if (!fits(rate.unit())) {
            return Optional.empty();
        }
        double kgHa = nitrogen.map(n ->
                        rate.unit() == RateUnit.PERCENT_VV ? 0 : rate.unit().nitrogen_kgHa(rate.amount(), product, n))
                .orElse(0.0);
        return Optional.of(withinNitrogen(new Rate(rate.amount(), rate.unit(), kgHa)));
    }

    /** Whether the unit says how much of this product is meant; the rule that it breaks is noted. */
    private boolean fits(RateUnit unit) {
        boolean liquid = nitrogen.map(NitrogenProduct::isLiquid)
                .orElse(form().filter(MixForm::isLiquid).isPresent());
        boolean dry = nitrogen.map(n -> !n.isLiquid())
                .orElse(form().filter(MixForm::isDry).isPresent());
        String found = unit.word();
        if (unit.isOfNitrogen() && nitrogen.isEmpty()) {
            gathered.wrong("rate.no-nitrogen", UNIT, found, "product", product);
        } else if (unit == RateUnit.OZ_AC && liquid) {
            gathered.wrong("rate.ounces-of-liquid", UNIT, found, "product", product);
        } else if (unit.isMass() && liquid && nitrogen.isEmpty()) {
            gathered.wrong("rate.weight-of-liquid", UNIT, found, "product", product);
        } else if (unit.isVolume() && dry) {
            gathered.wrong("rate.volume-of-dry", UNIT, found, "product", product);
        } else if (unit == RateUnit.PERCENT_VV && nitrogen.isPresent() && !inTank) {
            gathered.wrong("rate.share-of-tank", UNIT, found, "product", product);
        } else {
            return true;
        }
        return false;
    }

    private Optional<MixForm> form() {
        return own.flatMap(p -> MixForm.find(p.form()));
    }

    private Rate withinUnit(Rate rate) {
        double most = most(rate.unit());
        if (rate.amount() > most) {
            gathered.wrong("rate.above-most-of-unit", RATE, text(rate), "most", text(most, rate), "product", product);
        }
        return rate;
    }

    private Rate withinKind(Rate rate) {
        ProductKind kind = own.map(Product::kind).orElse(ProductKind.FERTILIZER);
        boolean protection = kind.isLimiting() && kind != ProductKind.OTHER || kind == ProductKind.HELPER;
        if (!protection || rate.unit().isOfNitrogen()) {
            return withinUnit(rate);
        }
        double most = rate.unit() == RateUnit.PERCENT_VV
                ? MOST_PROTECTION_SHARE
                : rate.unit().isVolume() ? MOST_PROTECTION_LHA : MOST_PROTECTION_KGHA;
        double per = rate.unit().inside(1);
        if (rate.unit().inside(rate.amount()) > most) {
            gathered.wrong(
                    "rate.above-most-of-kind",
                    RATE,
                    text(rate),
                    "most",
                    text(most / per, rate),
                    "kind",
                    kind,
                    "product",
                    product);
            return rate;
        }
        return withinUnit(rate);
    }

    private Rate withinNitrogen(Rate rate) {
        double kgHa = rate.nitrogen_kgHa();
        if (kgHa > MOST_NITROGEN_KGHA) {
            double most = rate.amount() * MOST_NITROGEN_KGHA / kgHa;
            gathered.wrong("rate.above-most-nitrogen", RATE, text(rate), "most", text(most, rate), "product", product);
        } else if (kgHa > MODEL_KGHA) {
            gathered.ask(
                    RATE,
                    text(rate),
                    Said.of(
                            "rate.beyond-the-model",
                            "nitrogen",
                            Measure.NITROGEN_RATE.of(kgHa),
                            "taken",
                            Measure.NITROGEN_RATE.of(MODEL_KGHA)));
            return withinKind(new Rate(rate.amount(), rate.unit(), MODEL_KGHA));
        } else {
            return withinKind(rate);
        }
        return rate;
    }

    private static String text(Rate rate) {
        return Figure.text(rate.amount(), 6) + " " + rate.unit().word();
    }

    private static String text(double most, Rate rate) {
        return Figure.text(most, 3) + " " + rate.unit().word();
    }

    /** The most that is ever written in a unit; more is written in a larger one. */
    private static double most(RateUnit unit) {
        return switch (unit) {
            case LB_N_AC -> 450;
            case KG_N_HA -> 505;
            case GAL_AC -> 300;
            case L_HA -> 2800;
            case LB_AC -> 20_000;
            case KG_HA -> 22_500;
            case FLOZ_AC -> 640;
            case PT_AC -> 80;
            case QT_AC -> 80;
            case OZ_AC -> 320;
            case PERCENT_VV -> 100;
        };
    }

    /** Ammonia is a gas: it goes on nowhere but in the ground. */
    static boolean isAmmonia(String product) {
        return product.toLowerCase(Locale.ROOT).endsWith("ammonia");
    }
}
