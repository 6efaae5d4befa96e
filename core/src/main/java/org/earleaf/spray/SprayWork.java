// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.earleaf.farm.Farm;
import org.earleaf.farm.FieldWeather;
import org.earleaf.farm.Product;
import org.earleaf.farm.Rig;
import org.earleaf.farm.WorkingSpeed;
import org.earleaf.field.Placement;
import org.earleaf.label.DropletClass;
import org.earleaf.label.ProductLabel;
import org.earleaf.label.SprayLabel;
import org.earleaf.outlook.Outlook;
import org.earleaf.rig.FieldCapacity;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.soil.SoilProfile;
import org.earleaf.soil.Texture;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;

/** A pass on a field as far as weather matters to it. */
public record SprayWork(Farm farm, Outlook outlook, Placement placement, List<Product> products, boolean nitrogen) {
    /** Outlets of a boom hang so far above the crop (20 in, common practice, no source). */
    private static final double ABOVE_CROP_M = 20 * 0.0254;
    /** Ears sit at about half of the height (common practice, no source). */
    private static final double EAR_SHARE = .5;

    private static final int TOP_LAYERS = 2;
    private static final double M2_PER_HA = 10_000;
    private static final double SECONDS = 3600;

    /** Height of the highest outlets above the ground. */
    static double boom_m(Placement placement, double crop_m) {
        return placement == Placement.UNDER_CANOPY ? EAR_SHARE * crop_m : crop_m + ABOVE_CROP_M;
    }

    /** Hours that one tank takes on a field, its refill not counted. */
    static double load_h(Rig rig, Placement placement, Outlook outlook, double litresHa) {
        double height_m = outlook.height_cm().p90() / 100;
        double speed_ms = WorkingSpeed.of(placement, height_m).within(rig).cruise_ms();
        double m2s =
                FieldCapacity.capacity_m2s(speed_ms, rig.width_m(), rig.pace().fieldEfficiency());
        double area_m2 = outlook.zone().area_ha() * M2_PER_HA;
        double tank_m2 = rig.tank_m3() * 1000 / litresHa * M2_PER_HA;
        double hours = (tank_m2 < area_m2 ? tank_m2 : area_m2) / m2s / SECONDS;
        return hours > 0 ? hours : 1;
    }

    /** @param firstHour the first hour known; rain before it comes from the days */
    public SprayJob job(LocalDateTime firstHour) {
        double height_m = outlook.height_cm().p50() / 100;
        boolean stream = nitrogen && placement != Placement.BROADCAST;
        return new SprayJob(
                stream ? SprayJob.Kind.SOIL_STREAM : SprayJob.Kind.FOLIAR,
                boom_m(placement, height_m),
                mediumOrFiner(),
                outlook.trace().isClosed(outlook.today()),
                label(),
                ground(firstHour));
    }

    private SprayLabel label() {
        return SprayLabel.ofMix(labels().map(ProductLabel::weather).toList());
    }

    private Stream<ProductLabel> labels() {
        return products.stream().filter(p -> p.kind().isLimiting()).map(p -> farm.labels()
                .advice(p.name(), outlook.zone().crop()));
    }

    /** Medium droplets or finer are taken to be used unless every label asks for coarser ones. */
    private boolean mediumOrFiner() {
        return labels().allMatch(l -> l.droplet_class().or(0) <= DropletClass.M.ordinal());
    }

    private Ground ground(LocalDateTime firstHour) {
        LocalDate before = firstHour.toLocalDate().minusDays(1);
        WeatherSeries days = FieldWeather.of(farm, outlook.zone());
        boolean slot = placement == Placement.MID_INJECT || placement == Placement.ROW_INJECT;
        return new Ground(kind(), wetness(), slot, rain_mm(days, before), rain_mm(days, before.minusDays(1)));
    }

    private Ground.Kind kind() {
        Texture texture = outlook.zone().soil().texture();
        if (texture.isClay() || texture.isClayLoam()) {
            return Ground.Kind.FINE;
        }
        return texture.isSandy() ? Ground.Kind.COARSE : Ground.Kind.MEDIUM;
    }

    /** Water of the top 6 in between the rows this morning, by field capacity. */
    private double wetness() {
        SeasonTrace trace = outlook.trace();
        int evening = outlook.today() - 1;
        if (evening < 0) {
            return Double.NaN;
        }
        double water_mm = 0;
        double capacity_mm = 0;
        for (int i = 0; i < TOP_LAYERS; i++) {
            water_mm += trace.at(evening, Cell.WATER, SeasonTrace.MIDDLE, i);
            capacity_mm += outlook.zone().soil().water().get(i).fc() * SoilProfile.thickness_mm(i);
        }
        return water_mm / capacity_mm;
    }

    private static double rain_mm(WeatherSeries days, LocalDate date) {
        return days.days().stream()
                .filter(d -> d.date().equals(date))
                .mapToDouble(WeatherDay::rain_mm)
                .filter(r -> r > 0)
                .sum();
    }
}
