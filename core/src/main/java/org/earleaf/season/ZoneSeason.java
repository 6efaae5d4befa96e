// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.farm.Farm;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.field.Drainage;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Irrigation;
import org.earleaf.field.Manure;
import org.earleaf.field.Pass;
import org.earleaf.field.Zone;
import org.earleaf.season.parameter.Parameter;
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

    /** Roots stop here where the water table is shallow [mm] (Ordonez et al. 2018, Field Crops Res. 215:122). */
    private static final double ROOTS_OVER_WATER_MM = 900;

    public ZoneSeason {
        events = List.copyOf(events);
        flags = List.copyOf(flags);
    }

    /** The season of a zone with all passes made up to and including a day. */
    public static ZoneSeason of(Farm farm, Zone zone, WeatherSeries observed, LocalDate on) {
        List<Flag> flags = new ArrayList<>();
        List<Event> events = new ArrayList<>();
        LocalDate first = StartOfSeason.first(farm, zone);
        for (Pass p : farm.passes()) {
            boolean counts = p.isOn(zone) && p.state() == Pass.State.MADE && p.nitrogen_kgHa() > 0;
            if (counts && !p.date().isBefore(first) && !p.date().isAfter(on)) {
                events.add(new Event.Nitrogen(p.date(), nitrogen(farm, p, flags)));
            }
        }
        for (Irrigation w : farm.work().irrigation()) {
            if (w.isOn(zone) && !w.date().isBefore(first) && !w.date().isAfter(on)) {
                events.add(new Event.Water(w.date(), w.depth_mm()));
            }
        }
        for (Manure m : farm.work().manure()) {
            if (m.isOn(zone) && !m.date().isBefore(first) && !m.date().isAfter(on)) {
                NitrogenPass ammonium = new NitrogenPass(m.ammoniumN_kgHa(), 0, 1, 0, m.placement(), Inhibitor.NONE);
                events.add(new Event.Manured(m.date(), m.organicN_kgHa(), ammonium));
            }
        }
        events.sort(java.util.Comparator.comparing(Event::date));
        ParameterSet set = ParameterSet.usual();
        if (zone.land().drainage() == Drainage.POOR) {
            set = set.with(Parameter.ROOT_DEPTH_MAX, ROOTS_OVER_WATER_MM);
        }
        return new ZoneSeason(StartOfSeason.of(farm, zone, observed, first, flags), set, events, flags);
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

    /** The same season with something more done. */
    public ZoneSeason with(Event event) {
        List<Event> more = new ArrayList<>(events);
        more.add(event);
        more.sort(java.util.Comparator.comparing(Event::date));
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
            if (e.date().equals(date)) {
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
