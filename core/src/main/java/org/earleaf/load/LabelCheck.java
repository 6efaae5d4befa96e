// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.earleaf.label.LabelFigure.NOTHING;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelFigure;
import org.earleaf.label.LabelItem;
import org.earleaf.load.GroundJobs.Job;
import org.earleaf.load.LabelFinding.Compared;
import org.earleaf.load.LabelFinding.Limit;
import org.earleaf.load.LabelFinding.Verdict;
import org.earleaf.mix.LabelWork;
import org.earleaf.mix.MixWords;
import org.earleaf.units.Said;

/**
 * Holds a load against the labels of what is in it, over everything made and reserved on its ground. Plain fertiliser
 * and helpers bring no limit. Says of every limit what is planned, what is allowed and by how much it is outside; the
 * worst comes first. Stricter rules of state or place are not in it: the label and the law win.
 */
public final class LabelCheck {
    /** Nothing is rounded before it is compared; ten is not more than ten. */
    private static final double EPS = 1e-9;

    private final LabelBook book;
    private final LabelWork work;
    private final GroundJobs jobs;
    private final List<LabelFinding> findings = new ArrayList<>();

    private LabelCheck(LabelBook book, LabelWork work, List<GroundUse> ground) {
        this.book = book;
        this.work = work;
        List<GroundUse> all = new ArrayList<>(ground);
        for (LabelWork.Part p : work.parts()) {
            all.add(new GroundUse(
                    work.job(),
                    work.date(),
                    p.product(),
                    p.perHa(),
                    work.ground().area_ha(),
                    p.labelled(),
                    GroundUse.State.ASKED));
        }
        this.jobs = GroundJobs.of(all, work.ground().zone_ha());
    }

    /**
     * Every finding, the worst first.
     *
     * @param ground what is made and reserved on this ground, this load not among it
     */
    public static List<LabelFinding> of(LabelBook book, LabelWork work, List<GroundUse> ground) {
        if (work.parts().stream().noneMatch(LabelWork.Part::labelled)) {
            return List.of();
        }
        LabelCheck check = new LabelCheck(book, work, ground);
        work.parts().stream().filter(LabelWork.Part::labelled).forEach(check::product);
        check.findings.addAll(new LabelActives(book, work, check.jobs).findings());
        check.findings.sort(Comparator.comparing(LabelFinding::verdict).reversed());
        return List.copyOf(check.findings);
    }

    /** Whether none of them stops the load. */
    public static boolean allows(List<LabelFinding> findings) {
        return findings.stream().noneMatch(LabelFinding::isStop);
    }

    private void product(LabelWork.Part part) {
        Optional<LabelEntry> found = book.find(part.product(), work.standing().crop());
        if (found.isEmpty()) {
            Said said = book.findWaiting(part.product(), work.standing().crop()).isPresent()
                    ? Said.of("label.waiting")
                    : Said.of("label.none", "crop", work.standing().crop());
            add(Verdict.NOT_ENTERED, part.product(), Limit.LABEL, Compared.NONE, said);
            return;
        }
        LabelEntry entry = found.get();
        for (LabelItem item : LabelItem.values()) {
            item(entry, item, part);
        }
        MixWords.forbidden(entry, part, work, book)
                .forEach(other -> add(
                        Verdict.OUTSIDE,
                        part.product(),
                        Limit.NEVER_WITH,
                        new Compared(
                                Said.text(other),
                                Said.of("label.several", "parts", List.copyOf(entry.neverWith())),
                                NOTHING),
                        Said.of("label.never-with", "other", other)));
        GroupRuns.of(jobs, book, entry).ifPresent(run -> mindRun(part, run));
    }

    private void item(LabelEntry entry, LabelItem item, LabelWork.Part part) {
        LabelFigure figure = entry.figure(item);
        if (!figure.isEntered()) {
            if (item.isNeeded() || isAskedFor(item)) {
                Said said = Said.of("label.item-not-entered", "item", item);
                add(Verdict.NOT_ENTERED, part.product(), item, Compared.NONE, said);
            }
            return;
        }
        if (!figure.isStated()) {
            return;
        }
        OptionalDouble planned = planned(entry, item, part);
        if (planned.isPresent()) {
            compare(entry, item, figure, part, planned.getAsDouble());
        } else if (item == LabelItem.REENTRY || item.isOfAir() && !isFree(item, figure)) {
            Said allowed = Said.text(figure.entered());
            Said said = item == LabelItem.REENTRY
                    ? Said.of("label.keep-out", "allowed", allowed)
                    : Said.of("label.before-start", "item", item, "allowed", allowed);
            add(Verdict.BEFORE_START, part.product(), item, Compared.with(allowed), said);
        }
    }

    /** A label that forbids no inversions asks for nothing. */
    private static boolean isFree(LabelItem item, LabelFigure figure) {
        return item == LabelItem.INVERSION && figure.limit().or(0) == 0;
    }

    private void compare(LabelEntry entry, LabelItem item, LabelFigure figure, LabelWork.Part part, double planned) {
        double limit = figure.limit().value();
        Said allowed = Said.text(figure.entered());
        if (Double.isNaN(planned)) {
            Said said = Said.of("label.item-not-known", "item", item, "allowed", allowed);
            Compared open = new Compared(Said.of("amount.unknown"), allowed, NOTHING);
            add(Verdict.NOT_KNOWN, part.product(), item, open, said);
            return;
        }
        boolean most = item.bound() == LabelItem.Bound.MOST;
        boolean within = most ? planned <= limit + slack(limit) : planned >= limit - slack(limit);
        Said is = figure.like(planned, item, entry.dry(), entry.crop());
        Said by = within ? NOTHING : figure.apart(planned, item, entry.dry(), entry.crop());
        Said said = item.kind() == LabelItem.Kind.YES_NO && !within
                ? refused(item)
                : counted(item, part, compared(item, is, allowed, by));
        Verdict verdict = within ? Verdict.WITHIN : Verdict.OUTSIDE;
        add(verdict, part.product(), item, new Compared(is, allowed, by), said);
    }

    private static Said compared(LabelItem item, Said is, Said allowed, Said by) {
        if (LabelFinding.isNothing(by)) {
            return Said.of("label.compared", "limit", item, "planned", is, "allowed", allowed);
        }
        return item.bound() == LabelItem.Bound.MOST
                ? Said.of("label.too-much", "limit", item, "planned", is, "allowed", allowed, "by", by)
                : Said.of("label.too-little", "limit", item, "planned", is, "allowed", allowed, "by", by);
    }

    private static Said refused(LabelItem item) {
        return switch (item) {
            case NITROGEN_CARRIER -> Said.of("label.no-nitrogen-carrier");
            case BY_AIR -> Said.of("label.no-air");
            default -> Said.of("label.restricted-use");
        };
    }

    static double slack(double limit) {
        return EPS * Math.abs(limit);
    }

    /** Whether an item that not every load needs is needed by this one. */
    private boolean isAskedFor(LabelItem item) {
        return item == LabelItem.NITROGEN_CARRIER && work.carrier().nitrogen()
                || item == LabelItem.BY_AIR && work.carrier().byAir();
    }

    /** Figure to hold against a limit; empty where the limit does not apply to this load. */
    private OptionalDouble planned(LabelEntry entry, LabelItem item, LabelWork.Part part) {
        String product = part.product();
        return switch (item) {
            case SINGLE -> OptionalDouble.of(jobs.asked().of(product));
            case LEAST -> OptionalDouble.of(part.perHa());
            case SEASON -> OptionalDouble.of(inSeason(entry, job -> job.of(product)));
            case PASSES -> OptionalDouble.of(inSeason(entry, job -> job.holds(product) ? 1 : 0));
            case GROUP_RUN -> OptionalDouble.of(GroupRuns.longest(jobs, book, entry));
            case INTERVAL -> days(product);
            case HARVEST, GRAZING -> OptionalDouble.of(beforeHarvest());
            case FIRST_STAGE, LAST_STAGE -> OptionalDouble.of(work.standing().stage());
            case HEIGHT -> OptionalDouble.of(work.standing().height_m());
            case CARRIER ->
                work.carrier().byAir()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(work.carrier().rate_LHa());
            case FINEST, COARSEST ->
                OptionalDouble.of(
                        work.driving().droplets().map(c -> (double) c.ordinal()).orElse(Double.NaN));
            case BOOM -> OptionalDouble.of(work.driving().boom_m());
            case SPEED -> OptionalDouble.of(work.driving().speed_ms());
            case WATER -> OptionalDouble.of(work.ground().water_m());
            case SENSITIVE -> OptionalDouble.of(work.ground().sensitive_m());
            case NITROGEN_CARRIER, BY_AIR -> isAskedFor(item) ? OptionalDouble.of(1) : OptionalDouble.empty();
            case RESTRICTED -> OptionalDouble.of(work.driving().certified() ? 1 : 0);
            case REENTRY, WIND_LEAST, WIND_MOST, AIR_MOST, INVERSION, RAINFAST -> OptionalDouble.empty();
        };
    }

    private double inSeason(LabelEntry entry, ToDoubleFunction<Job> amount) {
        return jobs.inSeason(entry.clock(), work.standing().cropBegins(), amount);
    }

    private OptionalDouble days(String product) {
        LocalDate asked = jobs.asked().date();
        return jobs.all().stream()
                .filter(job -> !job.isAsked() && job.holds(product))
                .mapToDouble(job -> Math.abs(ChronoUnit.DAYS.between(job.date(), asked)))
                .min();
    }

    private double beforeHarvest() {
        return work.standing()
                .harvest()
                .map(day -> (double) ChronoUnit.DAYS.between(work.date(), day))
                .orElse(Double.NaN);
    }

    private Said counted(LabelItem item, LabelWork.Part part, Said said) {
        boolean sum = item == LabelItem.SEASON || item == LabelItem.PASSES;
        return sum ? jobs.counted(said, job -> job.holds(part.product())) : said;
    }

    private void mindRun(LabelWork.Part part, String group) {
        add(
                Verdict.MIND,
                part.product(),
                Limit.GROUPS,
                new Compared(Said.text(group), NOTHING, NOTHING),
                Said.of("label.group-alone", "group", group));
    }

    private void add(Verdict verdict, String product, Enum<?> what, Compared compared, Said said) {
        findings.add(new LabelFinding(verdict, product, work.place(), what, compared, said));
    }
}
