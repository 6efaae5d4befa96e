// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.earleaf.units.Units.PA_PER_PSI;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.earleaf.farm.ClearanceFit;
import org.earleaf.farm.Rig;
import org.earleaf.farm.WorkingSpeed;
import org.earleaf.field.Placement;
import org.earleaf.label.DropletClass;
import org.earleaf.rig.Setup.Bind;
import org.earleaf.rig.SetupReason.NotSetHere.Because;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Measure;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * Finds the outlets that let a rig put on a liquid: all that hold the rate at the speed to set for, the best first, or
 * the reasons why none does. Drop hoses and coulters get plates with holes by the general orifice equation, nozzles on
 * a boom the sizes of the standard. The best is the one whose cruise point lies furthest from both ends of its speed
 * range; among equals the one nearest to the middle of the pressures.
 */
public final class RigSetup {
    /** Pressures at which dribbled streams run even (common practice, no source): 10 to 40 psi. */
    private static final double STREAM_LOW_PA = 10 * PA_PER_PSI;

    private static final double STREAM_HIGH_PA = 40 * PA_PER_PSI;

    /** Plates in steps of a tenth of a millimetre (own construct; any plate's hole can be set). */
    private static final double PLATE_STEP_M = 1e-4;

    private static final int SMALLEST_PLATE = 6;
    private static final int LARGEST_PLATE = 80;

    /** Reasons are told for the outlets nearest to serving. */
    private static final int REASONS = 4;

    /** Heavier liquids are taken to be as thick as nitrogen solution. */
    private static final double HEAVY_KGM3 = 1100;

    private static final double WHOLE_ROWS = 0.02;

    private final PassNeed need;
    private final Rig rig;
    private final double speed_ms;
    private final WorkingSpeed speeds;
    private final double low_Pa;
    private final double high_Pa;
    private final Optional<Droplets> droplets;

    /** Setups, best first; when there is none, why. */
    public record Answer(List<Setup> setups, List<SetupReason> reasons) {
        public Answer {
            setups = List.copyOf(setups);
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * Droplets wanted, and the nozzles to choose among.
     *
     * @param finest finest class that serves
     * @param coarsest coarsest class that serves
     */
    public record Droplets(DropletClass finest, DropletClass coarsest, List<NozzleModel> nozzles) {
        public Droplets {
            nozzles = List.copyOf(nozzles);
            if (finest.compareTo(coarsest) > 0) {
                throw new EarleafException(Problem.of(
                        "droplets.turned",
                        Said.of("where.droplets"),
                        Said.of("setup.range", "first", finest.name(), "last", coarsest.name())));
            }
        }
    }

    private RigSetup(PassNeed need, Optional<Droplets> droplets) {
        this.need = need;
        this.droplets = droplets;
        this.rig = need.rig();
        this.speeds = WorkingSpeed.of(need.placement(), need.height_m()).within(rig);
        this.speed_ms = Double.isNaN(need.speed_ms()) ? speeds.cruise_ms() : need.speed_ms();
        double streamLow_Pa = Math.max(STREAM_LOW_PA, rig.boom().lowest_Pa());
        double streamHigh_Pa = Math.min(STREAM_HIGH_PA, rig.boom().highest_Pa());
        // A rig whose pressures do not meet the usual ones of streams keeps its own.
        boolean stream = need.isByRow() && streamLow_Pa < streamHigh_Pa;
        this.low_Pa = stream ? streamLow_Pa : rig.boom().lowest_Pa();
        this.high_Pa = stream ? streamHigh_Pa : rig.boom().highest_Pa();
    }

    public static Answer find(PassNeed need) {
        return new RigSetup(need, Optional.empty()).find();
    }

    /** Only nozzles, pressures and speeds at which the droplets are as wanted; streams of drop hoses have none. */
    public static Answer find(PassNeed need, Droplets droplets) {
        return new RigSetup(need, Optional.of(droplets)).find();
    }

    private Answer find() {
        List<SetupReason> stops = stops();
        if (!stops.isEmpty()) {
            return new Answer(List.of(), stops);
        }
        List<Setup> setups = new ArrayList<>();
        List<Miss> misses = new ArrayList<>();
        for (Outlet outlet : candidates()) {
            FlowSetting setting = setting(outlet);
            double needs_Pa = setting.pressure_Pa();
            Optional<Window> window = window(outlet);
            if (needs_Pa < low_Pa || needs_Pa > high_Pa) {
                misses.add(new Miss(
                        needs_Pa, new SetupReason.PressureOut(outlet.said(), speed_ms, needs_Pa, low_Pa, high_Pa)));
            } else if (window.filter(w -> needs_Pa >= w.low_Pa && needs_Pa <= w.high_Pa)
                    .isPresent()) {
                setups.add(setup(outlet, setting, window.get()));
            } else {
                misses.add(new Miss(needs_Pa, dropletsOut(outlet, needs_Pa)));
            }
        }
        setups.sort(Comparator.comparingDouble((Setup s) -> -rounded(s.speeds().room()))
                .thenComparingDouble(s -> fromMiddle(s.setting().pressure_Pa()))
                .thenComparingDouble(s -> s.outlet().rated_m3s()));
        if (!setups.isEmpty()) {
            return new Answer(setups, List.of());
        }
        return new Answer(
                List.of(),
                misses.stream()
                        .sorted(Comparator.comparingDouble(miss -> fromMiddle(miss.needs_Pa)))
                        .limit(REASONS)
                        .map(Miss::reason)
                        .toList());
    }

    /** An outlet that does not serve. */
    private record Miss(double needs_Pa, SetupReason reason) {}

    /** Pressures at which an outlet serves, and what ends them. */
    private record Window(double low_Pa, double high_Pa, Bind lowBinds, Bind highBinds) {}

    private Optional<Window> window(Outlet outlet) {
        Window all = new Window(low_Pa, high_Pa, Bind.LOWEST_PRESSURE, Bind.HIGHEST_PRESSURE);
        if (!(outlet instanceof Outlet.Classed nozzle)) {
            return Optional.of(all);
        }
        Droplets wanted = droplets.orElseThrow();
        return nozzle.model()
                .within(wanted.finest(), wanted.coarsest())
                .map(p -> new Window(
                        Math.max(low_Pa, p.low_Pa()),
                        Math.min(high_Pa, p.high_Pa()),
                        p.low_Pa() > low_Pa ? Bind.DROPLETS_BELOW : all.lowBinds,
                        p.high_Pa() < high_Pa ? Bind.DROPLETS_ABOVE : all.highBinds));
    }

    private SetupReason dropletsOut(Outlet outlet, double needs_Pa) {
        Droplets wanted = droplets.orElseThrow();
        Optional<DropletClass> is = ((Outlet.Classed) outlet).model().at(needs_Pa);
        return new SetupReason.DropletsOut(outlet.said(), speed_ms, needs_Pa, is, wanted.finest(), wanted.coarsest());
    }

    /** What forbids the pass before any outlet is looked at. */
    private List<SetupReason> stops() {
        switch (need.placement()) {
            case AMMONIA -> {
                return notHere(Because.AMMONIA);
            }
            case BY_AIR -> {
                return notHere(Because.BY_AIR);
            }
            case UNDER_CANOPY, BOTH -> {
                return notHere(Because.SPLIT);
            }
            default -> {}
        }
        if (need.isByRow() && droplets.isPresent()) {
            return notHere(Because.STREAMS);
        }
        if (rig.isTender()) {
            return notHere(Because.TENDER);
        }
        List<SetupReason> stops = new ArrayList<>();
        if (!rig.placements().contains(need.placement())) {
            stops.add(new SetupReason.NoSuchPlacement(rig.name(), need.placement()));
        }
        if (!Double.isNaN(need.height_m())) {
            ClearanceFit.tooTall(rig, need.placement(), need.height_m())
                    .ifPresent(said -> stops.add(new SetupReason.TooTall(said)));
        }
        if (speeds.isEmpty() || speed_ms < speeds.low_ms() * (1 - 1e-9) || speed_ms > speeds.high_ms() * (1 + 1e-9)) {
            stops.add(new SetupReason.SpeedOut(
                    rig.name(), speed_ms, speeds.low_ms(), speeds.high_ms(), need.placement()));
        }
        if (need.rate_m3m2() < FlowPart.RATE.low() || need.rate_m3m2() > FlowPart.RATE.high()) {
            stops.add(new SetupReason.RateOut(need.rate_m3m2()));
        }
        return stops;
    }

    private List<SetupReason> notHere(Because because) {
        return List.of(new SetupReason.NotSetHere(rig.name(), because));
    }

    private List<? extends Outlet> candidates() {
        if (need.isByRow()) {
            return IntStream.rangeClosed(SMALLEST_PLATE, LARGEST_PLATE)
                    .mapToObj(step -> new Outlet.Plate(step * PLATE_STEP_M, OrificeMath.SHARP_PLATE_CD))
                    .toList();
        }
        if (droplets.isPresent()) {
            return droplets.get().nozzles().stream().map(Outlet.Classed::new).toList();
        }
        return NozzleSize.listAll().stream().map(Outlet.Nozzle::new).toList();
    }

    private FlowSetting setting(Outlet outlet) {
        double flow_m3s = FlowMath.flow_m3s(need.rate_m3m2(), speed_ms, need.width_m());
        double factor = need.liquid().densityFactor();
        return new FlowSetting(
                need.rate_m3m2(),
                speed_ms,
                need.width_m(),
                flow_m3s,
                FlowMath.pressure_Pa(flow_m3s, outlet.rated_m3s(), factor),
                outlet.rated_m3s(),
                factor,
                List.of());
    }

    private Setup setup(Outlet outlet, FlowSetting setting, Window window) {
        double byLow_ms = speed_ms * Math.sqrt(window.low_Pa / setting.pressure_Pa());
        double byHigh_ms = speed_ms * Math.sqrt(window.high_Pa / setting.pressure_Pa());
        double slowest_ms = Math.max(byLow_ms, speeds.low_ms());
        double fastest_ms = Math.min(byHigh_ms, speeds.high_ms());
        double total_m3s = FlowMath.flow_m3s(need.rate_m3m2(), speed_ms, rig.width_m());
        return new Setup(
                outlet,
                need.isByRow() ? need.outletsPerRow() : 0,
                (int) Math.round(rig.width_m() / need.width_m()),
                setting,
                new Setup.Speeds(
                        slowest_ms,
                        fastest_ms,
                        byLow_ms > speeds.low_ms() ? window.lowBinds : Bind.SLOWEST_SPEED,
                        byHigh_ms < speeds.high_ms() ? window.highBinds : Bind.FASTEST_SPEED,
                        Math.min(Math.log(speed_ms / slowest_ms), Math.log(fastest_ms / speed_ms))),
                total_m3s,
                PumpNeed.pump_m3s(total_m3s, rig.tank_m3(), PumpNeed.SOLUTIONS_PER_MIN),
                remarks(outlet));
    }

    private List<Said> remarks(Outlet outlet) {
        List<Said> remarks = new ArrayList<>();
        double rows = rig.width_m() / need.row_m();
        if (need.isByRow() && Math.abs(rows - Math.round(rows)) > WHOLE_ROWS) {
            remarks.add(Said.of("setup.guess-rows", "rows", Math.round(100 * rows) / 100.0));
        }
        boolean middle = need.placement() == Placement.MID_DRIBBLE || need.placement() == Placement.MID_INJECT;
        if (middle) {
            remarks.add(Said.of("setup.end-outlets"));
        }
        if (outlet instanceof Outlet.Plate plate) {
            remarks.add(Said.of("setup.plate-assumed", "cd", plate.cd()));
            if (reynolds(plate) < OrificeMath.LEAST_REYNOLDS) {
                remarks.add(Said.of("setup.slow-stream"));
            }
        } else {
            remarks.add(Said.of("setup.nozzles-assumed", "apart", Measure.SPAN.of(need.nozzle_m())));
        }
        return remarks;
    }

    private double reynolds(Outlet.Plate plate) {
        double flow_m3s = FlowMath.flow_m3s(need.rate_m3m2(), speed_ms, need.width_m());
        double density_kgM3 = need.liquid().density_kgM3();
        double viscosity_PaS = density_kgM3 > HEAVY_KGM3 ? HoseLoss.UAN_PAS : HoseLoss.WATER_PAS;
        return OrificeMath.reynolds(flow_m3s, plate.diameter_m(), density_kgM3, viscosity_PaS);
    }

    private double fromMiddle(double pressure_Pa) {
        return Math.abs(Math.log(pressure_Pa) - Math.log(low_Pa * high_Pa) / 2);
    }

    // Ends set by the same speed limit must tie in spite of the last bits.
    private static double rounded(double room) {
        return Math.round(room * 1e6) / 1e6;
    }
}
