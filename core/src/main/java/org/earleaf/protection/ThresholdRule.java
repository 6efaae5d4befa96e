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
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/**
 * From when a disease calls for a pass: one row of the table of thresholds.
 *
 * @param incidence share of plants; NaN: no treatment on such a hybrid
 * @param leaf lowest leaf that counts, from the ear leaf; {@link #ANY_LEAF}: any
 * @param needs further conditions: history, residue, humid, risk
 * @param wording which sentence of the catalogue says it
 */
public record ThresholdRule(
        Disease disease,
        HybridClass hybrid,
        double incidence,
        int leaf,
        Set<String> needs,
        Support support,
        Wording wording) {
    /** The rules, each in a clause of the catalogue. */
    public enum Wording {
        HALF_ON_THIRD_LEAF,
        HALF_ON_THIRD_LEAF_AT_RISK,
        ANY_LESION_AT_RISK,
        ANY_LESION_AT_RISK_LATE,
        TENTH_ON_SECOND_LEAF,
        NO_TREATMENT,
        SELDOM_PAYS
    }

    /** What a rule asks for besides lesions. */
    public enum Asked {
        HISTORY,
        RESIDUE,
        HUMID_WEATHER,
        WEATHER_RISK
    }

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
                Wording.valueOf(row.text("rule")));
    }

    /**
     * What a scouting says under this rule.
     *
     * @param verdict undecided: look at fifty more plants, or note what is missing
     * @param because what decided, a clause
     */
    public record Finding(ThresholdRule rule, LesionSighting sighting, Verdict verdict, Said because)
            implements ProtectionReason {
        @Override
        public Said said() {
            return Said.of(
                    switch (verdict) {
                        case ABOVE -> "threshold.above";
                        case BELOW -> "threshold.below";
                        case UNDECIDED -> "threshold.not-clear";
                    },
                    "seen",
                    seen(),
                    "because",
                    because);
        }

        /** Whether as many plants show it as the rule asks, whatever else it asks for. */
        boolean isReached() {
            return !Double.isNaN(rule.incidence) && rule.counted(sighting) == Verdict.ABOVE;
        }

        private Said seen() {
            Disease disease = rule.disease;
            if (sighting.incidence().isPresent()) {
                Incidence i = sighting.incidence().get();
                return Said.of("seen.on-plants", "disease", disease, "shows", i.shows(), "plants", i.plants());
            }
            return Double.isNaN(sighting.severity())
                    ? Said.of("seen.disease", "disease", disease)
                    : Said.of("seen.on-leaf", "disease", disease, "severity", Measure.SHARE.of(sighting.severity()));
        }
    }

    /** Judges one sighting of this disease. */
    public Finding judge(LesionSighting seen, SiteFacts site) {
        if (Double.isNaN(incidence)) {
            return new Finding(this, seen, Verdict.BELOW, Said.of("threshold.only", "rule", wording));
        }
        Verdict counted = counted(seen);
        Said theRule = Said.of("threshold.rule", "rule", wording);
        if (counted == Verdict.BELOW) {
            return new Finding(this, seen, counted, theRule);
        }
        List<Said> unmet = unmet(site);
        if (!unmet.isEmpty()) {
            return new Finding(this, seen, Verdict.BELOW, Said.of("threshold.also-asks", "unmet", unmet));
        }
        boolean open = asksForWeather() && site.weather(disease).isEmpty();
        // Weather only says how fast it goes on: what is in the field already does not wait for a model of it.
        if (open && !isAnyLesionEnough()) {
            return new Finding(this, seen, Verdict.UNDECIDED, Said.of("threshold.weather-not-known", "rule", wording));
        }
        if (leaf != ANY_LEAF && seen.leaf().isEmpty()) {
            return new Finding(this, seen, Verdict.UNDECIDED, Said.of("threshold.note-leaf", "rule", wording));
        }
        if (leaf != ANY_LEAF && seen.leaf().getAsInt() < leaf) {
            return new Finding(this, seen, Verdict.BELOW, Said.of("threshold.too-low", "rule", wording));
        }
        if (counted != Verdict.UNDECIDED) {
            return new Finding(this, seen, counted, open ? Said.of("threshold.found", "rule", wording) : theRule);
        }
        return new Finding(
                this,
                seen,
                counted,
                Said.of(
                        seen.incidence().isEmpty() ? "threshold.count-plants" : "threshold.look-at-more",
                        "rule",
                        wording));
    }

    /** Where only the leaf was judged, any severity shows that the disease is there, and not on how many plants. */
    private Verdict counted(LesionSighting seen) {
        if (seen.incidence().isEmpty()) {
            return seen.severity() > 0 ? isAnyLesionEnough() ? Verdict.ABOVE : Verdict.UNDECIDED : Verdict.BELOW;
        }
        Incidence i = seen.incidence().get();
        if (isAnyLesionEnough()) {
            return i.shows() > 0 ? Verdict.ABOVE : Verdict.BELOW;
        }
        return i.against(incidence);
    }

    /** Whether one confirmed lesion is enough. */
    boolean isAnyLesionEnough() {
        return incidence == 0;
    }

    private boolean asksForWeather() {
        return needs.contains("humid") || needs.contains("risk");
    }

    private List<Said> unmet(SiteFacts site) {
        List<Said> unmet = new ArrayList<>();
        if (needs.contains("history") && !site.disease().history().contains(disease)) {
            unmet.add(asks(Asked.HISTORY));
        }
        if (needs.contains("residue") && !(site.isCornAfterCorn() && site.hasMuchResidue())) {
            unmet.add(asks(Asked.RESIDUE));
        }
        Asked asked = needs.contains("humid") ? Asked.HUMID_WEATHER : Asked.WEATHER_RISK;
        Optional<WeatherRisk> weather = site.weather(disease);
        if (asksForWeather() && weather.filter(w -> w == WeatherRisk.LOW).isPresent()) {
            unmet.add(asks(asked));
        } else if (asksForWeather() && weather.isEmpty() && !unmet.isEmpty()) {
            unmet.add(Said.of("threshold.asks-unknown", "asked", asked));
        }
        return unmet;
    }

    private static Said asks(Asked asked) {
        return Said.of("threshold.asks", "asked", asked);
    }
}
