// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.earleaf.field.Disease;
import org.earleaf.units.Ranks;
import org.earleaf.units.Units;

/**
 * How much disease a zone is likely to end with, and what a fungicide would save by the disease model.
 *
 * <p>Where a disease was scouted: its severity now (low, middle, high) grows to R5 of each future at five rates. Of several
 * diseases the one that grows largest counts. Where nobody scouted, or no disease is named: by the site score. The spread
 * of rates is an assumption; so is the score.
 */
public final class SeverityOutlook {
    private static final double[] RATES = {-1, -.5, 0, .5, 1};
    private static final double FEW = .1;

    private final ProtectionCase c;
    private final Optional<LesionSighting> leading;
    private final SiteScore score;
    /** What was worked out already, by future, and of passes by their day. */
    private final Map<CropAhead, Double> severe = new IdentityHashMap<>();

    private final Map<CropAhead, Double> last = new IdentityHashMap<>();
    private final Map<LocalDate, Map<CropAhead, Saved>> saved = new HashMap<>();

    public SeverityOutlook(ProtectionCase c) {
        this.c = c;
        score = SiteScore.of(c.site(), c.lesions().stream().anyMatch(LesionSighting::isFound));
        leading = c.lesions().stream()
                .filter(s -> s.disease().isPresent())
                .max(Comparator.comparingDouble(s -> meanOver(s, c.futures().get(0), x -> x)));
    }

    /** The disease that counts; empty: nobody scouted one by name. */
    public Optional<LesionSighting> leading() {
        return leading;
    }

    /** Whether it is the one that counts. */
    public boolean isOf(Disease disease) {
        return leading.flatMap(LesionSighting::disease)
                .filter(d -> d == disease)
                .isPresent();
    }

    public SiteScore score() {
        return score;
    }

    public boolean isScouted() {
        return leading.isPresent();
    }

    /** Chance that a future ends with much disease. */
    public double chanceSevere(CropAhead future) {
        double much = c.settings().of(ProtectionAssumption.SEVERE);
        return leading.map(s -> severe.computeIfAbsent(future, f -> meanOver(s, f, x -> x > much ? 1 : 0)))
                .orElseGet(() -> score.chanceSevere(c.settings()));
    }

    /** Mean severity at R5 without a pass; NaN where nobody scouted. */
    public double finalSeverity(CropAhead future) {
        return leading.map(s -> last.computeIfAbsent(future, f -> meanOver(s, f, x -> x)))
                .orElse(Double.NaN);
    }

    /**
     * Dry grain [kg/ha] that a pass saves by the disease model, mean and variance over what may have been seen, how fast
     * it may grow and how well the product works; 0 and 0 where nobody scouted.
     */
    public Saved saved(CropAhead future, LocalDate pass) {
        return leading.isEmpty()
                ? new Saved(0, 0)
                : saved.computeIfAbsent(pass, day -> new IdentityHashMap<>())
                        .computeIfAbsent(future, f -> workedOut(f, pass));
    }

    private Saved workedOut(CropAhead future, LocalDate pass) {
        LesionSighting s = leading.get();
        SeverityLoss loss = SeverityLoss.of(s.disease().orElseThrow(), c.relativeMaturity_d());
        double days = days(s, future);
        double held = SeverityGrowth.daysHeldUp(ChronoUnit.DAYS.between(pass, future.r5()), c.settings());
        double usual = c.settings().of(ProtectionAssumption.EFFICACY);
        double[] efficacies = {ProtectionAssumption.EFFICACY.low(), usual, ProtectionAssumption.EFFICACY.high()};
        // The slopes are too unsure to promise more than any trial has seen (Munkvold et al. 2001: 1.65 t/ha).
        double most = c.settings().of(ProtectionAssumption.SAVED_MOST) * Units.DRY_SHARE_OF_TRADE_CORN;
        double sum = 0;
        double squares = 0;
        int n = 0;
        for (double x0 : s.severities(c.settings())) {
            for (double rate : rates(s)) {
                double without =
                        loss.loss_kgHa(SeverityGrowth.after(x0, rate, days), future.yield_kgHa(), c.settings());
                for (double efficacy : efficacies) {
                    double left = Math.max(0, days - held * efficacy / usual);
                    double x = SeverityGrowth.after(x0, rate, left);
                    double saved = Math.min(most, without - loss.loss_kgHa(x, future.yield_kgHa(), c.settings()));
                    sum += saved;
                    squares += saved * saved;
                    n++;
                }
            }
        }
        double mean = sum / n;
        return new Saved(mean, Math.max(0, squares / n - mean * mean));
    }

    /** What the disease model says a pass saves, and how unsure it is. */
    public record Saved(double mean_kgHa, double variance_kg2Ha2) {}

    private static double days(LesionSighting s, CropAhead future) {
        return Math.max(0, ChronoUnit.DAYS.between(s.date(), future.r5()));
    }

    /**
     * How fast it may grow on this hybrid, slowest first. Tar spot, for which there is no weather model, has a rate of its own
     * with a wider doubt.
     *
     * <pre>
     * tar spot: r = 0.145 (1 -+ 0.35)
     *
     * r      growth                                       [1/d]
     * Range  tassel to dent
     * Source derived: from 0.01 % of the ear leaf at tassel to the 1.6 to 23.3 % that plots without fungicide had at dent in
     *        eight trials of four states (Telenko et al. 2022, Plant Health Prog. 23:281, abstract read, place from
     *        memory) takes 0.11 to 0.18 a day over 45 days; the doubt is widened to the 0.1 to 67 % of leaf found in fields
     *        of 2018 and 2019 (survey of seven states, abstract read). That the growth is logistic: Gongora-Canul et al.
     *        2024, Can. J. Plant Pathol. 46:288 (abstract read). The 0.01 % is an assumption.
     * Check  SeverityTest
     * </pre>
     */
    private double[] rates(LesionSighting s) {
        Disease disease = s.disease().orElseThrow();
        boolean tarSpot = disease == Disease.TAR_SPOT;
        WeatherRisk weather = c.site().weather(disease).orElse(WeatherRisk.MODERATE);
        double usual =
                tarSpot ? c.settings().of(ProtectionAssumption.TAR_SPOT_GROWTH) : weather.growth_perDay(c.settings());
        double rate = usual * c.site().hybrid(disease).growth(c.settings());
        double doubt =
                c.settings().of(tarSpot ? ProtectionAssumption.TAR_SPOT_DOUBT : ProtectionAssumption.GROWTH_DOUBT);
        return java.util.Arrays.stream(RATES)
                .map(step -> rate * (1 + step * doubt))
                .toArray();
    }

    /**
     * Where one disease may end.
     *
     * @param low severity at R5 without a pass that nine of ten cases pass
     * @param high that one of ten passes
     * @param chanceSevere share of the cases with much disease
     */
    public record Spread(double low, double likely, double high, double chanceSevere) {}

    /** Over all futures, what may have been seen and how fast it may grow. */
    public Spread spread(LesionSighting s) {
        double[] rates = rates(s);
        double[] ends = c.futures().stream()
                .flatMapToDouble(f -> java.util.Arrays.stream(s.severities(c.settings()))
                        .flatMap(
                                x0 -> java.util.Arrays.stream(rates).map(r -> SeverityGrowth.after(x0, r, days(s, f)))))
                .toArray();
        double much = c.settings().of(ProtectionAssumption.SEVERE);
        Ranks ranks = Ranks.of(ends);
        return new Spread(
                ranks.quantile(FEW),
                ranks.quantile(.5),
                ranks.quantile(1 - FEW),
                (double) java.util.Arrays.stream(ends).filter(x -> x > much).count() / ends.length);
    }

    /** Mean of a function of the severity at R5 without a pass, over what may have been seen and how fast it may grow. */
    private double meanOver(LesionSighting s, CropAhead future, DoubleUnaryOperator of) {
        double sum = 0;
        double[] now = s.severities(c.settings());
        for (double x0 : now) {
            for (double rate : rates(s)) {
                sum += of.applyAsDouble(SeverityGrowth.after(x0, rate, days(s, future)));
            }
        }
        return sum / (now.length * RATES.length);
    }
}
