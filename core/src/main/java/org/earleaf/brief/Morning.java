// SPDX-License-Identifier: Apache-2.0
package org.earleaf.brief;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.earleaf.decide.CropReadingWorth;
import org.earleaf.decide.LowNitrate;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.decide.Option;
import org.earleaf.decide.ProtectionAnswer;
import org.earleaf.farm.Farm;
import org.earleaf.farm.WeatherAge;
import org.earleaf.field.NotProposed;
import org.earleaf.field.Purpose;
import org.earleaf.field.Reading;
import org.earleaf.field.Zone;
import org.earleaf.label.Cautions;
import org.earleaf.outlook.OutOfReach;
import org.earleaf.outlook.Outlook;
import org.earleaf.outlook.StandDue;
import org.earleaf.protection.ProtectionAdvice;
import org.earleaf.spray.SprayTable;
import org.earleaf.spray.SprayTimes;
import org.earleaf.spray.SprayWindow;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Said;
import org.earleaf.units.SideBySide;
import org.earleaf.week.Week;

/**
 * One farm, one morning: every zone's outlook and options over its futures, what the rigs make of them in the week's
 * plan, and what is left out and why. How zones are worked on, in turn or side by side, is handed in and changes no answer.
 */
public final class Morning {
    /** A height reading is asked for when a rig's last day is this near. */
    private static final int NEAR_D = 8;
    /** Below 50 cents an acre a test is not worth the drive (common practice, no source). */
    private static final double LEAST_WORTH_USDHA = .5 / org.earleaf.units.Units.HA_PER_AC;

    private Morning() {}

    /**
     * Every zone of corn with its outlook and options.
     *
     * @param hindsight whether later weather is used, as far as it goes
     * @param how zones, and blocks of runs within them, are worked on
     */
    public static List<NitrogenOptions.Answer> answers(Farm farm, LocalDate on, boolean hindsight, SideBySide how) {
        List<Zone> corn = farm.zones().stream().filter(Zone::isCorn).toList();
        return how.each(corn, zone -> NitrogenOptions.of(farm, zone, on, hindsight, how));
    }

    /** The brief of {@code on}, from the answers of that day and what the rigs make of them. */
    public static Brief brief(Farm farm, LocalDate on, List<NitrogenOptions.Answer> answers, Week week) {
        List<Brief.LeftOut> leftOut = new ArrayList<>();
        List<Brief.ReadingWorthTaking> readings = new ArrayList<>();
        for (NitrogenOptions.Answer a : answers) {
            soilTest(a).ifPresent(readings::add);
            crop(a).ifPresent(readings::add);
            stand(farm, a.outlook()).ifPresent(readings::add);
            if (a.proposed().isEmpty()) {
                leftOut.add(leftOut(a));
            }
            protection(a, leftOut, readings);
        }
        farm.zones().stream().filter(zone -> !zone.isCorn()).forEach(zone -> leftOut.add(otherCrop(zone)));
        readings.sort(Comparator.comparingDouble(r -> Double.isNaN(r.worth_usdHa()) ? 0 : -r.worth_usdHa()));
        WeeksPasses passes = new WeeksPasses(week);
        leftOut.addAll(passes.leftOut());
        List<Outlook> outlooks =
                answers.stream().map(NitrogenOptions.Answer::outlook).toList();
        List<Option> ways = passes.proposed().stream().map(Brief.Proposed::way).toList();
        SprayTable spray = SprayTimes.of(farm, on, ways, outlooks);
        return new Brief(
                farm.name(),
                on,
                outlooks,
                passes.proposed(),
                leftOut,
                readings,
                spray,
                cautions(farm, on, answers, ways, spray, week),
                answers.stream().mapToLong(NitrogenOptions.Answer::simulated).sum());
    }

    private static void protection(
            NitrogenOptions.Answer a, List<Brief.LeftOut> leftOut, List<Brief.ReadingWorthTaking> readings) {
        Zone z = a.outlook().zone();
        ProtectionAnswer protection = a.protection();
        protection.leftOut().stream()
                .filter(ProtectionAnswer.LeftOut::soon)
                .forEach(l -> leftOut.add(new Brief.LeftOut(z.field(), z.zone(), l.kind(), l.answer(), l.reason())));
        protection.readings().stream()
                .filter(r -> Double.isNaN(r.worth_usdHa()) || r.worth_usdHa() >= LEAST_WORTH_USDHA)
                .forEach(r -> readings.add(
                        new Brief.ReadingWorthTaking(z.field(), z.zone(), r.kind(), r.because(), r.worth_usdHa())));
    }

    /** Alarms first, then what stands on every brief. */
    private static List<Said> cautions(
            Farm farm,
            LocalDate on,
            List<NitrogenOptions.Answer> answers,
            List<Option> passes,
            SprayTable spray,
            Week week) {
        List<Said> all = new ArrayList<>();
        WeatherAge.of(farm.weather(), on).map(WeatherAge::said).ifPresent(all::add);
        List<Outlook> outlooks =
                answers.stream().map(NitrogenOptions.Answer::outlook).toList();
        all.addAll(Pressing.of(on, outlooks, passes));
        week.notes().stream().filter(Brief::isAlarm).forEach(all::add);
        answers.forEach(a -> LowNitrate.find(farm, a.outlook()).ifPresent(low -> all.add(low.said())));
        answers.forEach(a -> replant(a.outlook()).ifPresent(all::add));
        all.add(Cautions.LABEL);
        if (passes.stream().anyMatch(o -> !o.isNitrogen())) {
            all.add(ProtectionAdvice.CAUTION);
        }
        if (!spray.jobs().isEmpty()) {
            all.add(SprayWindow.CAUTION);
        }
        return all;
    }

    private static Optional<Said> replant(Outlook outlook) {
        return outlook.ahead()
                .replant()
                .map(r -> Said.of("alarm.thin-stand", "zone", outlook.zone().label(), "replant", r.said()));
    }

    private static Brief.LeftOut otherCrop(Zone zone) {
        Said reason = Said.of("left-out.not-modeled", "crop", zone.crop());
        return new Brief.LeftOut(zone.field(), zone.zone(), Purpose.NITROGEN, NotProposed.NOT_JUDGED, reason);
    }

    private static Brief.LeftOut leftOut(NitrogenOptions.Answer a) {
        Zone zone = a.outlook().zone();
        List<Said> tests = a.tested().said();
        // What a test says goes before what the model thinks of it, and where it says enough the model is not asked.
        Optional<Why> model =
                a.tested().enough().isPresent() ? Optional.empty() : Optional.of(reason(a.outlook(), best(a)));
        Said reason = Stream.concat(tests.stream(), model.map(Why::said).stream())
                .reduce((test, more) -> Said.of("left-out.tested", "test", test, "reason", more))
                .orElseThrow();
        NotProposed answer = model.map(Why::answer).orElse(NotProposed.NOTHING_TO_DO);
        return new Brief.LeftOut(zone.field(), zone.zone(), Purpose.NITROGEN, answer, reason);
    }

    private static Optional<Option> best(NitrogenOptions.Answer a) {
        return a.options().stream().findFirst();
    }

    private record Why(NotProposed answer, Said said) {
        static Why nothing(Said said) {
            return new Why(NotProposed.NOTHING_TO_DO, said);
        }
    }

    private static Why reason(Outlook outlook, Optional<Option> best) {
        if (outlook.maturity().map(d -> !d.isAfter(outlook.on())).orElse(false)) {
            return Why.nothing(Said.of("left-out.black-layer"));
        }
        if (best.isPresent()) {
            Option o = best.get();
            if (o.worth().mean_usdHa() > 0) {
                return Why.nothing(Said.of("left-out.waiting-is-worth-more"));
            }
            Measured chance = Measure.CHANCE.of(o.worth().chanceItPays());
            Said loses = noRigFits(outlook)
                    ? Said.of("left-out.hire-loses", "rig", o.rig(), "chance", chance)
                    : Said.of("left-out.loses", "chance", chance);
            return outlook.nShort().probability() == 0
                    ? Why.nothing(Said.of("left-out.and-never-short", "reason", loses))
                    : new Why(NotProposed.DOES_NOT_PAY, loses);
        }
        if (outlook.on().isBefore(outlook.zone().planted().minusDays(NitrogenOptions.DAYS_AHEAD - 1))) {
            return Why.nothing(
                    Said.of("left-out.too-soon", "planted", outlook.zone().planted()));
        }
        return noRigFits(outlook)
                ? new Why(NotProposed.CANNOT_BE_DONE, Said.of("left-out.no-rig-clears"))
                : Why.nothing(Said.of("left-out.too-late"));
    }

    private static boolean noRigFits(Outlook outlook) {
        return outlook.reach().stream().allMatch(r -> r.lastDay().isEmpty());
    }

    /** A soil nitrate test that would be worth its price. */
    private static Optional<Brief.ReadingWorthTaking> soilTest(NitrogenOptions.Answer a) {
        return a.soilTest().filter(t -> t.worth_usdHa() >= LEAST_WORTH_USDHA).map(t -> {
            Said turn = t.leaveAbove_ppm()
                    .map(ppm -> Said.of("reading.leave-above", "nitrate", Measure.CONCENTRATION.of(ppm)))
                    .orElseGet(() -> Said.of("reading.how-much"));
            Zone z = a.outlook().zone();
            return new Brief.ReadingWorthTaking(z.field(), z.zone(), Reading.Kind.NITRATE, turn, t.worth_usdHa());
        });
    }

    /**
     * A height is worth the drive when it pays, and when the last day of the rig that is to go is near and rests on the
     * model alone; a stage instead where it tells more.
     */
    private static Optional<Brief.ReadingWorthTaking> crop(NitrogenOptions.Answer a) {
        CropReadingWorth worth = a.cropReading();
        boolean stage = worth.stage_usdHa() > worth.height_usdHa();
        double more_usdHa = Math.max(worth.stage_usdHa(), worth.height_usdHa());
        Optional<Said> because = worth.inDoubt().map(rig -> Said.of("reading.whether-rig-clears", "rig", rig));
        if (more_usdHa < LEAST_WORTH_USDHA || because.isEmpty()) {
            Optional<Said> last = a.proposed().flatMap(go -> lastDay(a.outlook(), go));
            because = more_usdHa < LEAST_WORTH_USDHA ? last : last.or(() -> Optional.of(Said.of("reading.which-day")));
        }
        Zone z = a.outlook().zone();
        Reading.Kind kind = stage ? Reading.Kind.STAGE : Reading.Kind.HEIGHT;
        // What is worth less than the drive is asked for another reason, and its worth is not told.
        double told_usdHa = more_usdHa < LEAST_WORTH_USDHA ? Double.NaN : more_usdHa;
        return because.map(b -> new Brief.ReadingWorthTaking(z.field(), z.zone(), kind, b, told_usdHa));
    }

    /** Plants are counted after water stood on them. */
    private static Optional<Brief.ReadingWorthTaking> stand(Farm farm, Outlook outlook) {
        Zone z = outlook.zone();
        return StandDue.find(farm, outlook)
                .map(due ->
                        new Brief.ReadingWorthTaking(z.field(), z.zone(), Reading.Kind.STAND, due.said(), Double.NaN));
    }

    private static Optional<Said> lastDay(Outlook outlook, Option go) {
        return outlook.reach().stream()
                .filter(r -> r.rig().equals(go.rig()) && r.date().isPresent())
                .findFirst()
                .flatMap(OutOfReach::lastDay)
                .filter(d -> !d.isAfter(go.date().plusDays(NEAR_D)))
                .map(d -> Said.of("reading.whether-last-day", "day", d, "rig", go.rig()));
    }
}
