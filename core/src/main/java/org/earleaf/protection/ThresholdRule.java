// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.earleaf.field.Disease;
import org.earleaf.field.Incidence;
import org.earleaf.field.Incidence.Verdict;
import org.earleaf.pressure.HybridClass;
import org.earleaf.pressure.LesionSighting;
import org.earleaf.pressure.ProtectionReason;
import org.earleaf.pressure.SiteFacts;
import org.earleaf.pressure.Support;
import org.earleaf.pressure.WeatherRisk;
import org.earleaf.units.BundledTable;

/**
 * From when a disease calls for a pass: one row of the table of thresholds.
 *
 * @param incidence share of plants; NaN: no treatment on such a hybrid
 * @param leaf lowest leaf that counts, from the ear leaf; {@link #ANY_LEAF}: any
 * @param needs further conditions: history, residue, humid, risk
 * @param rule in words
 */
public record ThresholdRule(
        Disease disease,
        HybridClass hybrid,
        double incidence,
        int leaf,
        Set<String> needs,
        Support support,
        String rule) {
    static final int ANY_LEAF = -99;
    private static final List<ThresholdRule> TABLE = BundledTable.rows("disease-thresholds.csv").stream()
            .map(ThresholdRule::read)
            .toList();

    public ThresholdRule {
        needs = Set.copyOf(needs);
    }

    public static List<ThresholdRule> listAll() {
        return TABLE;
    }

    public static ThresholdRule of(Disease disease, HybridClass hybrid) {
        return TABLE.stream()
                .filter(r -> r.disease == disease && r.hybrid == hybrid)
                .findFirst()
                .orElseThrow();
    }

    private static ThresholdRule read(BundledTable.Row row) {
        String incidence = row.text("incidence");
        String leaf = row.text("leaf");
        String needs = row.text("needs");
        return new ThresholdRule(
                Disease.findByWord(row.text("disease")).orElseThrow(),
                HybridClass.valueOf(row.text("hybrid").toUpperCase(java.util.Locale.ROOT)),
                incidence.isEmpty() ? Double.NaN : Double.parseDouble(incidence),
                leaf.isEmpty() ? ANY_LEAF : Integer.parseInt(leaf),
                needs.isEmpty() ? Set.of() : Set.of(needs.split(" ")),
                Support.ofToken(row.text("support")),
                row.text("rule"));
    }

    /**
     * What a scouting says under this rule.
     *
     * @param verdict undecided: look at fifty more plants, or note what is missing
     * @param because what decided, a clause without a full stop
     */
    public record Finding(ThresholdRule rule, LesionSighting sighting, Verdict verdict, String because)
            implements ProtectionReason {
        @Override
        public String sentence() {
            String seen = sighting.incidence()
                    .map(i -> " on " + i)
                    .orElse(
                            Double.isNaN(sighting.severity())
                                    ? ""
                                    : " on " + percent(sighting.severity()) + " of the leaf");
            String word =
                    switch (verdict) {
                        case ABOVE -> "above the threshold";
                        case BELOW -> "below the threshold";
                        case UNDECIDED -> "not clear of the threshold";
                    };
            return capital(rule.disease.word()) + seen + " is " + word + ": " + because + ".";
        }

        private static String percent(double share) {
            return org.earleaf.units.Figure.text(100 * share, 2) + " %";
        }

        private static String capital(String word) {
            return word.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + word.substring(1);
        }
    }

    /** Judges one sighting of this disease. */
    public Finding judge(LesionSighting seen, SiteFacts site) {
        if (Double.isNaN(incidence)) {
            return new Finding(this, seen, Verdict.BELOW, rule);
        }
        Verdict counted = counted(seen);
        if (counted == Verdict.BELOW) {
            return new Finding(this, seen, counted, "the rule is " + rule);
        }
        List<String> unmet = unmet(site);
        if (!unmet.isEmpty()) {
            return new Finding(this, seen, Verdict.BELOW, "the rule also asks for " + String.join(", ", unmet));
        }
        if (asksForWeather() && site.weather(disease).isEmpty()) {
            return new Finding(
                    this, seen, Verdict.UNDECIDED, "how the weather suits it is not known, and the rule is " + rule);
        }
        if (leaf != ANY_LEAF && seen.leaf().isEmpty()) {
            return new Finding(
                    this, seen, Verdict.UNDECIDED, "note the highest leaf with lesions; the rule is " + rule);
        }
        if (leaf != ANY_LEAF && seen.leaf().getAsInt() < leaf) {
            return new Finding(this, seen, Verdict.BELOW, "the lesions lie lower than the rule asks, " + rule);
        }
        String more = seen.incidence().isEmpty() ? "count the plants that show it" : "look at 50 more plants";
        String because = counted == Verdict.UNDECIDED ? more + "; the rule is " + rule : "the rule is " + rule;
        return new Finding(this, seen, counted, because);
    }

    /** Where only the leaf was judged, any severity shows that the disease is there, and not on how many plants. */
    private Verdict counted(LesionSighting seen) {
        if (seen.incidence().isEmpty()) {
            return seen.severity() > 0 ? incidence == 0 ? Verdict.ABOVE : Verdict.UNDECIDED : Verdict.BELOW;
        }
        Incidence i = seen.incidence().get();
        if (incidence == 0) {
            return i.shows() > 0 ? Verdict.ABOVE : Verdict.BELOW;
        }
        return i.against(incidence);
    }

    private boolean asksForWeather() {
        return needs.contains("humid") || needs.contains("risk");
    }

    private List<String> unmet(SiteFacts site) {
        List<String> unmet = new ArrayList<>();
        if (needs.contains("history") && !site.disease().history().contains(disease)) {
            unmet.add("the disease known in the field");
        }
        if (needs.contains("residue") && !(site.isCornAfterCorn() && site.hasMuchResidue())) {
            unmet.add("corn after corn with at least 35 % residue");
        }
        String asked = needs.contains("humid") ? "warm humid weather" : "a weather risk of moderate or more";
        Optional<WeatherRisk> weather = site.weather(disease);
        if (asksForWeather() && weather.filter(w -> w == WeatherRisk.LOW).isPresent()) {
            unmet.add(asked);
        } else if (asksForWeather() && weather.isEmpty() && !unmet.isEmpty()) {
            unmet.add(asked + " (not known)");
        }
        return unmet;
    }
}
