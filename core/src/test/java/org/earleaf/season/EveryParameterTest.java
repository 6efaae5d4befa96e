// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.field.Drainage;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Hybrid;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.PastYear;
import org.earleaf.field.Placement;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Tillage;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneName;
import org.earleaf.season.parameter.FieldParameters;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.weather.Forcing;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;
import org.junit.jupiter.api.Test;

/**
 * No parameter stands in the list for show: each changes what a season with a bit of everything comes to, or what the
 * numbers of a season become on a field with a past.
 */
class EveryParameterTest {
    /** A flood in June when wet, heat in July when not, a frost in May either way, so that every part has work. */
    private static Forcing weather(boolean wet) {
        List<WeatherDay> days = new ArrayList<>();
        for (int j = SyntheticSeason.FIRST; j <= SyntheticSeason.LAST; j++) {
            double tm = 11.0 - 14.0 * Math.cos(2 * Math.PI * (j - 22) / 365);
            boolean frost = j == 150;
            boolean hot = !wet && j >= 185 && j <= 215;
            double rain = wet
                    ? (j % 3 == 0 ? 25 : 0) + (j >= 165 && j <= 170 ? 90 : 0)
                    : SyntheticSeason.usualRain(j) * (j < 170 ? 1 : 0);
            days.add(WeatherDay.of(
                    SyntheticSeason.date(j), tm + 6 + (hot ? 8 : 0), frost ? -1 : tm - 6 + (hot ? 4 : 0), rain));
        }
        return Forcing.of(new WeatherSeries(days), new Site(41.5, -93, 300));
    }

    private enum Kind {
        DRY,
        /** On undrained ground, residue worked in. */
        WET,
        HUNGRY
    }

    private static double[] result(ParameterSet set, Kind kind) {
        SyntheticSeason.Builder zone = SyntheticSeason.zone().planted(131).late();
        if (kind == Kind.WET) {
            zone.soil(zone.soil, 3, 75).buried();
        } else {
            zone.residue(.2, 6000);
        }
        SeasonRun run = SeasonRun.start(zone.setup(), set, weather(kind == Kind.WET));
        NitrogenPass rescue = new NitrogenPass(250, 0, 0, 1, Placement.INCORPORATED, Inhibitor.NONE);
        NitrogenPass spread = new NitrogenPass(60, .5, .25, .25, Placement.BROADCAST, Inhibitor.NONE);
        for (int d = 0; d < run.weather().get(0).days(); d++) {
            if (kind != Kind.HUNGRY && (d == 40 || d == 60)) {
                run.applyAll(spread);
            } else if (kind != Kind.HUNGRY && d == 62) {
                run.applyAll(rescue);
            }
            run.step();
        }
        double[] all = run.snapshot();
        double[] more = Arrays.copyOf(all, all.length + 3);
        more[all.length] = run.yield(0).grain_kgHa();
        more[all.length + 1] = run.yield(0).kernelsPerPlant();
        more[all.length + 2] = run.yield(0).grainN_kgHa();
        return more;
    }

    private static boolean actsInSeason(Parameter p, double value) {
        ParameterSet set = ParameterSet.usual().with(p, value);
        return Arrays.stream(Kind.values())
                .anyMatch(kind -> !Arrays.equals(result(set, kind), result(ParameterSet.usual(), kind)));
    }

    /** Corn of 2005 after a crop, where the corn before had so much nitrogen. */
    private static ParameterSet onField(ParameterSet usual, PreviousCrop before, double nitrogen_kgHa) {
        Zone zone = new Zone(
                ZoneName.of("North Forty", ""),
                40,
                new Zone.Planting("corn", LocalDate.of(2005, 5, 1), Hybrid.ofMaturity(108), 8, .762, Double.NaN),
                new Zone.Land(SyntheticSeason.zone().soil, Drainage.TILED, Double.NaN),
                new Zone.Seedbed(before, Tillage.REDUCED, Double.NaN),
                DiseaseFacts.NOT_GIVEN);
        FieldPart part = new FieldPart("North Forty", "");
        return FieldParameters.of(
                usual, zone, List.of(new PastYear(part, 2004, PreviousCrop.CORN, Double.NaN, nitrogen_kgHa)));
    }

    /** Through another number: its own is changed before anything is read. */
    private static boolean actsOnField(Parameter p, double value) {
        ParameterSet changed = ParameterSet.usual().with(p, value);
        for (PreviousCrop before : List.of(PreviousCrop.CORN, PreviousCrop.SOYBEAN)) {
            for (double nitrogen_kgHa : new double[] {0, 250}) {
                ParameterSet set = onField(changed, before, nitrogen_kgHa);
                ParameterSet usual = onField(ParameterSet.usual(), before, nitrogen_kgHa);
                if (Arrays.stream(Parameter.values()).anyMatch(q -> q != p && set.of(q) != usual.of(q))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean actsAtEitherEnd(Parameter p, BiPredicate<Parameter, Double> acts) {
        return acts.test(p, p.low()) || acts.test(p, p.high());
    }

    @Test
    void changing_a_parameter_changes_a_season_or_what_a_field_makes_of_its_numbers() {
        List<Parameter> idle = Arrays.stream(Parameter.values())
                .filter(p -> !actsAtEitherEnd(p, EveryParameterTest::actsInSeason))
                .filter(p -> !actsAtEitherEnd(p, EveryParameterTest::actsOnField))
                .toList();
        assertThat(idle).isEmpty();
    }

    /** So that none of these hides behind the other, and the season itself still holds every number that is its own. */
    @Test
    void numbers_of_era_rotation_and_past_act_on_a_field_alone_and_all_others_in_the_season() {
        Set<Parameter> onFieldAlone = EnumSet.range(Parameter.ERA_GROWTH, Parameter.CARRY_OVER);
        for (Parameter p : Parameter.values()) {
            boolean field = onFieldAlone.contains(p);
            assertThat(actsAtEitherEnd(p, EveryParameterTest::actsInSeason))
                    .as(p.name())
                    .isEqualTo(!field);
            assertThat(actsAtEitherEnd(p, EveryParameterTest::actsOnField))
                    .as(p.name())
                    .isEqualTo(field);
        }
    }
}
