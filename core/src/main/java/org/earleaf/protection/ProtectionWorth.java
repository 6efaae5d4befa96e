// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.earleaf.field.Disease;
import org.earleaf.pressure.CropAhead;
import org.earleaf.pressure.Fungicide;
import org.earleaf.pressure.FungicideKind;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.pressure.ProtectionCase;
import org.earleaf.pressure.ProtectionOption;
import org.earleaf.pressure.SeverityOutlook;
import org.earleaf.units.Units;

/**
 * What a pass against disease or insects is worth in a zone.
 *
 * <pre>
 * gain = D - (tracks + injury) Y + insects;   net = P gain - C
 * D    = one slice of the trials' response, its mean moved to  timing m + b (saved - timing m), of a disease that is there as
 *        its rule asks  timing m + b max(0, saved - timing m); its variance raised by b^2 times the doubt about saved
 * b    = 0.5 once a disease was scouted, else 0
 *
 * D      gain by the fungicide over all futures and slices        [kg/ha dry]
 * Y      yield of the future                                      [kg/ha dry]
 * m      mean response of the trials' fields that it counts with (TrialFields) [kg/ha dry]
 * saved  loss without less loss with the pass, by the disease model [kg/ha dry]
 * insects what aphids take without less with the pass, in the share of draws that have aphids
 * Range  a pass between tassel and R4
 * Source response and its spread: see FungicideResponse; b, timing and insects are assumptions
 * Check  ProtectionWorthTest
 * </pre>
 */
public final class ProtectionWorth {
    private static final int INSECT_SLICES = 10;

    private final ProtectionCase c;
    private final List<ThresholdRule.Finding> findings;
    private final TrialFields fields;
    private final SeverityOutlook severity;
    private final AphidOutlook aphids;
    private final Map<FungicideKind, ResponseGrid> grids = new EnumMap<>(FungicideKind.class);

    /** For many options of one zone: what they have in common is worked out once. Not for several threads. */
    public ProtectionWorth(ProtectionCase c) {
        this.c = c;
        findings = findings(c);
        fields = new TrialFields(c, findings);
        severity = fields.severity();
        aphids = new AphidOutlook(c);
    }

    /** Worth, refusals and reasons of one option. */
    public static ProtectionAdvice advise(ProtectionCase c, ProtectionOption o) {
        return new ProtectionWorth(c).advise(o);
    }

    /** Worth, refusals and reasons of one option. */
    public ProtectionAdvice advise(ProtectionOption o) {
        PassWorth worth = PassWorth.of(gained_kgHa(o), o.cost_usdHa(), c.prices());
        return new ProtectionAdvice(
                o,
                worth,
                ProtectionRules.refusals(c, o, findings, aphids),
                ProtectionReasons.of(c, o, worth, fields, aphids, findings),
                AssumptionsUsed.of(o, fields));
    }

    /** Dry grain gained in each equally likely draw, by future, then slice of the response, then slice of the insects. */
    public static double[] gained_kgHa(ProtectionCase c, ProtectionOption o) {
        return new ProtectionWorth(c).gained_kgHa(o);
    }

    private double[] gained_kgHa(ProtectionOption o) {
        ResponseGrid grid = grids.computeIfAbsent(
                o.fungicide().map(Fungicide::kind).orElse(FungicideKind.OTHER), kind -> new ResponseGrid(kind, c));
        List<double[]> byFuture = new ArrayList<>();
        for (CropAhead f : c.futures()) {
            double lost = (o.trackShare() + o.injuryShare()) * f.yield_kgHa();
            double[] response = o.fungicide().isPresent() ? response_kgHa(o, f, grid) : new double[1];
            double[] insects = insects_kgHa(f, o);
            double[] gained = new double[response.length * insects.length];
            for (int k = 0; k < gained.length; k++) {
                gained[k] = response[k / insects.length] + insects[k % insects.length] - lost;
            }
            byFuture.add(gained);
        }
        return byFuture.stream().flatMapToDouble(java.util.Arrays::stream).toArray();
    }

    private double[] response_kgHa(ProtectionOption o, CropAhead f, ResponseGrid grid) {
        double p = fields.chanceMuch(f);
        double dry = Units.DRY_SHARE_OF_TRADE_CORN;
        double mean = dry * grid.mean_kgHa(p);
        double blend = severity.isScouted() ? c.settings().of(ProtectionAssumption.BLEND) : 0;
        SeverityOutlook.Saved saved = severity.saved(f, o.date());
        double wanted = fields.blended_kgHa(f.timing(o.date()) * mean, saved.mean_kgHa(), blend);
        double[] grid_kgHa = grid.quantiles_kgHa(p);
        double variance = dry * dry * variance(grid_kgHa);
        double wider = Math.sqrt(1 + blend * blend * saved.variance_kg2Ha2() / variance);
        return java.util.Arrays.stream(grid_kgHa)
                .map(q -> (dry * q - mean) * wider + wanted)
                .toArray();
    }

    private static double variance(double[] values) {
        double mean = java.util.Arrays.stream(values).average().orElseThrow();
        return java.util.Arrays.stream(values)
                .map(v -> (v - mean) * (v - mean))
                .average()
                .orElseThrow();
    }

    /** Aphids are there in a share of the draws; the mean is exact however the share falls between slices. */
    private double[] insects_kgHa(CropAhead f, ProtectionOption o) {
        double gained = aphids.gained_kgHa(f, o);
        if (aphids.chance() == 1) {
            return new double[] {gained};
        }
        double[] slices = new double[INSECT_SLICES];
        int hit = (int) Math.ceil(aphids.chance() * INSECT_SLICES - 1e-9);
        for (int j = 0; j < hit; j++) {
            slices[j] = gained * aphids.chance() * INSECT_SLICES / hit;
        }
        return slices;
    }

    /** What the scouted diseases say by the table of thresholds. */
    static List<ThresholdRule.Finding> findings(ProtectionCase c) {
        return c.lesions().stream()
                .filter(s -> s.disease().isPresent())
                .map(s -> {
                    Disease d = s.disease().get();
                    return ThresholdRule.of(d, c.site().hybrid(d)).judge(s, c.site());
                })
                .toList();
    }
}
