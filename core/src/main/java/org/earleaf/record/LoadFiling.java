// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.earleaf.farm.Farm;
import org.earleaf.farm.RateUnit;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Pass;
import org.earleaf.field.Placement;
import org.earleaf.label.LabelBook;
import org.earleaf.load.LoadGround;
import org.earleaf.load.LoadLine;
import org.earleaf.load.LoadState;
import org.earleaf.load.LotStock;
import org.earleaf.load.TankLoad;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/** What an applied load turns into: on each piece of its ground a record, and a pass made for each of its products. */
public final class LoadFiling {
    private final TankLoad load;
    private final Papers papers;

    /**
     * What is filed beside the load.
     *
     * @param draws lots that the products of the load came out of
     * @param told what only a person knows
     * @param ids makes the id of a record
     * @param clerk puts into words what is no entry of the law
     */
    public record Papers(
            Farm farm,
            LabelBook labels,
            List<LotStock.Draw> draws,
            Placement placement,
            Told told,
            Supplier<String> ids,
            LoadAccount.Clerk clerk) {
        public Papers {
            draws = List.copyOf(draws);
        }
    }

    /** What is filed of one piece of ground. */
    public record Filed(List<Pass> passes, FiledRecord record) {
        public Filed {
            passes = List.copyOf(passes);
        }
    }

    private LoadFiling(TankLoad load, Papers papers) {
        this.load = load;
        this.papers = papers;
    }

    /** In the order of the load's ground; refused for a load that is not applied, or filed already. */
    public static List<Filed> of(TankLoad load, boolean filed, Papers papers) {
        Said place = Said.of("where.load", "id", load.id());
        if (filed) {
            throw new EarleafException(Problem.of("load.filed-already", place, Said.of("found.filed-load")));
        }
        if (load.state() != LoadState.APPLIED) {
            throw new EarleafException(
                    Problem.of("load.not-applied", place, Said.of("found.load-state", "state", load.state())));
        }
        LoadFiling filing = new LoadFiling(load, papers);
        List<Filed> all = new ArrayList<>();
        load.grounds().forEach(ground -> all.add(filing.filed(ground)));
        return all;
    }

    private Filed filed(LoadGround ground) {
        List<Pass> passes =
                load.lines().stream().map(line -> pass(ground, line)).toList();
        LoadAccount.Filing filing = new LoadAccount.Filing(
                passes.get(0).id(),
                papers.placement().word(),
                papers.labels(),
                papers.draws(),
                papers.farm().timeZone(),
                papers.told());
        return new Filed(passes, LoadAccount.of(papers.ids().get(), load, ground, filing, papers.clerk()));
    }

    private Pass pass(LoadGround ground, LoadLine line) {
        double perHa = line.measuredPerHa();
        RateUnit unit =
                RateUnit.findByWord(line.planned().unit() + "/ac").orElse(line.dry() ? RateUnit.KG_HA : RateUnit.L_HA);
        double nitrogen_kgHa = papers.farm()
                .findNitrogen(line.product())
                .map(n -> line.dry() ? perHa * n.nitrogen_share() : perHa * n.nitrogen_kgL())
                .orElse(0.0);
        return new Pass(
                new PassOfLoad(load.id(), ground.label(), line.order()).id(),
                new FieldPart(ground.field(), ground.zone()),
                load.date(),
                line.product(),
                new Pass.Rate(perHa / unit.inside(1), unit.word(), nitrogen_kgHa),
                papers.placement(),
                Inhibitor.NONE,
                Pass.State.MADE);
    }
}
