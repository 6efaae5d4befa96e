// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.earleaf.farm.Farm;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Irrigation;
import org.earleaf.field.Manure;
import org.earleaf.field.Pass;
import org.earleaf.field.Reading;
import org.earleaf.field.Zone;
import org.earleaf.season.parameter.FieldParameters;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.units.Flag;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;
import org.earleaf.weather.Forcing;
import org.earleaf.weather.WeatherSeries;

/**
 * A zone's season as facts: how it starts, what was done to it, and with which parameters it is computed.
 *
 * @param events in order of date
 */
public record ZoneSeason(SeasonSetup setup, ParameterSet parameters, List<Event> events, List<Flag> flags) {
    private static final String UNKNOWN_IS = "UAN 32";
    private static final double MOST_KGHA = 300;

    /** A count of none: a plant on 10 m2, so that the run has a crop to speak of (own construct). */
    private static final double FEWEST_M2 = .1;
    /** Passes of water that say what is usual (own construct). */
    private static final int LAST_PASSES = 4;
    /** From one pass to the next where there was only one (common practice, no source). */
    private static final int A_WEEK_D = 7;

    private static final int BAND_LASTS_D = 60;

    public ZoneSeason {
        events = List.copyOf(events);
        flags = List.copyOf(flags);
    }

    /** The season of a zone with all that was done on it up to and including a day, and the water that is to come. */
    public static ZoneSeason of(Farm farm, Zone zone, WeatherSeries observed, LocalDate on) {
        List<Flag> flags = new ArrayList<>();
        LocalDate first = StartOfSeason.first(farm, zone);
        Predicate<LocalDate> isPast = day -> !day.isBefore(first) && !day.isAfter(on);
        List<Event> events = new ArrayList<>(passes(farm, zone, isPast, flags));
        events.addAll(water(farm, zone, first, on));
        events.addAll(counts(farm, zone, isPast));
        for (Manure m : farm.work().manure()) {
            if (m.isOn(zone) && isPast.test(m.date())) {
                NitrogenPass ammonium = new NitrogenPass(m.ammoniumN_kgHa(), 0, 1, 0, m.placement(), Inhibitor.NONE);
                events.add(new Event.Manured(m.date(), m.organicN_kgHa(), ammonium));
            }
        }
        events.sort(Comparator.comparing(Event::date));
        ParameterSet set = FieldParameters.of(zone, farm.past(zone));
        return new ZoneSeason(StartOfSeason.of(farm, zone, observed, first, flags), set, events, flags);
    }

    private static List<Event> passes(Farm farm, Zone zone, Predicate<LocalDate> isPast, List<Flag> flags) {
        List<Event> made = new ArrayList<>();
        for (Pass p : farm.passes()) {
            boolean counts = p.isOn(zone) && p.state() == Pass.State.MADE && p.nitrogen_kgHa() > 0;
            if (counts && isPast.test(p.date())) {
                made.add(new Event.Nitrogen(p.date(), nitrogen(farm, p, flags)));
            }
        }
        return made;
    }

    /** A count of plants replaces the population from its day. */
    private static List<Event> counts(Farm farm, Zone zone, Predicate<LocalDate> isPast) {
        List<Event> counts = new ArrayList<>();
        for (Reading r : farm.readings()) {
            boolean counted = r.kind() == Reading.Kind.STAND && r.isOn(zone);
            if (counted && isPast.test(r.date()) && !r.date().isBefore(zone.planted())) {
                counts.add(new Event.Counted(r.date(), Math.max(FEWEST_M2, r.value())));
            }
        }
        return counts;
    }

    /**
     * Water as entered, past and planned. Where any was given by today it goes on after the last entered as it usually
     * was: the mean depth of the last passes at their mean distance in days (own construct).
     */
    private static List<Event> water(Farm farm, Zone zone, LocalDate first, LocalDate on) {
        List<Irrigation> all = farm.work().irrigation().stream()
                .filter(w -> w.isOn(zone) && !w.date().isBefore(first) && w.depth_mm() > 0)
                .sorted(Comparator.comparing(Irrigation::date))
                .toList();
        List<Event> events = new ArrayList<>();
        all.forEach(w -> events.add(new Event.Water(w.date(), w.depth_mm())));
        if (!all.isEmpty() && !all.get(0).date().isAfter(on)) {
            List<Irrigation> recent = all.subList(Math.max(0, all.size() - LAST_PASSES), all.size());
            LocalDate last = recent.get(recent.size() - 1).date();
            double depth =
                    recent.stream().mapToDouble(Irrigation::depth_mm).average().orElseThrow();
            long days = ChronoUnit.DAYS.between(recent.get(0).date(), last);
            int every = days == 0 ? A_WEEK_D : (int) Math.max(1, Math.round((double) days / (recent.size() - 1)));
            events.add(new Event.Usual(last, on.plusDays(1), depth, every));
        }
        return events;
    }

    private static Said passOf(Pass p) {
        return Said.of("flag.pass", "field", p.field(), "day", p.date());
    }

    private static NitrogenPass nitrogen(Farm farm, Pass p, List<Flag> flags) {
        NitrogenProduct product = farm.findNitrogen(p.product()).orElseGet(() -> {
            flags.add(
                    new Flag(passOf(p), Said.of("flag.product-unknown", "product", p.product(), "taken", UNKNOWN_IS)));
            return NitrogenProduct.findBuiltIn(UNKNOWN_IS).orElseThrow();
        });
        double rate = Math.min(MOST_KGHA, p.nitrogen_kgHa());
        if (rate < p.nitrogen_kgHa()) {
            flags.add(new Flag(passOf(p), Said.of("flag.rate-above", "most", Measure.NITROGEN_RATE.of(MOST_KGHA))));
        }
        return pass(product, rate, p.placement(), p.inhibitor());
    }

    /** A pass of a product as the season sees it. */
    public static NitrogenPass pass(
            NitrogenProduct product, double nitrogen_kgHa, org.earleaf.field.Placement placement, Inhibitor inhibitor) {
        return new NitrogenPass(
                nitrogen_kgHa,
                product.ureaShare(),
                product.ammoniumShare(),
                product.nitrateShare(),
                placement,
                inhibitor);
    }

    /** Whether nitrogen laid in a band lies in the soil on a day, so that where a sample is taken decides what it shows. */
    public boolean isBanded(LocalDate date) {
        return events.stream()
                .filter(e -> !e.date().isAfter(date) && e.date().isAfter(date.minusDays(BAND_LASTS_D)))
                .anyMatch(e ->
                        e instanceof Event.Nitrogen n && n.pass().placement().isBand());
    }

    /** The same season with something more done. */
    public ZoneSeason with(Event event) {
        List<Event> more = new ArrayList<>(events);
        more.add(event);
        more.sort(Comparator.comparing(Event::date));
        return new ZoneSeason(setup, parameters, more, flags);
    }

    /** One member, at its first day. */
    public SeasonRun start(Forcing weather) {
        return SeasonRun.start(setup, parameters, weather);
    }

    /** Steps a run until {@code next} is its next day, carrying out the events of each day. */
    public void advance(SeasonRun run, LocalDate next) {
        while (run.date().isBefore(next)) {
            stepDay(run);
        }
    }

    /** The same, writing member {@code m} into a trace. */
    public void advance(SeasonRun run, LocalDate next, SeasonTrace trace, int m) {
        while (run.date().isBefore(next)) {
            stepDay(run);
            Tracing.record(run, m, trace);
        }
    }

    /** The same, writing the means of all members into a trace. */
    public void advance(SeasonRun run, LocalDate next, SeasonTrace trace) {
        while (run.date().isBefore(next)) {
            stepDay(run);
            Tracing.recordMean(run, trace);
        }
    }

    /** Steps a run to its end: until every member is over, at the latest through {@code last}. */
    public void finish(SeasonRun run, LocalDate last) {
        while (!run.date().isAfter(last) && !run.allOver()) {
            stepDay(run);
        }
    }

    private void stepDay(SeasonRun run) {
        LocalDate date = run.date();
        for (Event e : events) {
            if (e.isOn(date)) {
                e.applyTo(run);
            }
        }
        run.step();
    }

    /** An empty trace for a run of this season. */
    public SeasonTrace newTrace(int days) {
        return new SeasonTrace(setup.first(), days, setup.rowShare());
    }
}
