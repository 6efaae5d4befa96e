// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.brief.Brief;
import org.earleaf.brief.Briefs;
import org.earleaf.decide.TestFarm;
import org.earleaf.farm.Setting;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** Directions that weighing a second planting must keep. */
class ReplantTest {
    private static final LocalDate LATE_MAY = LocalDate.of(2024, 5, 24);

    private static Optional<Replant> replant(TestFarm farm, LocalDate on) {
        return Replant.find(ZoneEnsemble.of(farm.farm(), farm.zone(), on, false));
    }

    private static TestFarm counted(double plants_ac, LocalDate on) {
        return new TestFarm().stand(on.minusDays(1), plants_ac / Units.M2_PER_AC);
    }

    @Test
    void a_ruined_stand_in_may_pays_for_a_second_planting() {
        Replant r = replant(counted(5_000, LATE_MAY), LATE_MAY).orElseThrow();
        assertThat(r.pays()).isTrue();
        assertThat(r.said().code()).isEqualTo("replant.pays");
        assertThat(r.again()).isAfter(LATE_MAY);
        assertThat(r.again_kgHa()).isGreaterThan(r.keep_kgHa());
        assertThat(r.gain_usdHa().p10()).isLessThan(r.gain_usdHa().p50());
        assertThat(r.gain_usdHa().p90()).isGreaterThan(r.gain_usdHa().p50());
    }

    @Test
    void a_somewhat_thin_stand_is_kept() {
        Replant r = replant(counted(20_000, LATE_MAY), LATE_MAY).orElseThrow();
        assertThat(r.pays()).isFalse();
        assertThat(r.said().code()).isEqualTo("replant.loses");
    }

    @Test
    void later_thicker_or_dearer_it_brings_less() {
        double ruined = gain(counted(8_000, LATE_MAY), LATE_MAY);
        LocalDate june = LocalDate.of(2024, 6, 8);
        assertThat(gain(counted(8_000, june), june)).isLessThan(ruined);
        assertThat(gain(counted(14_000, LATE_MAY), LATE_MAY)).isLessThan(ruined);
        double dearer = gain(counted(8_000, LATE_MAY).setting(Setting.REPLANT_COST, 400), LATE_MAY);
        double usual = Setting.REPLANT_COST.usual();
        assertThat(dearer).isCloseTo(ruined - (400 - usual), within(1e-6));
    }

    private static double gain(TestFarm farm, LocalDate on) {
        return replant(farm, on).orElseThrow().gain_usdHa().p50();
    }

    @Test
    void the_morning_tells_it() {
        TestFarm farm = counted(5_000, LATE_MAY);
        Brief brief = Briefs.of(farm.farm(), LATE_MAY);
        assertThat(brief.cautions()).anySatisfy(c -> assertThat(c.code()).isEqualTo("alarm.thin-stand"));
        assertThat(brief.outlooks().get(0).ahead().replant()).isPresent();
    }

    @Test
    void nothing_is_said_of_a_full_stand_or_when_it_is_too_late() {
        assertThat(replant(new TestFarm(), LATE_MAY)).isEmpty();
        assertThat(replant(counted(31_500, LATE_MAY), LATE_MAY)).isEmpty();
        LocalDate july = LocalDate.of(2024, 7, 1);
        assertThat(replant(counted(8_000, july), july)).isEmpty();
    }
}
