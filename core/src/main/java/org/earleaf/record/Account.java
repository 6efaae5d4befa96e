// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.earleaf.farm.Farm;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Product;
import org.earleaf.field.Pass;
import org.earleaf.field.Zone;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.earleaf.units.Units;

/**
 * Makes the record of a pass from the farm's facts and what a person adds. Amounts that nobody measured are rate times
 * area, and the record says so.
 */
public final class Account {
    private static final String PER_ACRE = "/ac";
    private static final String PER_HECTARE = "/ha";

    private final Farm farm;
    private final Pass pass;
    private final Told told;
    private final boolean metric;

    private Account(Farm farm, Pass pass, Told told) {
        this.farm = farm;
        this.pass = pass;
        this.told = told;
        this.metric = pass.rate().unit().endsWith(PER_HECTARE);
    }

    /**
     * A first account.
     *
     * @param id unique among records
     * @param pass as it was made, with the id under which it is kept
     */
    public static FiledRecord of(String id, Farm farm, Pass pass, Told told) {
        return new Account(farm, pass, told).record(id, "", "");
    }

    /** A further account that says what is right. */
    public static FiledRecord correction(String id, String corrects, String why, Farm farm, Pass pass, Told told) {
        return new Account(farm, pass, told).record(id, corrects, why);
    }

    private FiledRecord record(String id, String corrects, String why) {
        Amount area = told.area().orElseGet(this::wholeArea);
        TreeMap<String, String> extras = new TreeMap<>(told.extras());
        if (told.amount().isEmpty()) {
            extras.put("amount from", "rate times area");
        }
        ZoneId home = farm.timeZone();
        return new FiledRecord(
                new FiledRecord.Filing(
                        id, corrects, why, told.filed(), told.applicator().name()),
                pass.id(),
                new FiledRecord.Treated(pass.part(), told.location(), crop(), area),
                new FiledRecord.Work(
                        pass.placement().word(),
                        told.rig(),
                        pass.date(),
                        told.hours().startOn(pass.date(), home),
                        told.hours().endOn(pass.date(), home)),
                List.of(use(area)),
                told.applicator(),
                extras);
    }

    private List<Zone> zones() {
        return farm.zones().stream().filter(pass::isOn).toList();
    }

    private String crop() {
        return zones().stream().map(Zone::crop).findFirst().orElse("");
    }

    private Amount wholeArea() {
        double area_ha = zones().stream().mapToDouble(Zone::area_ha).sum();
        return metric ? rounded(area_ha, "ha") : rounded(area_ha / Units.HA_PER_AC, "ac");
    }

    private ProductUse use(Amount area) {
        String registration = told.registration().isBlank()
                ? findProduct().map(Product::registration).orElse("")
                : told.registration();
        return new ProductUse(
                pass.product(),
                registration,
                told.amount().orElseGet(() -> total(area)),
                new BigDecimal(String.valueOf(pass.rate().entered()))
                                .stripTrailingZeros()
                                .toPlainString() + " " + pass.rate().unit(),
                "",
                OptionalInt.empty());
    }

    private Optional<Product> findProduct() {
        return farm.findProduct(pass.product());
    }

    /** Product on the whole area, in the unit in which its rate was given. */
    private Amount total(Amount area) {
        double ground = area.inside(org.earleaf.units.Dimension.AREA, "area") / (metric ? 10_000 : Units.M2_PER_AC);
        String unit = pass.rate().unit();
        if (unit.toLowerCase(Locale.ROOT).contains(" n/")) {
            return productOfNitrogen(ground);
        }
        if (unit.endsWith(PER_ACRE) || unit.endsWith(PER_HECTARE)) {
            return rounded(pass.rate().entered() * ground, unit.substring(0, unit.length() - PER_ACRE.length()));
        }
        throw new EarleafException(Problem.of(
                "record.amount-needed",
                Said.of("where.amount-of", "product", pass.product()),
                Said.of("found.rate-in", "unit", unit)));
    }

    private Amount productOfNitrogen(double ground) {
        NitrogenProduct product = farm.findNitrogen(pass.product())
                .orElseThrow(() -> new EarleafException(Problem.of(
                        "record.amount-needed",
                        Said.of("where.amount-of", "product", pass.product()),
                        Said.of("found.nitrogen-not-known"))));
        double kg = pass.nitrogen_kgHa() * (metric ? 1 : Units.HA_PER_AC) * ground / product.nitrogen_share();
        if (product.isLiquid()) {
            double litres = kg / product.density_kgL();
            return metric ? rounded(litres, "L") : rounded(litres / Units.L_PER_GAL, "gal");
        }
        return metric ? rounded(kg, "kg") : rounded(kg / Units.KG_PER_LB, "lb");
    }

    private static Amount rounded(double value, String unit) {
        return new Amount(BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP), unit);
    }
}
