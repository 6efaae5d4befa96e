// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** 480 ac at 15 gal/ac from a 1200 gal tank, 80 ac a load in 78.571429 min, 15 min a fill; worked by hand. */
class TenderDayTest {
    private static final double SPRAY_S = 60 * 80 / (8 * 90 / 8.25 * .7) * 60;
    private static final double GAL = org.earleaf.units.Units.M3_PER_GAL;

    private static TenderDay.Day day(double holds_gal, double trip_min, int rigs, int tenders) {
        List<List<TenderDay.Load>> loads = new ArrayList<>();
        for (int r = 0; r < rigs; r++) {
            List<TenderDay.Load> mine = new ArrayList<>();
            for (int k = 0; k < 6 / rigs; k++) {
                mine.add(new TenderDay.Load(r, 0, 1200 * GAL, 0, 15 * 60, SPRAY_S));
            }
            loads.add(mine);
        }
        List<Tender> all = new ArrayList<>();
        for (int t = 0; t < tenders; t++) {
            all.add(new Tender("tender " + t, holds_gal * GAL, trip_min * 60, 20 * 60));
        }
        return TenderDay.of(all, loads, java.util.Collections.nCopies(rigs, 1.0));
    }

    private static void holds(TenderDay.Day day, double end_min, double wait_min, int trips) {
        assertThat(day.end_s() / 60).isCloseTo(end_min, within(1e-6));
        assertThat(day.waited_s() / 60).isCloseTo(wait_min, within(1e-6));
        assertThat(day.trips()).containsExactly(trips);
    }

    @Test
    void a_tender_far_off_makes_the_rig_wait_twice() {
        holds(day(2500, 70, 1, 1), 584.285714, 22.857143, 2);
    }

    @Test
    void a_tender_near_by_is_always_back_in_time() {
        holds(day(2500, 40, 1, 1), 561.428571, 0, 2);
    }

    @Test
    void a_larger_tender_makes_one_trip() {
        holds(day(3600, 70, 1, 1), 572.857143, 11.428571, 1);
    }

    @Test
    void two_rigs_at_one_tender_wait_for_each_other_and_a_second_tender_takes_that_away() {
        TenderDay.Day one = day(2500, 40, 2, 1);
        TenderDay.Day two = day(2500, 40, 2, 2);
        assertThat(one.of(1).get(0).wait_s()).isEqualTo(15 * 60);
        assertThat(two.of(1).get(0).wait_s()).isZero();
        assertThat(two.end_s()).isLessThan(one.end_s());
    }

    @Test
    void brings_its_load_once_more_for_each_time_it_can_be_back() {
        Tender tender = new Tender("nurse", 10, 70 * 60, 20 * 60);
        assertThat(tender.most_m3(60 * 60)).isEqualTo(10);
        assertThat(tender.most_m3(90 * 60)).isEqualTo(20);
        assertThat(tender.most_m3(400 * 60)).isEqualTo(50);
    }
}
