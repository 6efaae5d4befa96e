// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Placement;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.weather.Forcing;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;
import org.junit.jupiter.api.Test;

/** No parameter stands in the list for show: each changes what a season with a bit of everything comes to. */
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

    private static boolean acts(Parameter p) {
        for (double value : new double[] {p.low(), p.high()}) {
            ParameterSet set = ParameterSet.usual().with(p, value);
            for (Kind kind : Kind.values()) {
                if (!Arrays.equals(result(set, kind), result(ParameterSet.usual(), kind))) {
                    return true;
                }
            }
        }
        return false;
    }

    @Test
    void changing_a_parameter_changes_a_season() {
        List<Parameter> idle = new ArrayList<>();
        for (Parameter p : Parameter.values()) {
            if (!acts(p)) {
                idle.add(p);
            }
        }
        assertThat(idle).isEmpty();
    }
}
