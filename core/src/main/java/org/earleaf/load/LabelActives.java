// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.earleaf.label.ActiveIngredient;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelLimit;
import org.earleaf.load.GroundJobs.Job;
import org.earleaf.load.LabelFinding.Verdict;
import org.earleaf.mix.LabelWork;
import org.earleaf.units.Figure;
import org.earleaf.units.Units;

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
                String said = "it went or is meant to go on this ground on " + job.date()
                        + ", and what works in it is not entered.";
                add(Verdict.NOT_ENTERED, product, "active ingredients", "", "", "", said);
            }
        });
    }

    private void active(String name) {
        TreeSet<String> products = new TreeSet<>();
        jobs.all().forEach(job -> products.addAll(job.products().keySet()));
        List<LabelFinding> singles = new ArrayList<>();
        List<LabelFinding> seasons = new ArrayList<>();
        for (String product : products) {
            Optional<LabelEntry> entry = book.find(product, work.crop());
            entry.flatMap(e -> find(e, name)).ifPresent(a -> {
                stated(
                        a.single_kgHa(),
                        most -> singles.add(within(a, "in one pass", kgHa(jobs.asked(), name), most, "")));
                stated(
                        a.season_kgHa(),
                        most -> seasons.add(within(
                                a,
                                "in a season",
                                jobs.inSeason(entry.get().clock(), work.cropBegins(), job -> kgHa(job, name)),
                                most,
                                jobs.counted(job -> kgHa(job, name) != 0))));
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

    private LabelFinding within(ActiveIngredient active, String when, double kgHa, double most, String counted) {
        String words = "most active ingredient " + when;
        if (Double.isNaN(kgHa)) {
            String said = words + ": the amount of a pass is not known; labels allow " + lbAc(most) + "." + counted;
            return finding(Verdict.NOT_KNOWN, active.name(), words, "not known", lbAc(most), "", said);
        }
        boolean within = kgHa <= most + LabelCheck.slack(most);
        String by = within ? "" : lbAc(kgHa - most);
        String said = words + ": " + lbAc(kgHa) + ", the label allows " + lbAc(most)
                + (within ? "" : ", " + by + " too much") + "." + counted;
        return finding(
                within ? Verdict.WITHIN : Verdict.OUTSIDE, active.name(), words, lbAc(kgHa), lbAc(most), by, said);
    }

    private static String lbAc(double kgHa) {
        return Figure.text(Units.lbAc(kgHa), 4) + " lb/ac";
    }

    private LabelFinding finding(
            Verdict verdict, String what, String limit, String planned, String allowed, String by, String said) {
        return LabelFinding.of(verdict, what, work.place(), limit, planned, allowed, by, said);
    }

    private void add(
            Verdict verdict, String what, String limit, String planned, String allowed, String by, String said) {
        findings.add(finding(verdict, what, limit, planned, allowed, by, said));
    }
}
