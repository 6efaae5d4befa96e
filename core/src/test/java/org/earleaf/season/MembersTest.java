// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.field.Placement;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.units.EarleafException;
import org.earleaf.weather.Forcing;
import org.junit.jupiter.api.Test;

/** Members, copies and snapshots: the same to the last bit, whoever runs beside them. Definitions; they need no source. */
class MembersTest {
    private static final int MEMBERS = 64;
    private static final int WEATHERS = 5;

    /** A random season of many members with weather of several futures, by seed alone. */
    private record Crowd(RandomSeason season, List<ParameterSet> sets, List<Forcing> weather, int[] weatherOf) {
        static Crowd of(long seed) {
            RandomSeason season = new RandomSeason(seed);
            List<ParameterSet> sets = season.parameters(MEMBERS);
            List<Forcing> weather = new ArrayList<>();
            for (int k = 0; k < WEATHERS; k++) {
                weather.add(season.weather());
            }
            int[] weatherOf = new int[MEMBERS];
            for (int m = 0; m < MEMBERS; m++) {
                weatherOf[m] = season.random().nextInt(WEATHERS);
            }
            return new Crowd(season, sets, weather, weatherOf);
        }

        SeasonRun start() {
            return SeasonRun.start(season.setup, sets, weather, weatherOf);
        }

        SeasonRun alone(int m) {
            return SeasonRun.start(season.setup, sets.get(m), weather.get(weatherOf[m]));
        }
    }

    /** Everything member {@code m} carries. */
    private static double[] carried(SeasonRun run, int m) {
        return run.state().carried().stream()
                .flatMapToDouble(lane -> java.util.stream.IntStream.range(0, lane.length / run.members())
                        .mapToDouble(block -> lane[block * run.members() + m]))
                .toArray();
    }

    @Test
    void the_same_inputs_give_the_same_bits() {
        for (long seed = 0; seed < 8; seed++) {
            SeasonRun once = Crowd.of(seed).start();
            SeasonRun again = Crowd.of(seed).start();
            Crowd.of(seed).season().toEnd(once);
            Crowd.of(seed).season().toEnd(again);
            assertThat(once.snapshot()).isEqualTo(again.snapshot());
        }
    }

    @Test
    void a_member_alone_is_the_member_among_64() {
        for (long seed = 20; seed < 28; seed++) {
            Crowd crowd = Crowd.of(seed);
            SeasonRun all = crowd.start();
            crowd.season().toEnd(all);
            for (int m : new int[] {0, 1, 17, 40, 63}) {
                SeasonRun alone = crowd.alone(m);
                crowd.season().toEnd(alone);
                assertThat(carried(alone, 0)).as("seed %d, member %d", seed, m).isEqualTo(carried(all, m));
            }
        }
    }

    @Test
    void a_pass_on_one_member_leaves_the_others_alone() {
        Crowd crowd = Crowd.of(40);
        SeasonRun plain = crowd.start();
        SeasonRun fed = crowd.start();
        for (int m = 0; m < MEMBERS; m += 2) {
            fed.apply(m, SyntheticSeason.uan(100, Placement.ROW_BASE));
        }
        crowd.season().toEnd(plain);
        crowd.season().toEnd(fed);
        for (int m = 0; m < MEMBERS; m++) {
            if (m % 2 == 0) {
                assertThat(carried(fed, m)).isNotEqualTo(carried(plain, m));
            } else {
                assertThat(carried(fed, m)).isEqualTo(carried(plain, m));
            }
        }
    }

    @Test
    void a_hundred_days_a_snapshot_and_53_more_are_153_days() {
        for (long seed = 60; seed < 76; seed++) {
            Crowd crowd = Crowd.of(seed);
            int days = crowd.season().days;
            int cut = Math.min(100, days - 53);
            SeasonRun through = crowd.start();
            crowd.season().toEnd(through);
            SeasonRun first = crowd.start();
            while (first.day() < cut) {
                crowd.season().step(first);
            }
            // Taken after the events of the day, which the snapshot must hold too.
            crowd.season().applyEvents(first);
            double[] kept = first.snapshot();
            SeasonRun second = crowd.start();
            second.restore(kept);
            assertThat(second.day()).isEqualTo(cut);
            second.step();
            crowd.season().toEnd(second);
            assertThat(second.snapshot()).as("seed %d", seed).isEqualTo(through.snapshot());
        }
    }

    @Test
    void a_branch_goes_on_as_its_members_would_have() {
        for (long seed = 80; seed < 90; seed++) {
            Crowd crowd = Crowd.of(seed);
            SeasonRun trunk = crowd.start();
            for (int d = 0; d < 70; d++) {
                crowd.season().step(trunk);
            }
            crowd.season().applyEvents(trunk);
            int[] from = {5, 5, 63, 0};
            int[] weatherOf = new int[from.length];
            for (int k = 0; k < from.length; k++) {
                weatherOf[k] = crowd.weatherOf()[from[k]];
            }
            SeasonRun branch = trunk.branch(from, crowd.weather(), weatherOf);
            double[] before = trunk.snapshot();
            branch.step();
            crowd.season().toEnd(branch);
            assertThat(trunk.snapshot()).as("the trunk is left alone").isEqualTo(before);
            trunk.step();
            crowd.season().toEnd(trunk);
            for (int k = 0; k < from.length; k++) {
                assertThat(carried(branch, k))
                        .as("seed %d, member %d", seed, from[k])
                        .isEqualTo(carried(trunk, from[k]));
            }
        }
    }

    @Test
    void one_member_branches_into_as_many_as_there_are_futures() {
        RandomSeason season = new RandomSeason(99);
        Forcing past = season.weather();
        SeasonRun run = SeasonRun.start(season.setup, ParameterSet.usual(), past);
        for (int d = 0; d < 60; d++) {
            season.step(run);
        }
        SeasonRun futures = run.branch(List.of(past, season.weather(), past));
        season.toEnd(run);
        season.toEnd(futures);
        assertThat(futures.members()).isEqualTo(3);
        assertThat(carried(futures, 0)).isEqualTo(carried(run, 0)).isEqualTo(carried(futures, 2));
        assertThat(carried(futures, 1)).isNotEqualTo(carried(run, 0));
    }

    @Test
    void members_that_differ_in_a_parameter_without_spread_are_refused() {
        ParameterSet other = ParameterSet.usual().with(Parameter.WASH_IN, 3);
        assertThatThrownBy(() -> SeasonRun.start(
                        SyntheticSeason.zone().setup(),
                        List.of(ParameterSet.usual(), other),
                        List.of(SyntheticSeason.weather()),
                        new int[2]))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("WASH_IN")
                .hasMessageContaining("3.0")
                .hasMessageContaining("4.0");
    }
}
