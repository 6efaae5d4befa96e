// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.earleaf.label.LabelFigure.NOTHING;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.earleaf.label.ActiveIngredient;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelLimit;
import org.earleaf.load.GroundJobs.Job;
import org.earleaf.load.LabelFinding.Compared;
import org.earleaf.load.LabelFinding.Limit;
import org.earleaf.load.LabelFinding.Verdict;
import org.earleaf.mix.LabelWork;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/**
 * Active ingredients summed over every product on the ground, each against every label that names it, whether of this
 * mix or of an earlier pass. What went on and is not known in its actives stops the load: its sum could not be told.
 */
final class LabelActives {
    private final LabelBook book;
    private final LabelWork work;
    private final GroundJobs jobs;
    private final List<LabelFinding> findings = new ArrayList<>();

    LabelActives(LabelBook book, LabelWork work, GroundJobs jobs) {
        this.book = book;
        this.work = work;
        this.jobs = jobs;
    }

    List<LabelFinding> findings() {
        TreeSet<String> asked = new TreeSet<>();
        work.parts().stream()
                .filter(LabelWork.Part::labelled)
                .flatMap(p -> book.activesOf(p.product()).stream())
                .forEach(a -> asked.add(a.name()));
        asked.forEach(this::active);
        jobs.all().stream().filter(job -> !job.isAsked()).forEach(this::unknown);
        return findings;
    }

    private void unknown(Job job) {
        job.labelled().forEach((product, labelled) -> {
            if (labelled && book.activesOf(product).isEmpty()) {
                Said said = Said.of("label.actives-not-entered", "day", job.date());
                findings.add(finding(Verdict.NOT_ENTERED, product, Limit.ACTIVES, Compared.NONE, said));
            }
        });
    }

    private void active(String name) {
        TreeSet<String> products = new TreeSet<>();
        jobs.all().forEach(job -> products.addAll(job.products().keySet()));
        List<LabelFinding> singles = new ArrayList<>();
        List<LabelFinding> seasons = new ArrayList<>();
        for (String product : products) {
            Optional<LabelEntry> entry = book.find(product, work.standing().crop());
            entry.flatMap(e -> find(e, name)).ifPresent(a -> {
                stated(
                        a.single_kgHa(),
                        most -> singles.add(within(a, Limit.ACTIVE_SINGLE, kgHa(jobs.asked(), name), most)));
                stated(
                        a.season_kgHa(),
                        most -> seasons.add(within(
                                a,
                                Limit.ACTIVE_SEASON,
                                jobs.inSeason(
                                        entry.get().clock(), work.standing().cropBegins(), job -> kgHa(job, name)),
                                most)));
            });
        }
        singles.stream().distinct().forEach(findings::add);
        seasons.stream().distinct().forEach(findings::add);
    }

    private static void stated(LabelLimit limit, java.util.function.DoubleConsumer then) {
        if (limit.state() == LabelLimit.State.STATED) {
            then.accept(limit.value());
        }
    }

    private static Optional<ActiveIngredient> find(LabelEntry entry, String name) {
        return entry.actives().stream().filter(a -> a.name().equals(name)).findFirst();
    }

    private double kgHa(Job job, String active) {
        double sum = 0;
        for (var product : job.products().entrySet()) {
            for (ActiveIngredient a : book.activesOf(product.getKey())) {
                sum += a.name().equals(active) ? a.of_kgHa(product.getValue()) : 0;
            }
        }
        return sum;
    }

    private LabelFinding within(ActiveIngredient active, Limit what, double kgHa, double most) {
        Said planned = amount(kgHa);
        Said allowed = amount(most);
        if (Double.isNaN(kgHa)) {
            Said said = Said.of("label.active-not-known", "limit", what, "allowed", allowed);
            Compared open = new Compared(planned, allowed, NOTHING);
            return finding(Verdict.NOT_KNOWN, active.name(), what, open, counted(active, what, said));
        }
        boolean within = kgHa <= most + LabelCheck.slack(most);
        Said by = within ? NOTHING : amount(kgHa - most);
        Said said = within
                ? Said.of("label.compared", "limit", what, "planned", planned, "allowed", allowed)
                : Said.of("label.too-much", "limit", what, "planned", planned, "allowed", allowed, "by", by);
        Verdict verdict = within ? Verdict.WITHIN : Verdict.OUTSIDE;
        return finding(verdict, active.name(), what, new Compared(planned, allowed, by), counted(active, what, said));
    }

    private Said counted(ActiveIngredient active, Limit what, Said said) {
        return what == Limit.ACTIVE_SEASON ? jobs.counted(said, job -> kgHa(job, active.name()) != 0) : said;
    }

    private static Said amount(double kgHa) {
        return Said.of("label.active-amount", "amount", Measure.ACTIVE_RATE.of(kgHa));
    }

    private LabelFinding finding(Verdict verdict, String product, Limit what, Compared compared, Said said) {
        return new LabelFinding(verdict, product, work.place(), what, compared, said);
    }
}
