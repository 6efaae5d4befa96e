// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.store.LoadJobs;
import org.earleaf.app.store.LoadStore.Kept;
import org.earleaf.app.store.Waters;
import org.earleaf.app.web.drawing.Marks;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Amounts;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.ToldProblem;
import org.earleaf.app.words.Words;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Rig;
import org.earleaf.label.CropStages;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelItem;
import org.earleaf.load.LabelFinding;
import org.earleaf.load.LoadGround;
import org.earleaf.load.LoadLine;
import org.earleaf.load.LoadState;
import org.earleaf.load.LoadSteps;
import org.earleaf.load.LotStock;
import org.earleaf.load.MixGate;
import org.earleaf.load.Residue;
import org.earleaf.load.TankLoad;
import org.earleaf.mix.JarResult;
import org.earleaf.mix.MixRules;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * A kept load at the step where it stands.
 *
 * @param mix what is to be known of the mix before it is poured
 */
public record TankView(
        Standing at,
        Top top,
        Bound bound,
        SetTo setTo,
        Mixing mixing,
        TankMix mix,
        Labels labels,
        List<Lot> lots,
        Others others) {
    /**
     * How far it has come, and who brought it there.
     *
     * @param state "planned", "locked", "mixing", "mixed", "empty", "filed", "dropped"
     * @param filed number of its record, 0: none
     */
    public record Standing(String number, long version, String state, Markup mark, long filed, List<Event> events) {}

    /**
     * What to do now, with which load.
     *
     * @param part what it was taken over from; empty for a load of its own
     */
    public record Top(Markup headline, String what, String part) {}

    /**
     * What the recipe is bound to.
     *
     * @param crop with its stage
     */
    public record Bound(String name, String ground, String crop, String rig, String when) {}

    /** What the rig is set to, and what to mind in setting it. */
    public record SetTo(List<LoadView.Setting> figures, List<String> notes) {}

    /**
     * The work at the tank.
     *
     * @param next number of the step whose key is asked for now; 0: none
     * @param gate what keeps it from being marked mixed
     */
    public record Mixing(
            boolean labelled, List<TankSteps.Step> steps, int next, List<String> cautions, List<String> gate) {}

    /**
     * What labels say.
     *
     * @param limits what is to be minded or stops it
     * @param within what is kept
     */
    public record Labels(List<Limit> limits, List<Limit> within) {}

    /**
     * What else the pass is made with.
     *
     * @param rigs that a part may be handed to
     */
    public record Others(List<String> rigs, List<Other> loads) {}

    public record Limit(String product, String what, String planned, String allowed, Markup verdict, boolean stop) {}

    /** A lot with what the load takes of it and what stays free. */
    public record Lot(String product, String lot, String takes, String free) {}

    public record Event(String at, String person, String what) {}

    /** Another load of the same job. */
    public record Other(String number, String state) {}

    /** What a load is looked at with. */
    public record Shop(
            FarmDay day, Optional<LoadJobs.Job> job, LabelBook labels, Looked looked, Lots lots, List<Kept> all) {}

    /**
     * What is found on it.
     *
     * @param quarrels rules of mixing that it meets
     * @param jar newest jar test of its mix
     * @param residue what its tank has to be cleaned of
     * @param water newest test of the water
     * @param lapsed why its rig's calibration does not hold; empty: it does
     */
    public record Looked(
            List<LabelFinding> findings,
            List<MixRules.Found> quarrels,
            Optional<JarResult> jar,
            Optional<Residue> residue,
            Optional<Waters.Tested> water,
            Optional<Said> lapsed) {}

    /** What is free of the lots on the shelf, and what it drew. */
    public record Lots(List<LotStock> free, List<LotStock.Draw> drawn) {}

    private static String recipe(TankLoad load, Shop shop) {
        return shop.job().map(LoadJobs.Job::recipe).orElse(load.job())
                + shop.job().map(j -> ", " + Phrases.where(j.placement())).orElse("");
    }

    public static TankView of(Kept kept, Shop shop, MixGate gate, Format format) {
        TankLoad load = kept.load();
        return new TankView(
                standing(kept, shop, format),
                new Top(headline(kept, format), recipe(load, shop), part(load, format.isMetric())),
                bound(load, format),
                new SetTo(TankSettings.of(load, shop, format), TankSettings.notes(load, shop, format)),
                new Mixing(
                        load.isLabelled(),
                        TankSteps.of(load, shop.day().farm(), shop.labels(), format.isMetric()),
                        TankSteps.next(load),
                        cautions(load, shop, format),
                        gate(load, gate, format)),
                TankMix.of(load, shop, format),
                new Labels(limits(shop, false, format), limits(shop, true, format)),
                lots(load, shop, format.isMetric()),
                new Others(otherRigs(load, shop.day().farm()), others(load, shop.all())));
    }

    private static Standing standing(Kept kept, Shop shop, Format format) {
        TankLoad load = kept.load();
        return new Standing(
                load.id(), kept.version(), word(kept), mark(kept), kept.filed().orElse(0), events(load, shop, format));
    }

    private static Bound bound(TankLoad load, Format format) {
        LoadGround g = load.grounds().get(0);
        return new Bound(g.label(), area(load, format), crop(g), load.rig(), Dates.full(load.date()));
    }

    private static List<String> otherRigs(TankLoad load, Farm farm) {
        return farm.rigs().stream()
                .filter(r -> !r.isTender() && r.tank_m3() > 0 && !r.name().equals(load.rig()))
                .map(Rig::name)
                .toList();
    }

    static String word(Kept kept) {
        return kept.filed().isPresent()
                ? "filed"
                : switch (kept.load().state()) {
                    case PLANNED -> "planned";
                    case RESERVED -> "locked";
                    case MIXING -> "mixing";
                    case MIXED -> "mixed";
                    case APPLIED -> "empty";
                    case CANCELLED -> "dropped";
                };
    }

    static Markup mark(Kept kept) {
        String word = word(kept);
        return switch (word) {
            case "filed" -> Marks.done(tell("page.tank.filed"));
            case "dropped" -> Marks.out(tell("page.tank.dropped"));
            case "planned" -> Marks.open(tell("page.tank.planned"));
            case "locked" -> Marks.soon(tell("page.tank.locked"));
            case "mixing" -> Marks.soon(tell("page.tank.mixing"));
            case "mixed" -> Marks.soon(tell("page.tank.mixed"));
            default -> Marks.soon(tell("page.tank.empty-to-be-filed"));
        };
    }

    static String area(TankLoad load, Format format) {
        double ha = load.grounds().stream().mapToDouble(LoadGround::area_ha).sum();
        return Format.number(format.areaValue(ha), 1) + " " + format.areaUnit();
    }

    private static String crop(LoadGround g) {
        return Double.isNaN(g.stage())
                ? g.crop()
                : tell("page.tank.at", "crop", g.crop(), "stage", CropStages.word(g.crop(), g.stage()));
    }

    private static Markup headline(Kept kept, Format format) {
        TankLoad load = kept.load();
        String volume = Amounts.volume(load.volume_m3(), format.isMetric());
        String area = area(load, format);
        String name = load.grounds().get(0).label();
        Say say = new Say();
        return switch (word(kept)) {
            case "planned" ->
                say.sentence(tell("page.tank.lock-to-and-the", "volume", volume, "name", name, "rig", load.rig()))
                        .done();
            case "locked" ->
                say.sentence(tell("page.tank.mix-for", "volume", volume, "area", area))
                        .done();
            case "mixing" -> mixing(load, volume, area);
            case "mixed" ->
                say.sentence(tell("page.tank.put-on-of", "volume", volume, "area", area, "name", name))
                        .done();
            case "empty" ->
                say.sentence(tell("page.tank.the-tank-is-empty-file", "name", name))
                        .done();
            case "filed" ->
                say.sentence(tell("page.tank.load-is-on-record", "id", load.id()))
                        .done();
            default ->
                say.sentence(tell("page.tank.load-was-dropped", "id", load.id()))
                        .sentence(tell("page.tank.nothing-of-it-is-held"))
                        .done();
        };
    }

    private static Markup mixing(TankLoad load, String volume, String area) {
        Optional<LoadLine> next = load.lines().stream().filter(l -> !l.isIn()).findFirst();
        return next.map(l -> new Markup(Words.here()
                        .html(Said.of(
                                l.keys().isEmpty() ? "page.tank.next" : "page.tank.next-second-key",
                                "product",
                                l.product()))))
                .orElseGet(() -> new Say()
                        .sentence(tell("page.tank.everything-is-in-for", "volume", volume, "area", area))
                        .done());
    }

    /** What labels say, apart from what is kept; or that alone. */
    private static List<Limit> limits(Shop shop, boolean within, Format format) {
        return shop.looked().findings().stream()
                // Rules of mixing have a place of their own.
                .filter(f -> !(f.what() instanceof MixRules.Rule))
                .filter(f -> within == (f.verdict() == LabelFinding.Verdict.WITHIN))
                .map(f -> limit(f, format))
                .toList();
    }

    private static Limit limit(LabelFinding f, Format format) {
        String planned = format.words().say(f.planned());
        String allowed = format.words().say(f.allowed());
        Markup verdict =
                switch (f.verdict()) {
                    case WITHIN -> Marks.done(tell("page.tank.within"));
                    case BEFORE_START ->
                        Marks.open(
                                f.what() == LabelItem.REENTRY
                                        ? tell("page.tank.keep-out")
                                        : tell("page.tank.look-before-the-start"));
                    case MIND -> Marks.soon(tell("page.tank.mind"));
                    case NOT_KNOWN -> Marks.out(tell("page.tank.not-known"));
                    case NOT_ENTERED -> Marks.out(tell("page.tank.not-entered"));
                    case OUTSIDE ->
                        Marks.out(
                                LabelFinding.isNothing(f.by())
                                        ? tell("page.tank.not-allowed")
                                        : tell(
                                                "page.tank.outside-by",
                                                "by",
                                                format.words().say(f.by())));
                };
        return new Limit(
                f.product(),
                Phrases.capital(format.words().say(f.what())),
                planned,
                allowed.isEmpty() && planned.isEmpty() ? format.words().say(f.sentence()) : allowed,
                verdict,
                f.isStop());
    }

    private static List<String> cautions(TankLoad load, Shop shop, Format format) {
        return LoadSteps.cautions(load, shop.day().farm()).stream()
                .map(c -> format.words().say(c.said()))
                .toList();
    }

    private static List<Event> events(TankLoad load, Shop shop, Format format) {
        return load.events().stream()
                .map(e -> new Event(
                        RecordsView.filed(e.at(), shop.day().farm().timeZone()),
                        e.person(),
                        format.words().say(e.what())))
                .toList();
    }

    private static List<String> gate(TankLoad load, MixGate gate, Format format) {
        List<Problem> problems = load.state() == LoadState.MIXING ? gate.problems("") : List.of();
        return problems.stream().map(p -> gate(format.words().told(p))).toList();
    }

    private static String gate(ToldProblem p) {
        return Phrases.capital(p.found()) + ". " + p.todo();
    }

    private static List<Lot> lots(TankLoad load, Shop shop, boolean metric) {
        List<Lot> lots = new ArrayList<>();
        for (LoadLine line : load.lines()) {
            List<LotStock> of = shop.lots().free().stream()
                    .filter(s -> s.product().equalsIgnoreCase(line.product()))
                    .toList();
            for (LotStock s : of) {
                double takes = shop.lots().drawn().stream()
                        .filter(d -> d.product().equalsIgnoreCase(s.product())
                                && d.lot().equals(s.lot()))
                        .mapToDouble(LotStock.Draw::amount)
                        .sum();
                lots.add(new Lot(
                        line.product(),
                        s.lot().isEmpty() ? tell("page.tank.no-number") : s.lot(),
                        takes > 0
                                ? ShelfView.amount(
                                        takes, s.isMass(), line.planned().unit(), metric)
                                : tell("page.tank.nothing-yet"),
                        ShelfView.amount(s.free(), s.isMass(), line.planned().unit(), metric)));
            }
            if (of.isEmpty()) {
                lots.add(new Lot(line.product(), tell("page.tank.none-on-the-shelf"), "", ""));
            }
        }
        return lots;
    }

    private static String part(TankLoad load, boolean metric) {
        return load.from().isEmpty()
                ? ""
                : tell(
                        "page.tank.taken-over-from-load",
                        "from",
                        load.from(),
                        "volume",
                        Amounts.volume(load.volume_m3(), metric));
    }

    private static List<Other> others(TankLoad load, List<Kept> all) {
        return all.stream()
                .filter(k -> k.load().job().equals(load.job()) && !k.load().id().equals(load.id()))
                .map(k -> new Other(k.load().id(), word(k)))
                .toList();
    }
}
