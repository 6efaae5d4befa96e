// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.earleaf.mix.Amount;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Measure;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * One product of a load, with the two keys that let it into the tank. A key is the code or lot read off the container
 * and the amount measured. The second key is another person's, or the same person's again after a pause and with the
 * amount measured anew; which of the two is kept.
 *
 * @param order place in the mixing order, from 1
 * @param perHa L/ha or kg/ha on ground
 * @param planned what goes in this load
 * @param most the most of it that its label allows in this load, m3 or kg; NaN: no such limit
 * @param keys none, one or two
 */
public record LoadLine(int order, Goods goods, double perHa, Amount planned, double most, List<Key> keys) {
    /**
     * What it is.
     *
     * @param labelled whether it carries a pesticide label
     * @param codes registration number and lots by which its containers are known
     * @param classes words by which labels and rules may name it: form, class, kind
     */
    public record Goods(String product, boolean dry, boolean labelled, Set<String> codes, Set<String> classes) {
        public Goods {
            codes = Set.copyOf(codes);
            classes = Set.copyOf(classes);
        }
    }

    /** Between two keys of one person; common practice, no source. */
    public static final Duration PAUSE = Duration.ofSeconds(30);

    /** A meter or jug is read to 2 %, a scale with its scoop to 3 %; common practice, no source. */
    private static final double LIQUID_SLACK = .02;

    private static final double DRY_SLACK = .03;
    private static final double EPS = 1e-9;

    /**
     * One confirmation.
     *
     * @param code read off the container
     * @param measured m3 or kg
     * @param reason why the amount differs from plan, empty when it does not
     */
    public record Key(String code, double measured, String person, Instant at, String reason) {}

    public LoadLine {
        keys = List.copyOf(keys);
    }

    public String product() {
        return goods.product();
    }

    public boolean dry() {
        return goods.dry();
    }

    public boolean labelled() {
        return goods.labelled();
    }

    public Set<String> codes() {
        return goods.codes();
    }

    public Set<String> classes() {
        return goods.classes();
    }

    public boolean isIn() {
        return keys.size() == 2;
    }

    /** Whether both keys were one person's. */
    public boolean isSingle() {
        return isIn() && same(keys.get(0).person(), keys.get(1).person());
    }

    /** What went in, as measured; as planned while nothing was. */
    public Amount measured() {
        double inside =
                keys.isEmpty() ? planned.inside() : keys.get(keys.size() - 1).measured();
        return new Amount(inside, planned.isMass(), planned.unit());
    }

    /** Its rate as measured where it was, so that a load mixed too strong counts for what it holds. */
    public double measuredPerHa() {
        return perHa * measured().inside() / planned.inside();
    }

    /** The line with one more key; refused with what to do. */
    LoadLine with(Key key) {
        if (isIn()) {
            throw new EarleafException(Problem.of("load.third-key", where(), Said.of("found.third-key")));
        }
        if (key.person().isBlank()) {
            throw new EarleafException(Problem.of("load.key-unnamed", where(), Said.of("found.no-person")));
        }
        if (codes().stream().noneMatch(c -> same(c, key.code()))) {
            throw new EarleafException(Problem.of(
                    "load.wrong-product",
                    Said.of("where.wrong-product", "step", order, "product", product()),
                    Said.of("found.code", "code", key.code().strip()),
                    "codes",
                    List.copyOf(new TreeSet<>(codes()))));
        }
        amount(key);
        if (!keys.isEmpty()) {
            second(keys.get(0), key);
        }
        List<Key> all = new java.util.ArrayList<>(keys);
        all.add(key);
        return keyed(all);
    }

    LoadLine withoutKeys() {
        return keyed(List.of());
    }

    private LoadLine keyed(List<Key> all) {
        return new LoadLine(order, goods, perHa, planned, most, all);
    }

    /** The share of it that goes to another tank or stays. */
    LoadLine times(double share) {
        List<Key> parts = keys.stream()
                .map(k -> new Key(k.code(), k.measured() * share, k.person(), k.at(), k.reason()))
                .toList();
        return new LoadLine(order, goods, perHa, planned.times(share), most * share, parts);
    }

    private void amount(Key key) {
        if (!(key.measured() > 0)) {
            throw new EarleafException(Problem.of("load.nothing-measured", where(), told(key.measured())));
        }
        if (key.measured() > most * (1 + EPS)) {
            throw new EarleafException(
                    Problem.of("load.above-label", where(), told(key.measured()), "most", told(most)));
        }
        if (!near(key.measured(), planned.inside()) && key.reason().isBlank()) {
            throw new EarleafException(Problem.of(
                    "load.unlike-plan",
                    where(),
                    told(key.measured()),
                    "planned",
                    planned.told(),
                    "slack",
                    Measure.SHARE.of(slack())));
        }
    }

    private void second(Key first, Key key) {
        Instant open = first.at().plus(PAUSE);
        if (same(first.person(), key.person()) && key.at().isBefore(open)) {
            long wait = Duration.between(key.at(), open).toSeconds() + 1;
            throw new EarleafException(Problem.of(
                    "load.same-person-at-once",
                    where(),
                    Said.of("found.same-person", "person", key.person().strip()),
                    "pause",
                    PAUSE.toSeconds(),
                    "wait",
                    wait));
        }
        if (!near(key.measured(), first.measured())) {
            throw new EarleafException(
                    Problem.of("load.keys-differ", where(), told(key.measured()), "first", told(first.measured())));
        }
    }

    private boolean near(double measured, double other) {
        return Math.abs(measured - other) <= slack() * other * (1 + EPS);
    }

    private double slack() {
        return dry() ? DRY_SLACK : LIQUID_SLACK;
    }

    private Said told(double inside) {
        return new Amount(inside, planned.isMass(), planned.unit()).told();
    }

    static boolean same(String one, String other) {
        return one.strip().toLowerCase(Locale.ROOT).equals(other.strip().toLowerCase(Locale.ROOT));
    }

    private Said where() {
        return Said.of("where.step", "step", order, "product", product());
    }
}
