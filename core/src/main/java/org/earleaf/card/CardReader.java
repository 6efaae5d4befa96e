// SPDX-License-Identifier: Apache-2.0
package org.earleaf.card;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.earleaf.units.Ranks;

/**
 * Reads the picture of a card: stained or not, patch by patch, and what that comes to.
 *
 * @param margin_um left out on every side
 * @param leastStain_um diameter below which a patch is dust
 * @param spread from stain to drop
 */
public record CardReader(double margin_um, double leastStain_um, SpreadFactor spread) {
    private static final double UM2_PER_CM2 = 1e8;
    private static final double UM3_PER_UL = 1e9;
    private static final double SCUFF = 2.5;
    /** A single stain is at most this much longer than wide (own construct; two discs that touch are 2.2). */
    private static final double ROUND = 1.3;

    /** A margin of a millimetre, stains from 50 um, spread as recalled. */
    public static CardReader usual() {
        return new CardReader(1000, 50, SpreadFactor.recalled());
    }

    public CardReading read(CardPicture picture) {
        CardPicture card = margin_um > 0 ? picture.inside(margin_um) : picture;
        StainMask mask = StainMask.of(card);
        double pixel_um2 = card.pixel_um() * card.pixel_um();
        double least_px = Math.PI / 4 * leastStain_um * leastStain_um / pixel_um2;
        List<Stain> stains = new ArrayList<>();
        int stained = 0;
        for (Stain stain : Patches.of(mask).parted()) {
            if (stain.area_px() >= least_px) {
                stains.add(stain);
                stained += stain.area_px();
            }
        }
        double area_cm2 = card.rgb().length * pixel_um2 / UM2_PER_CM2;
        double cover = (double) stained / card.rgb().length;
        long cut = stains.stream().filter(Stain::cut).count();
        double counted_cm2 = (stains.size() - cut / 2.0) / area_cm2;
        boolean apart = cover <= CardReading.COVER_ONLY;
        return new CardReading(
                area_cm2,
                cover,
                stains.size(),
                (int) stains.stream().filter(s -> s.length() > SCUFF).count(),
                counted_cm2,
                apart ? Optional.of(stains_cm2(stains, counted_cm2, cover, pixel_um2)) : Optional.empty(),
                apart ? sizes(stains, area_cm2, pixel_um2) : Optional.empty());
    }

    private static double stains_cm2(List<Stain> stains, double counted_cm2, double cover, double pixel_um2) {
        if (stains.isEmpty()) {
            return 0;
        }
        return StainOverlap.density(counted_cm2, cover, single_px(stains) * pixel_um2 / UM2_PER_CM2);
    }

    /** Mean area of patches that are round and not much larger than the middle one: median and twice its deviation. */
    private static double single_px(List<Stain> stains) {
        double[] round = stains.stream()
                .filter(s -> s.length() <= ROUND && !s.cut())
                .mapToDouble(Stain::area_px)
                .toArray();
        if (round.length == 0) {
            return stains.stream().mapToDouble(Stain::area_px).average().orElseThrow();
        }
        double middle = Ranks.of(round).quantile(.5);
        double[] off = new double[round.length];
        for (int k = 0; k < off.length; k++) {
            off[k] = Math.abs(round[k] - middle);
        }
        double most = middle + 2 * Ranks.of(off).quantile(.5);
        double sum = 0;
        int n = 0;
        for (double area : round) {
            if (area <= most) {
                sum += area;
                n++;
            }
        }
        return sum / n;
    }

    private Optional<CardReading.Sizes> sizes(List<Stain> stains, double area_cm2, double pixel_um2) {
        double[] area_um2 = stains.stream()
                .filter(s -> !s.cut())
                .mapToDouble(s -> s.area_px() * pixel_um2)
                .toArray();
        if (area_um2.length == 0) {
            return Optional.empty();
        }
        double volume = 0;
        List<double[]> drops = new ArrayList<>();
        for (double area : area_um2) {
            double drop_um3 = spread.drop_um3(area);
            volume += drop_um3;
            drops.add(new double[] {spread.drop_um(area), drop_um3});
        }
        drops.sort(Comparator.comparingDouble(d -> d[0]));
        // What the edge cuts fell on the card too: half of it lies within.
        double whole = area_um2.length;
        double all = whole + (stains.size() - whole) / 2;
        return Optional.of(new CardReading.Sizes(
                2 * Math.sqrt(Ranks.of(area_um2).quantile(.5) / Math.PI),
                below(drops, volume * .1),
                below(drops, volume * .5),
                below(drops, volume * .9),
                volume * all / whole / UM3_PER_UL / area_cm2));
    }

    /** The diameter up to which the drops hold this volume. */
    private static double below(List<double[]> drops, double volume) {
        double sum = 0;
        for (double[] drop : drops) {
            sum += drop[1];
            if (sum >= volume) {
                return drop[0];
            }
        }
        return drops.get(drops.size() - 1)[0];
    }
}
