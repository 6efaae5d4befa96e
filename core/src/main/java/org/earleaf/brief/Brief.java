// SPDX-License-Identifier: Apache-2.0
package org.earleaf.brief;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.decide.Option;
import org.earleaf.field.NotProposed;
import org.earleaf.field.Purpose;
import org.earleaf.field.Reading;
import org.earleaf.outlook.Outlook;
import org.earleaf.soil.SoilProfile;
import org.earleaf.spray.SprayTable;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;
import org.earleaf.units.Units;
import org.earleaf.week.Week;

/**
 * The morning brief of a farm.
 *
 * @param outlooks one per zone of corn
 * @param proposed what the week's plan does, by day, then by the clock; after it what comes later
 * @param leftOut what is not proposed, and why
 * @param readings readings that would be worth the drive
 * @param spray spray hours of the next two days
 * @param seasonsSimulated how many season runs stand behind it
 */
public record Brief(
        String farm,
        LocalDate on,
        List<Outlook> outlooks,
        List<Proposed> proposed,
        List<LeftOut> leftOut,
        List<ReadingWorthTaking> readings,
        SprayTable spray,
        List<Said> cautions,
        long seasonsSimulated) {
    public Brief {
        outlooks = List.copyOf(outlooks);
        proposed = List.copyOf(proposed);
        leftOut = List.copyOf(leftOut);
        readings = List.copyOf(readings);
        cautions = List.copyOf(cautions);
    }

    /**
     * A pass that is proposed.
     *
     * @param way what goes on, by which rig, on which day
     * @param turn its place in the week's plan; empty: it comes after these days
     * @param own what would be best for the field by itself, where the plan does otherwise
     */
    public record Proposed(Option way, Optional<Week.Stop> turn, Optional<Own> own) {}

    /**
     * A field's own best.
     *
     * @param costs_usdHa what the plan's way brings less [$/ha]; below 0 where it brings more
     */
    public record Own(Option best, double costs_usdHa) {
        /** In steps of this the figures bear a difference [$/ha]; below half of it two ways are worth the same. */
        private static final double STEP_USDHA = 1 / Units.HA_PER_AC;

        /** Whether the figures cannot tell the two apart. */
        boolean isWorthTheSame() {
            return Math.abs(costs_usdHa) < STEP_USDHA / 2;
        }

        /** That it would rather have had its own way, and what that would have brought. */
        public Said said() {
            Said brings = brings();
            return best.isNitrogen()
                    ? Said.of(
                            "brief.own-nitrogen",
                            "day",
                            best.date(),
                            "rate",
                            Measure.NITROGEN_RATE.of(best.nitrogen_kgHa()),
                            "rig",
                            best.rig(),
                            "brings",
                            brings)
                    : Said.of("brief.own-spray", "day", best.date(), "rig", best.rig(), "brings", brings);
        }

        private Said brings() {
            if (isWorthTheSame()) {
                return Said.of("brief.own-same");
            }
            return costs_usdHa > 0
                    ? Said.of("brief.own-less", "amount", Measure.MONEY_RATE.of(costs_usdHa))
                    : Said.of("brief.own-more", "amount", Measure.MONEY_RATE.of(-costs_usdHa));
        }
    }

    /** Of the cautions those that something is to be done about now. */
    public List<Said> alarms() {
        return cautions.stream().filter(Brief::isAlarm).toList();
    }

    /** The others, which stand on every brief like it. */
    public List<Said> usualCautions() {
        return cautions.stream().filter(c -> !isAlarm(c)).toList();
    }

    static boolean isAlarm(Said caution) {
        return caution.code().startsWith("alarm.");
    }

    /** What each rig does on the day of the brief; of what is overdue too. */
    public List<RigDay> today() {
        return RigDay.of(proposed, LocalDate.MIN, on);
    }

    /** What each rig does on the day after it. */
    public List<RigDay> tomorrow() {
        return RigDay.of(proposed, on.plusDays(1), on.plusDays(1));
    }

    /** What comes after these two days. */
    public List<Proposed> afterTomorrow() {
        return proposed.stream()
                .filter(p -> p.way().date().isAfter(on.plusDays(1)))
                .toList();
    }

    /** Each pass that is proposed. */
    public List<Option> passes() {
        return proposed.stream().map(Proposed::way).toList();
    }

    /** What the rigs do in these days, by day and clock. */
    public List<Week.Stop> turns() {
        return proposed.stream().flatMap(p -> p.turn().stream()).toList();
    }

    /**
     * Something that is not proposed, with the reason.
     *
     * @param answer what that means
     */
    public record LeftOut(String field, String zone, Purpose kind, NotProposed answer, Said reason) {}

    /** What is not proposed though it was judged. */
    public List<LeftOut> judged() {
        return leftOut.stream()
                .filter(l -> l.answer() != NotProposed.NOT_JUDGED)
                .toList();
    }

    /** What could not be judged: nothing is said of its worth. */
    public List<LeftOut> notJudged() {
        return leftOut.stream()
                .filter(l -> l.answer() == NotProposed.NOT_JUDGED)
                .toList();
    }

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
