// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.earleaf.brief.Morning;
import org.earleaf.farm.Farm;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneName;
import org.earleaf.units.RecordCopy;
import org.earleaf.units.SideBySide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Draws hang on no name: before, each field had draws of its own, and equal fields got other rates and days. */
class EqualFieldsTest {
    /** With nothing on, after three crops. */
    private static Stream<Farm> farms() {
        Farm bare = RecordCopy.with(new TestFarm().farm(), "work.passes", List.of());
        return Stream.of(PreviousCrop.CORN, PreviousCrop.SOYBEAN, PreviousCrop.WHEAT)
                .map(before -> RecordCopy.with(
                        bare,
                        "ground.zones",
                        List.of(RecordCopy.with(bare.zones().get(0), "seedbed.previousCrop", before))));
    }

    @ParameterizedTest
    @MethodSource("farms")
    void fields_that_are_alike_get_the_same_advice_whatever_they_are_called_and_wherever_they_stand_in_the_list(
            Farm one) {
        Zone home = one.zones().get(0);
        List<Zone> alike = Stream.of(
                        "Home", "Zebra Forty", "a", "Éire", "9", "North of the Tracks and West", "home 2", "Z")
                .map(name -> RecordCopy.with(home, "called", ZoneName.of(name, "")))
                .toList();
        Farm farm = RecordCopy.with(one, "ground.zones", alike);
        List<NitrogenOptions.Answer> answers = Morning.answers(farm, TestFarm.ON, false, SideBySide.IN_TURN);
        NitrogenOptions.Answer first = answers.get(0);
        assertThat(first.options()).isNotEmpty();
        for (NitrogenOptions.Answer other : answers) {
            assertThat(other.options().stream().map(EqualFieldsTest::what).toList())
                    .isEqualTo(
                            first.options().stream().map(EqualFieldsTest::what).toList());
            assertThat(other.proposed().map(EqualFieldsTest::what))
                    .isEqualTo(first.proposed().map(EqualFieldsTest::what));
        }
    }

    private static String what(Option o) {
        return o.date() + " " + o.application() + " " + o.worth() + " " + o.waitCost_usdHaDay();
    }
}
