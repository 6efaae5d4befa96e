// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.outlook.ReadingError;
import org.earleaf.season.Observing;
import org.earleaf.season.SeasonRun;
import org.earleaf.soil.SoilProfile;

/**
 * What a nitrate test of the top foot would be worth this morning.
 *
 * @param worth_usdHa mean gain of the choice with its answer in hand over the choice without
 * @param leaveAbove_ppm reading above which the field is best left alone; empty when no reading says so
 */
public record SoilTestWorth(double worth_usdHa, Optional<Integer> leaveAbove_ppm) {
    /** @param enough_ppm from which on a test shows enough whatever the model thinks */
    static SoilTestWorth of(SeasonRun morning, double[][] gains_usdHa, double enough_ppm) {
        LocalDate date = morning.date();
        Reading foot = new Reading(
                "",
                new FieldPart("", ""),
                date,
                Reading.Kind.NITRATE,
                0,
                "",
                new Reading.Sampled(0, SoilProfile.FOOT_MM, Reading.Position.RANDOM),
                "",
                Scouted.NOTHING);
        double[] seen = new double[morning.members()];
        Arrays.setAll(seen, m -> Observing.of(morning, m, foot));
        ReadingValue value = ReadingValue.ofTest(gains_usdHa, seen, ReadingError.NITRATE);
        return new SoilTestWorth(value.worth(), value.leaveAbove().map(ppm -> (int) Math.min(ppm, enough_ppm)));
    }
}
