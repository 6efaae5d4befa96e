// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.earleaf.label.LabelBook;
import org.earleaf.load.LabelFinding.Limit;
import org.earleaf.load.LabelFinding.Verdict;
import org.earleaf.mix.LabelWork;
import org.earleaf.mix.MixRules;
import org.earleaf.mix.MixWords;
import org.earleaf.units.Said;

/** Holds a load against the known quarrels of its products, and tells of crops that may not follow it. */
public final class MixCheck {
    private final LabelBook book;
    private final LabelWork work;
    private final List<LabelFinding> findings = new ArrayList<>();

    private MixCheck(LabelBook book, LabelWork work) {
        this.book = book;
        this.work = work;
    }

    /** As the other, with no stop set aside. */
    public static List<LabelFinding> of(LabelBook book, LabelWork work, List<GroundUse> ground) {
        return of(book, work, ground, List.of());
    }

    /**
     * @param ground what is made and reserved on this ground, this load not among it
     * @param overridden stops that somebody has set aside
     */
    public static List<LabelFinding> of(
            LabelBook book, LabelWork work, List<GroundUse> ground, List<Overridden> overridden) {
        MixCheck check = new MixCheck(book, work);
        quarrels(book, work, ground).forEach(found -> check.quarrel(found, overridden));
        work.parts().forEach(part -> check.follows(part.product()));
        ground.forEach(check::before);
        return List.copyOf(check.findings);
    }

    /** Rules of mixing that a load meets. */
    public static List<MixRules.Found> quarrels(LabelBook book, LabelWork work, List<GroundUse> ground) {
        List<Set<String>> parts = work.parts().stream()
                .map(p -> MixWords.of(p.product(), p.classes(), book))
                .toList();
        Set<String> earlier = new TreeSet<>();
        ground.stream()
                .filter(u -> !u.date().isBefore(work.standing().cropBegins()))
                .forEach(u -> earlier.addAll(MixWords.of(u.product(), Set.of(), book)));
        return MixRules.of(
                parts, earlier, work.standing().crop(), work.standing().stage());
    }

    private void quarrel(MixRules.Found found, List<Overridden> overridden) {
        Optional<Overridden> aside = overridden.stream()
                .filter(o -> o.rule().equals(found.id()) && !found.mayOverride().isEmpty())
                .reduce((before, after) -> after);
        boolean stop = found.isStop() && aside.isEmpty();
        Said said = aside.map(o -> Said.of("mix.quarrel-aside", "rule", found.rule(), "aside", o.said()))
                .orElseGet(() -> Said.of("mix.quarrel", "rule", found.rule()));
        add(stop ? Verdict.OUTSIDE : Verdict.MIND, "", found.rule(), said);
    }

    /** What may not be planted after it for some time. */
    private void follows(String product) {
        book.find(product, work.standing().crop()).ifPresent(e -> e.plantBack_d()
                .forEach((crop, days) -> add(
                        Verdict.MIND,
                        product,
                        Limit.OTHER_CROPS,
                        Said.of(
                                "label.plant-back-after",
                                "crop",
                                crop,
                                "day",
                                work.date().plusDays((long) Math.ceil(days))))));
    }

    /** An earlier pass whose label does not let this crop follow so soon. */
    private void before(GroundUse use) {
        double days = book.plantBack_d(use.product(), work.standing().crop());
        LocalDate free = use.date().plusDays((long) Math.ceil(days));
        if (days > 0 && !use.date().isAfter(work.date()) && free.isAfter(work.date())) {
            long since = ChronoUnit.DAYS.between(use.date(), work.date());
            add(
                    Verdict.MIND,
                    use.product(),
                    Limit.OTHER_CROPS,
                    Said.of(
                            "label.plant-back-earlier",
                            "days",
                            since,
                            "crop",
                            work.standing().crop(),
                            "day",
                            free));
        }
    }

    private void add(Verdict verdict, String product, Enum<?> what, Said said) {
        findings.add(new LabelFinding(verdict, product, work.place(), what, LabelFinding.Compared.NONE, said));
    }
}
