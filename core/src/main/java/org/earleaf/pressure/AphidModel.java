// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.time.LocalDate;

/**
 * Corn leaf aphids over the weeks after a pass, and what they take.
 *
 * <pre>
 * growth = 0.20 - 0.15 NE a day, held within -0.2 and 0.25; less 0.05 on humid days, when fungi kill aphids
 * after a pyrethroid a fifth of the enemies is left; after a fungicide those fungi are gone for 14 days
 * loss = stage weight x aphid-days/10,000 x 16 bu/ac in a dry crop, a fifth of it where the crop has water
 *
 * NE     natural enemies a plant, in lady beetles
 * Range  20 to 27 °C; three weeks
 * Source 16 bu/ac: derived, so that the level of Illinois extension 1997 (read: 50 or more on half of the plants at early
 *        tassel, in drought) takes what an insecticide and its trip cost, and 50 on every plant half of the 8.3 % that was
 *        the most by a light infestation in drought (Foott & Timmins 1973, Can. Entomol. 105:449, abstract read).
 *        A fifth: the same two, nil to 34 % of the loss in drought where there was water, and over 400 instead of 50.
 *        The rest is assumption. That fungicides suppress insect-killing fungi was shown in soybean (J. Invertebr.
 *        Pathol. 2010, 103:156); no late-season threshold in corn has been validated (Iowa extension).
 * Check  AphidModelTest
 * </pre>
 */
public final class AphidModel {
    private static final double DRY_KGHA_PER_BUAC =
            org.earleaf.units.Units.KGHA_PER_BUAC * org.earleaf.units.Units.DRY_SHARE_OF_TRADE_CORN;

    private final double perPlant;
    private final double enemies;
    private final double humidDays;
    private final boolean dry;
    private final ProtectionSettings settings;

    /**
     * @param perPlant aphids on the mean plant on the day of the pass
     * @param enemies natural enemies a plant
     * @param humidDays share of days on which fungi work
     * @param dry the crop is short of water
     */
    public AphidModel(double perPlant, double enemies, double humidDays, boolean dry, ProtectionSettings settings) {
        this.perPlant = perPlant;
        this.enemies = enemies;
        this.humidDays = humidDays;
        this.dry = dry;
        this.settings = settings;
    }

    /** Daily growth before fungi. */
    double growth_perDay(boolean enemiesKilled) {
        double left = enemiesKilled ? settings.of(ProtectionAssumption.ENEMIES_LEFT) : 1;
        double growth = settings.of(ProtectionAssumption.APHID_GROWTH)
                - settings.of(ProtectionAssumption.ENEMY_EFFECT) * enemies * left;
        return Math.max(
                settings.of(ProtectionAssumption.APHID_FALL),
                Math.min(settings.of(ProtectionAssumption.APHID_RISE), growth));
    }

    /** Dry grain lost [kg/ha] in one future, from a day on, after what is sprayed on that day. */
    public double loss_kgHa(
            CropAhead future, LocalDate from, boolean fungicide, boolean insecticide, boolean enemiesKilled) {
        double aphids = perPlant * (insecticide ? 1 - settings.of(ProtectionAssumption.APHICIDE) : 1);
        double growth = growth_perDay(enemiesKilled);
        double fungi = settings.of(ProtectionAssumption.FUNGUS_EFFECT) * humidDays;
        double weighted = 0;
        int days = (int) settings.of(ProtectionAssumption.APHID_HORIZON);
        for (int d = 0; d < days; d++) {
            boolean fungiWork = !fungicide || d >= settings.of(ProtectionAssumption.FUNGUS_OFF);
            weighted += aphids * future.aphidWeight(from.plusDays(d), settings);
            aphids = Math.min(
                    settings.of(ProtectionAssumption.APHID_CAP), aphids * Math.exp(growth - (fungiWork ? fungi : 0)));
        }
        double watered = dry ? 1 : settings.of(ProtectionAssumption.APHID_WATERED);
        double loss_kgHa =
                weighted / 10_000 * watered * settings.of(ProtectionAssumption.APHID_LOSS) * DRY_KGHA_PER_BUAC;
        return Math.min(loss_kgHa, settings.of(ProtectionAssumption.LOSS_CAP) * future.yield_kgHa());
    }
}
