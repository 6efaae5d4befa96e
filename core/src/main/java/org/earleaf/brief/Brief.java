// SPDX-License-Identifier: Apache-2.0
package org.earleaf.brief;

import java.time.LocalDate;
import java.util.List;
import org.earleaf.decide.Option;
import org.earleaf.field.Purpose;
import org.earleaf.field.Reading;
import org.earleaf.outlook.Outlook;
import org.earleaf.soil.SoilProfile;
import org.earleaf.spray.SprayTable;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/**
 * The morning brief of a farm.
 *
 * @param outlooks one per zone of corn
 * @param passes proposed, best first
 * @param leftOut what is not proposed, and why
 * @param readings readings that would be worth the drive
 * @param spray spray hours of the next two days
 * @param seasonsSimulated how many season runs stand behind it
 */
public record Brief(
        String farm,
        LocalDate on,
        List<Outlook> outlooks,
        List<Option> passes,
        List<LeftOut> leftOut,
        List<ReadingWorthTaking> readings,
        SprayTable spray,
        List<Said> cautions,
        long seasonsSimulated) {
    public Brief {
        outlooks = List.copyOf(outlooks);
        passes = List.copyOf(passes);
        leftOut = List.copyOf(leftOut);
        readings = List.copyOf(readings);
        cautions = List.copyOf(cautions);
    }

    /** Something that is not proposed today, with the reason. */
    public record LeftOut(String field, String zone, Purpose kind, Said reason) {}

    /**
     * A reading that could change what is done.
     *
     * @param worth_usdHa what its answer is worth on average [$/ha]; NaN: not computed
     */
    public record ReadingWorthTaking(String field, String zone, Reading.Kind kind, Said because, double worth_usdHa) {
        /** What to take, for people: of nitrate with its depth. */
        public Said take() {
            return kind == Reading.Kind.NITRATE
                    ? Said.of(
                            "reading.nitrate-to",
                            "top",
                            Measure.DEPTH.of(0),
                            "bottom",
                            Measure.DEPTH.of(SoilProfile.FOOT_MM))
                    : Said.of("reading.kind", "kind", kind);
        }
    }
}
