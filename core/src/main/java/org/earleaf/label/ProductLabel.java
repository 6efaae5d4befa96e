// SPDX-License-Identifier: Apache-2.0
package org.earleaf.label;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What advice needs of a label entry: weather, droplets, stages, days before harvest, groups. Nothing is ever filled in:
 * what is not entered, or was not looked at twice, keeps the product from being advised.
 *
 * @param groups mode-of-action groups without their list: "11", "3A"
 * @param weather limits of wind, temperature, rain and inversion
 * @param droplet_class finest droplets allowed, as the place of its {@link DropletClass}
 * @param preHarvest_d days between the last pass and harvest for grain
 * @param firstStage earliest stage, on the scale of the crop; corn's is that of readings
 * @param lastStage latest stage likewise
 * @param byAir whether it may be sprayed from the air; empty: not entered
 * @param waiting whether it was entered and nobody has looked at it again
 */
public record ProductLabel(
        List<String> groups,
        SprayLabel weather,
        LabelLimit droplet_class,
        LabelLimit preHarvest_d,
        LabelLimit firstStage,
        LabelLimit lastStage,
        Optional<Boolean> byAir,
        boolean waiting) {
    /** Nothing told. */
    public static final ProductLabel NOT_ENTERED = blank(false);

    /** Entered once: it counts for nothing until the second look. */
    public static final ProductLabel WAITING = blank(true);

    public ProductLabel {
        groups = List.copyOf(groups);
    }

    private static ProductLabel blank(boolean waiting) {
        LabelLimit no = LabelLimit.notEntered();
        return new ProductLabel(List.of(), SprayLabel.NOT_ENTERED, no, no, no, no, Optional.empty(), waiting);
    }

    /** What advice needs of an entry that was looked at twice. */
    static ProductLabel of(LabelEntry entry) {
        Set<String> groups = new LinkedHashSet<>();
        entry.actives().forEach(a -> a.groups().forEach(g -> groups.add(g.substring(g.lastIndexOf(' ') + 1))));
        return new ProductLabel(
                List.copyOf(groups),
                new SprayLabel(
                        entry.limit(LabelItem.WIND_LEAST),
                        entry.limit(LabelItem.WIND_MOST),
                        entry.limit(LabelItem.AIR_MOST),
                        entry.limit(LabelItem.RAINFAST),
                        yesNo(entry, LabelItem.INVERSION)),
                entry.limit(LabelItem.FINEST),
                entry.limit(LabelItem.HARVEST),
                entry.limit(LabelItem.FIRST_STAGE),
                entry.limit(LabelItem.LAST_STAGE),
                yesNo(entry, LabelItem.BY_AIR),
                false);
    }

    private static Optional<Boolean> yesNo(LabelEntry entry, LabelItem item) {
        LabelFigure figure = entry.figure(item);
        return figure.isEntered() ? Optional.of(figure.limit().or(0) > 0) : Optional.empty();
    }

    /** What is still missing of an entry that does not wait. */
    public List<LabelItem> missing() {
        List<LabelItem> missing = new ArrayList<>(weather.missing());
        SprayLabel.add(missing, droplet_class.isEntered(), LabelItem.FINEST);
        SprayLabel.add(missing, preHarvest_d.isEntered(), LabelItem.HARVEST);
        SprayLabel.add(missing, firstStage.isEntered(), LabelItem.FIRST_STAGE);
        SprayLabel.add(missing, lastStage.isEntered(), LabelItem.LAST_STAGE);
        return List.copyOf(missing);
    }
}
