// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.weather.LabelLimit;
import org.earleaf.weather.SprayLabel;

/**
 * What a product is for and what its label says, as far as a person has entered it. Nothing is ever filled in: what is
 * not entered keeps the product from being advised.
 *
 * @param groups mode-of-action groups as printed on the label (FRAC numbers of a fungicide, IRAC of an insecticide)
 * @param weather limits of wind, temperature, rain and inversion
 * @param droplet_class finest droplets allowed, as the place of its {@link DropletClass}
 * @param preHarvest_d days between the last pass and harvest for grain
 * @param firstStage earliest stage, on the scale of readings: collars, VT 30, R1 31 to R6 36
 * @param lastStage latest stage likewise
 * @param byAir whether it may be sprayed from the air; empty: not entered
 */
public record ProductLabel(
        ProductKind kind,
        List<String> groups,
        SprayLabel weather,
        LabelLimit droplet_class,
        LabelLimit preHarvest_d,
        LabelLimit firstStage,
        LabelLimit lastStage,
        Optional<Boolean> byAir) {
    /** Nothing told. */
    public static final ProductLabel NOT_ENTERED = new ProductLabel(
            ProductKind.OTHER,
            List.of(),
            SprayLabel.NOT_ENTERED,
            LabelLimit.notEntered(),
            LabelLimit.notEntered(),
            LabelLimit.notEntered(),
            LabelLimit.notEntered(),
            Optional.empty());

    public ProductLabel {
        groups = List.copyOf(groups);
    }

    /** A helper such as a spreader: it brings no limits of its own into a mix. */
    public boolean isLimiting() {
        return kind != ProductKind.HELPER && kind != ProductKind.FERTILIZER;
    }

    /** Entries that are still missing, in the words of a label. */
    public List<String> missing() {
        List<String> words = new ArrayList<>(weather.missing());
        say(words, droplet_class, "finest droplets");
        say(words, preHarvest_d, "days before harvest");
        say(words, firstStage, "earliest stage");
        say(words, lastStage, "latest stage");
        return List.copyOf(words);
    }

    private static void say(List<String> words, LabelLimit limit, String word) {
        if (!limit.isEntered()) {
            words.add(word);
        }
    }
}
