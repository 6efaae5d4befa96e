// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.earleaf.farm.ClearanceFit;
import org.earleaf.farm.Product;
import org.earleaf.farm.Rig;
import org.earleaf.field.Placement;
import org.earleaf.label.ProductLabel;
import org.earleaf.outlook.Baseline;
import org.earleaf.pressure.CropAhead;

/**
 * What forbids a pass whatever it is worth: a label that was not entered or does not allow it, a rig that does not clear
 * the crop. A stage counts as outside the label when more than a tenth of the futures are.
 */
final class SprayLimits {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
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
    record NotEntered(String product, List<String> missing) implements Reason {
        @Override
        public String sentence() {
            return "Of the label of " + product + " this is not entered: " + String.join(", ", missing)
                    + ". Read the label and enter it; write none where it states none.";
        }
    }

    /** A stage that the label does not allow. */
    record OutsideLabel(String product, String limit, LocalDate date, double share) implements Reason {
        @Override
        public String sentence() {
            return "The label of " + product + " allows it " + limit + "; on " + date.format(DAY) + " the crop is "
                    + "outside that in " + Math.round(10 * share) + " of 10 futures.";
        }
    }

    /** Too near to harvest. */
    record BeforeHarvest(String product, int days, LocalDate ripe) implements Reason {
        @Override
        public String sentence() {
            return "The label of " + product + " asks for " + days + " days before harvest; the crop may be ripe by "
                    + ripe.format(DAY) + ".";
        }
    }

    /** A rig that does not clear the crop, or anything else that says itself. */
    record Plain(String sentence) implements Reason {}

    List<Reason> of(SprayMix mix, Rig rig, Placement placement, LocalDate date) {
        List<Reason> no = new ArrayList<>();
        for (SprayMix.Part part : mix.parts()) {
            if (part.product().kind().isLimiting()) {
                label(part.product(), part.label(), placement, date, no);
            }
        }
        if (!mix.withoutPrice().isEmpty()) {
            no.add(new Plain("The price of " + String.join(", ", mix.withoutPrice())
                    + " cannot be told: give price, unit and, for a share of the tank, the carrier."));
        }
        ClearanceFit.findTooTall(rig, placement, base.height_cm(date).p90() / 100)
                .map(Plain::new)
                .ifPresent(no::add);
        return no;
    }

    private void label(Product product, ProductLabel label, Placement placement, LocalDate date, List<Reason> no) {
        List<String> missing = new ArrayList<>(label.missing());
        if (placement == Placement.BY_AIR && label.byAir().isEmpty()) {
            missing.add("whether it is allowed from the air");
        }
        if (!missing.isEmpty()) {
            no.add(new NotEntered(product.name(), missing));
        }
        if (placement == Placement.BY_AIR && !label.byAir().orElse(true)) {
            no.add(new Plain("The label of " + product.name() + " does not allow it from the air."));
        }
        double first = label.firstStage().or(0);
        double early = base.stages().shareBefore(date, first, crops);
        if (early > FEW) {
            no.add(new OutsideLabel(product.name(), "from " + word(first) + " on", date, early));
        }
        double last = label.lastStage().or(Double.POSITIVE_INFINITY);
        double late = base.stages().sharePast(date, last, crops);
        if (late > FEW) {
            no.add(new OutsideLabel(product.name(), "until " + word(last), date, late));
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
