// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.farm.ClearanceFit;
import org.earleaf.farm.Product;
import org.earleaf.farm.Rig;
import org.earleaf.field.Placement;
import org.earleaf.label.ProductLabel;
import org.earleaf.outlook.Baseline;
import org.earleaf.pressure.CropAhead;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/**
 * What forbids a pass whatever it is worth: a label that was not entered or does not allow it, a rig that does not clear
 * the crop. A stage counts as outside the label when more than a tenth of the futures are.
 */
final class SprayLimits {
    private static final double FEW = .1;

    private final Baseline base;
    private final List<CropAhead> crops;
    private final Optional<LocalDate> ripe;

    /** @param ripe earliest likely day of black layer (p10): no grain is cut before it */
    SprayLimits(Baseline base, List<CropAhead> crops, Optional<LocalDate> ripe) {
        this.base = base;
        this.crops = crops;
        this.ripe = ripe;
    }

    /** Entries of a label that a person has yet to make. */
    record NotEntered(String product, List<?> missing) implements Reason {
        @Override
        public Said said() {
            return Said.of("label.not-entered", "product", product, "missing", missing);
        }
    }

    /**
     * A stage that the label does not allow.
     *
     * @param stage the first that it allows, or the last
     * @param share of the futures that are outside
     */
    record OutsideLabel(String product, boolean tooLate, String stage, LocalDate date, double share) implements Reason {
        @Override
        public Said said() {
            return Said.of(
                    tooLate ? "label.past-stage" : "label.before-stage",
                    "product",
                    product,
                    "stage",
                    stage,
                    "day",
                    date,
                    "chance",
                    Measure.CHANCE.of(share));
        }
    }

    /** Too near to harvest. */
    record BeforeHarvest(String product, int days, LocalDate ripe) implements Reason {
        @Override
        public Said said() {
            return Said.of("label.before-harvest", "product", product, "days", Measure.DAYS.of(days), "ripe", ripe);
        }
    }

    /** Products whose price nobody entered: what the pass costs is not known. */
    record NoPrice(List<String> products) implements Reason {
        @Override
        public Said said() {
            return Said.of("mix.without-price", "products", products);
        }
    }

    /** A rig that does not clear the crop, or anything else that names its sentence. */
    record Plain(Said said) implements Reason {}

    List<Reason> of(SprayMix mix, Rig rig, Placement placement, LocalDate date) {
        List<Reason> no = new ArrayList<>();
        for (SprayMix.Part part : mix.parts()) {
            if (part.product().kind().isLimiting()) {
                label(part.product(), part.label(), placement, date, no);
            }
        }
        if (!mix.withoutPrice().isEmpty()) {
            no.add(new NoPrice(mix.withoutPrice()));
        }
        ClearanceFit.tooTall(rig, placement, base.height_cm(date).p90() / 100)
                .map(Plain::new)
                .ifPresent(no::add);
        return no;
    }

    private void label(Product product, ProductLabel label, Placement placement, LocalDate date, List<Reason> no) {
        List<Object> missing =
                new ArrayList<>(label.waiting() ? List.of(Said.of("label.missing-second-look")) : label.missing());
        if (placement == Placement.BY_AIR && label.byAir().isEmpty()) {
            missing.add(Said.of("label.missing-by-air"));
        }
        if (!missing.isEmpty()) {
            no.add(new NotEntered(product.name(), missing));
        }
        if (placement == Placement.BY_AIR && !label.byAir().orElse(true)) {
            no.add(new Plain(Said.of("label.not-by-air", "product", product.name())));
        }
        double first = label.firstStage().or(0);
        double early = base.stages().shareBefore(date, first, crops);
        if (early > FEW) {
            no.add(new OutsideLabel(product.name(), false, word(first), date, early));
        }
        double last = label.lastStage().or(Double.POSITIVE_INFINITY);
        double late = base.stages().sharePast(date, last, crops);
        if (late > FEW) {
            no.add(new OutsideLabel(product.name(), true, word(last), date, late));
        }
        int days = (int) Math.ceil(label.preHarvest_d().or(0));
        if (ripe.isPresent() && date.plusDays(days).isAfter(ripe.get())) {
            no.add(new BeforeHarvest(product.name(), days, ripe.get()));
        }
    }

    private static String word(double stage) {
        int whole = (int) stage;
        return whole > 30 ? "R" + (whole - 30) : whole == 30 ? "VT" : whole == 0 ? "VE" : "V" + whole;
    }
}
