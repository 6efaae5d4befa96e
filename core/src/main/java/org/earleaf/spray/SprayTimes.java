// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.earleaf.decide.Option;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Product;
import org.earleaf.farm.ProductKind;
import org.earleaf.farm.Rig;
import org.earleaf.field.Pass;
import org.earleaf.field.Placement;
import org.earleaf.field.Purpose;
import org.earleaf.label.SprayLabel;
import org.earleaf.outlook.Outlook;
import org.earleaf.units.Said;
import org.earleaf.weather.WeatherHour;

/** Judges the hours of the next two days for every pass proposed or planned in them, and by weather alone. */
public final class SprayTimes {
    private static final int LOOK_H = 48;
    /** Hours before and after that tell of ground, dew and rain to come. */
    private static final int AROUND_H = 72;

    private final Farm farm;
    private final LocalDate on;
    private final List<Outlook> outlooks;
    private final List<WeatherHour> hours;

    private SprayTimes(Farm farm, LocalDate on, List<Outlook> outlooks) {
        this.farm = farm;
        this.on = on;
        this.outlooks = outlooks;
        hours = around(farm.weather().hours(), on.atStartOfDay());
    }

    public static SprayTable of(Farm farm, LocalDate on, List<Option> passes, List<Outlook> outlooks) {
        return new SprayTimes(farm, on, outlooks).table(passes);
    }

    /** In order and each once: when clocks go back an hour comes twice, and the first of the two is taken. */
    public static List<WeatherHour> around(List<WeatherHour> all, LocalDateTime from) {
        List<WeatherHour> known = new ArrayList<>();
        all.stream()
                .filter(h -> !h.at().isBefore(from.minusHours(AROUND_H)))
                .filter(h -> h.at().isBefore(from.plusHours(LOOK_H + AROUND_H)))
                .sorted(Comparator.comparing(WeatherHour::at))
                .forEach(h -> {
                    if (known.isEmpty() || known.get(known.size() - 1).at().isBefore(h.at())) {
                        known.add(h);
                    }
                });
        return known;
    }

    private boolean isAsked(WeatherHour h) {
        LocalDateTime from = on.atStartOfDay();
        return !h.at().isBefore(from) && h.at().isBefore(from.plusHours(LOOK_H));
    }

    private SprayTable table(List<Option> passes) {
        Optional<WeatherHour> last = hours.stream().filter(this::isAsked).reduce((a, b) -> b);
        if (farm.weather().hours().isEmpty()) {
            return new SprayTable(Optional.of(Said.of("spray.no-hours")), List.of());
        }
        if (last.isEmpty()) {
            WeatherHour end = farm.weather().hours().stream()
                    .max(Comparator.comparing(WeatherHour::at))
                    .orElseThrow();
            return new SprayTable(Optional.of(Said.of("spray.no-hours-now", "end", end.at())), List.of());
        }
        List<SprayTable.Job> jobs = new ArrayList<>();
        jobs.add(anySpraying());
        for (Option o : passes) {
            if (!o.date().isAfter(on.plusDays(1)) && o.placement() != Placement.BY_AIR) {
                outlook(o.field(), o.zone()).ifPresent(k -> jobs.add(proposed(o, k)));
            }
        }
        planned(passes, jobs);
        LocalDateTime ends = last.get().at().plusHours(1);
        boolean early = ends.isBefore(on.atStartOfDay().plusHours(LOOK_H));
        return new SprayTable(early ? Optional.of(Said.of("spray.hours-end", "end", ends)) : Optional.empty(), jobs);
    }

    private Optional<Outlook> outlook(String field, String zone) {
        return outlooks.stream()
                .filter(o -> o.zone().field().equals(field)
                        && (zone.isEmpty() || o.zone().zone().equals(zone)))
                .findFirst();
    }

    /** Weather alone, a boom above the tallest corn of the farm; no label and no ground is looked at. */
    private SprayTable.Job anySpraying() {
        double tallest_m =
                outlooks.stream().mapToDouble(o -> o.height_cm().p50()).max().orElse(0) / 100;
        SprayJob job = new SprayJob(
                SprayJob.Kind.FOLIAR,
                SprayWork.boom_m(Placement.OVER_THE_TOP, tallest_m),
                true,
                false,
                SprayLabel.NONE,
                Ground.of(Ground.Kind.MEDIUM));
        return job(new What("", "", Said.of("spray.any"), "", "", ""), job, 1);
    }

    private SprayTable.Job proposed(Option o, Outlook k) {
        List<Product> products = o.spray().stream()
                .flatMap(s -> s.mix().parts().stream())
                .map(p -> p.product())
                .toList();
        Optional<Rig> rig =
                farm.rigs().stream().filter(r -> r.name().equals(o.rig())).findFirst();
        double litres = o.spray().map(s -> s.mix().carrier_LHa()).orElse(o.liquid() ? o.productRate() : Double.NaN);
        SprayWork work = new SprayWork(farm, k, o.placement(), products, o.isNitrogen());
        Said kind = Said.of("job.kind", "kind", o.kind());
        return job(
                new What(o.field(), o.zone(), kind, o.product(), o.placement().word(), o.rig()),
                work.job(first()),
                rig.map(r -> SprayWork.load_h(r, o.placement(), k, litres)).orElse(1.0));
    }

    private void planned(List<Option> passes, List<SprayTable.Job> jobs) {
        for (Pass p : farm.passes()) {
            boolean due = p.state() == Pass.State.PLANNED
                    && !p.date().isBefore(on)
                    && !p.date().isAfter(on.plusDays(1))
                    && p.placement() != Placement.BY_AIR;
            boolean known = passes.stream()
                    .anyMatch(o -> o.field().equals(p.field()) && o.product().contains(p.product()));
            if (due && !known) {
                outlook(p.field(), p.zone()).ifPresent(k -> jobs.add(planned(p, k)));
            }
        }
    }

    private SprayTable.Job planned(Pass p, Outlook k) {
        List<Product> products = farm.findProduct(p.product()).stream().toList();
        SprayWork work = new SprayWork(farm, k, p.placement(), products, p.nitrogen_kgHa() > 0);
        Enum<?> kind = p.nitrogen_kgHa() > 0
                ? Purpose.NITROGEN
                : products.stream().map(Product::kind).findFirst().orElse(ProductKind.OTHER);
        Said said = Said.of("spray.planned", "kind", kind);
        return job(
                new What(p.field(), p.zone(), said, p.product(), p.placement().word(), ""), work.job(first()), 1);
    }

    private LocalDateTime first() {
        return hours.get(0).at();
    }

    /** The pass, as the table names it. */
    private record What(String field, String zone, Said kind, String product, String placement, String rig) {}

    private SprayTable.Job job(What what, SprayJob job, double least_h) {
        List<SprayHour> judged = SprayHours.of(hours, job, farm.site(), farm.timeZone(), on.atStartOfDay()).stream()
                .filter(h -> isAsked(h.hour()))
                .toList();
        List<SprayWindow> windows = SprayHours.windows(judged, least_h);
        return new SprayTable.Job(
                what.field, what.zone, what.kind, what.product, what.placement, what.rig, judged, windows);
    }
}
