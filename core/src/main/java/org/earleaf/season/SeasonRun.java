// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.earleaf.season.SeasonState.Ledger;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.earleaf.weather.Forcing;

/**
 * A season of one zone under way, for one member or many: the same code. Call {@link #step} once a day; between steps
 * {@link #apply} puts things on, {@link #branch} copies members into a new run that goes on from here. Same inputs, same
 * outputs to the last bit; members never touch one another. Not thread-safe: one run, one thread.
 *
 * <p>Order of a day, fixed: events (before the step); stage, nutrition index, leaf area, height; soil temperature;
 * roots; rain on leaves, runoff, columns; washing in, infiltration, drainage, leaching; sideways exchange; surface
 * nitrogen, residue, soil nitrogen; evaporation, transpiration; growth; uptake.
 */
public final class SeasonRun {
    private final SeasonSite site;
    private final SeasonState s;
    private final List<Forcing> weather;
    private final Forcing[] weatherByMember;
    private final Today today;
    private final Phenology phenology;
    private final SoilTemperature temperature;
    private final Roots roots;
    private final Rainfall rainfall;
    private final SoilWaterFlow flow;
    private final SurfaceNitrogen surface;
    private final Residue residue;
    private final SoilNitrogen soil;
    private final Evapotranspiration evapotranspiration;
    private final Growth growth;
    private final CropNitrogen crop;
    private final Applying applying;
    private final Balance balance;
    private int day;

    private SeasonRun(SeasonSite site, List<Forcing> weather, int[] weatherOf, int day) {
        this.site = site;
        this.s = new SeasonState(site.members);
        this.weather = List.copyOf(weather);
        this.weatherByMember = Arrays.stream(weatherOf).mapToObj(weather::get).toArray(Forcing[]::new);
        this.day = day;
        today = new Today(site.members);
        phenology = new Phenology(site, s, today);
        temperature = new SoilTemperature(site, s, today);
        roots = new Roots(site, s, today);
        rainfall = new Rainfall(site, s, today);
        flow = new SoilWaterFlow(site, s, today);
        surface = new SurfaceNitrogen(site, s, today);
        residue = new Residue(site, s, today);
        soil = new SoilNitrogen(site, s, today);
        evapotranspiration = new Evapotranspiration(site, s, today);
        growth = new Growth(site, s, today);
        crop = new CropNitrogen(site, s, today);
        applying = new Applying(site, s);
        balance = new Balance(site, s);
        for (Forcing f : this.weather) {
            if (!f.first().equals(site.setup.first())) {
                throw new EarleafException(Problem.of(
                        "season.weather-starts-elsewhere",
                        Said.of("where.weather-of-run"),
                        Said.of("found.first-day", "day", f.first()),
                        "first",
                        site.setup.first()));
            }
        }
    }

    /** One member. */
    public static SeasonRun start(SeasonSetup setup, ParameterSet parameters, Forcing weather) {
        return start(setup, List.of(parameters), List.of(weather), new int[] {0});
    }

    /**
     * Many members, each with its parameters and its weather.
     *
     * @param weatherOf index into {@code weather} by member
     */
    public static SeasonRun start(
            SeasonSetup setup, List<ParameterSet> parameters, List<Forcing> weather, int[] weatherOf) {
        SeasonRun run = new SeasonRun(new SeasonSite(setup, parameters), weather, weatherOf, 0);
        for (int m = 0; m < run.members(); m++) {
            run.balance.start(m);
        }
        return run;
    }

    public int members() {
        return s.members;
    }

    /** Days done. */
    public int day() {
        return day;
    }

    /** The next day to be stepped. */
    public LocalDate date() {
        return site.setup.first().plusDays(day);
    }

    public SeasonSetup setup() {
        return site.setup;
    }

    public void apply(int member, NitrogenPass pass) {
        applying.nitrogen(member, pass);
    }

    public void applyAll(NitrogenPass pass) {
        for (int m = 0; m < s.members; m++) {
            applying.nitrogen(m, pass);
        }
    }

    /** Water from above on the coming day [mm]. */
    public void irrigate(double depth_mm) {
        for (int m = 0; m < s.members; m++) {
            s.irrigation[m] += depth_mm;
        }
    }

    /** The same as usual after the last entered; none on ripe corn. */
    void irrigateAsUsual(Event.Usual usual) {
        for (int m = 0; m < s.members; m++) {
            if (!isOver(m) && usual.isDue(weatherByMember[m], day)) {
                s.irrigation[m] += usual.depth_mm();
            }
        }
    }

    /** So many plants stand from here on. */
    public void stand(double plants_m2) {
        for (int m = 0; m < s.members; m++) {
            applying.stand(m, plants_m2);
        }
    }

    public void manure(double organic_kgHa, NitrogenPass ammonium) {
        for (int m = 0; m < s.members; m++) {
            applying.manure(m, organic_kgHa, ammonium);
        }
    }

    public void tillage(double coverAfter) {
        for (int m = 0; m < s.members; m++) {
            applying.tillage(m, coverAfter);
        }
    }

    /** Steps until {@code date} is the next day to be stepped. */
    public void stepTo(LocalDate date) {
        while (date().isBefore(date)) {
            step();
        }
    }

    /** One day. */
    public void step() {
        readWeather();
        standingWater();
        phenology.step(day);
        temperature.step();
        roots.step();
        rainfall.step();
        flow.enter();
        surface.wash();
        flow.step();
        roots.countWetDays();
        surface.transform();
        residue.step();
        soil.step();
        evapotranspiration.step();
        if (today.anyUp) {
            growth.step(day);
            crop.step(day);
        }
        Arrays.fill(s.irrigation, 0);
        day++;
    }

    private void readWeather() {
        for (int m = 0; m < weatherByMember.length; m++) {
            today.read(m, weatherByMember[m], day);
        }
    }

    /** A standing water table keeps the layers wholly below it full. */
    private void standingWater() {
        double table = site.setup.ground().waterTable_mm();
        if (Double.isNaN(table)) {
            return;
        }
        double[] booked = s.ledger[Ledger.TABLE_WATER.ordinal()];
        for (int k = 0; k < SeasonState.CELLS; k++) {
            if (org.earleaf.soil.SoilProfile.top_mm(k / 2) >= table) {
                int at = k * s.members;
                for (int m = 0; m < s.members; m++) {
                    booked[m] += site.share[k & 1] * (site.sat[at + m] - s.water[at + m]);
                    s.water[at + m] = site.sat[at + m];
                }
            }
        }
    }

    /**
     * A new run that goes on from here with copies of members.
     *
     * @param from member here, by member there
     * @param weather weather there, starting with the season as everywhere
     * @param weatherOf index into it by member there
     */
    public SeasonRun branch(int[] from, List<Forcing> weather, int[] weatherOf) {
        return branch(new SeasonSite(site, from), from, weather, weatherOf);
    }

    /** The same, with other parameters by member there; what was stored stays as it was. */
    public SeasonRun branch(int[] from, List<ParameterSet> sets, List<Forcing> weather, int[] weatherOf) {
        return branch(new SeasonSite(site.setup, sets), from, weather, weatherOf);
    }

    private SeasonRun branch(SeasonSite there, int[] from, List<Forcing> weather, int[] weatherOf) {
        SeasonRun run = new SeasonRun(there, weather, weatherOf, day);
        run.s.copy(s, from);
        return run;
    }

    /** Parameters of a member. */
    public ParameterSet parameters(int member) {
        return site.sets.get(member);
    }

    /** The same run with as many copies of member 0 as there are futures, one future each. */
    public SeasonRun branch(List<Forcing> futures) {
        int[] weatherOf = new int[futures.size()];
        for (int m = 0; m < weatherOf.length; m++) {
            weatherOf[m] = m;
        }
        return branch(new int[futures.size()], futures, weatherOf);
    }

    /** All that must be kept to go on later, bit for bit; give it back to {@link #restore}. */
    public double[] snapshot() {
        return s.snapshot(day);
    }

    public void restore(double[] snapshot) {
        day = s.restore(snapshot);
    }

    // ---- what can be read off a member

    /** What a trace holds of the day stepped last. */
    public double now(int m, SeasonTrace.Daily what) {
        return Tracing.of(this, m, what);
    }

    /** The same of a cell, per area of its column. */
    public double now(int m, SeasonTrace.Cell what, int column, int layer) {
        return Tracing.of(this, m, what, column, layer);
    }

    public double collars(int m) {
        return s.collars[m];
    }

    public double gdd(int m) {
        return s.gdd[m];
    }

    public double rep(int m) {
        return s.rep[m];
    }

    public double height_cm(int m) {
        return s.height[m];
    }

    public double shoot_kgHa(int m) {
        return s.shoot[m];
    }

    public double shootN_kgHa(int m) {
        return s.shootN[m];
    }

    public double nni(int m) {
        return CropNitrogen.nni(s.shoot[m], s.shootN[m], site.lane(Parameter.CRITICAL)[m]);
    }

    /** Whether nothing more can grow: black layer reached or killed by frost. */
    public boolean isOver(int m) {
        return s.rep[m] >= 1 || s.killed[m] > 0;
    }

    public boolean allOver() {
        for (int m = 0; m < s.members; m++) {
            if (!isOver(m)) {
                return false;
            }
        }
        return true;
    }

    public Yield yield(int m) {
        return growth.yield(m);
    }

    /** Mean growth of a plant around silking [g/d]. */
    public double plantGrowth_g(int m) {
        return growth.plantGrowth_g(m);
    }

    /** Day of the run (0 the first) on which growth was first held back by nitrogen, -1: not yet. */
    public int shortDay(int m) {
        return (int) s.shortDay[m];
    }

    public int emergenceDay(int m) {
        return (int) s.emergenceDay[m];
    }

    public int silkDay(int m) {
        return (int) s.silkDay[m];
    }

    public int blackLayerDay(int m) {
        return (int) s.blackLayerDay[m];
    }

    SeasonSite site() {
        return site;
    }

    SeasonState state() {
        return s;
    }

    Today today() {
        return today;
    }

    double ledger(Ledger line, int m) {
        return switch (line) {
            case MINERALISED -> balance.field(s.mineralised, m);
            case TAKEN_BACK -> balance.field(s.takenBack, m);
            case DENITRIFIED -> balance.field(s.denitrified, m);
            default -> s.ledger[line.ordinal()][m];
        };
    }

    /** Water in the soil [mm of field]. */
    public double water_mm(int m) {
        return balance.water_mm(m);
    }

    /** All nitrogen of soil, surface, residue and crop [kg/ha of field]. */
    public double nitrogen_kgHa(int m) {
        return balance.nitrogen_kgHa(m);
    }

    /** Water that cannot be explained since the start [mm]; rounding only. */
    public double waterRemainder_mm(int m) {
        return balance.waterRemainder_mm(m);
    }

    /** Nitrogen that cannot be explained since the start [kg/ha]; rounding only. */
    public double nitrogenRemainder_kgHa(int m) {
        return balance.nitrogenRemainder_kgHa(m);
    }

    Balance balance() {
        return balance;
    }

    /** Days from the start of the run to a date. */
    public int dayOf(LocalDate date) {
        return (int) ChronoUnit.DAYS.between(site.setup.first(), date);
    }

    /** Unmodifiable view of the weather of the run. */
    public List<Forcing> weather() {
        return Collections.unmodifiableList(weather);
    }
}
