// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import java.util.List;
import org.earleaf.field.Incidence.Verdict;
import org.earleaf.pressure.CropAhead;
import org.earleaf.pressure.ProtectionCase;
import org.earleaf.pressure.SeverityOutlook;

/**
 * With which of the trials' fields a zone counts: those that ended with little disease, or those with much.
 *
 * <pre>
 * p = 1                  a disease is above its threshold of plants
 * p = max(site, model)   on as many plants but for what else its rule asks, or found where one lesion is enough (tar spot)
 * p = model              scouted, and on fewer
 * p = site               nobody scouted
 *
 * p      chance that it counts with those of much disease
 * site   chance by the site score, lesions that were found among its points
 * model  chance by the growth of what was scouted
 * Source where disease was moderate to high a pass at tassel to silk gained 9.5 bu/ac, where it was low 2.8, in all 5.3
 *        (Illinois, 45 environments of 2008 to 2014; 2.8 as cited elsewhere): a response among fields that have the disease,
 *        not among all. Counting every zone above its threshold with them: own construct.
 * Check  TrialFieldsTest
 * </pre>
 */
final class TrialFields {
    private final ProtectionCase c;
    private final SeverityOutlook severity;
    private final boolean above;
    private final boolean reached;

    TrialFields(ProtectionCase c, List<ThresholdRule.Finding> findings) {
        this.c = c;
        severity = new SeverityOutlook(c);
        above = findings.stream()
                .anyMatch(f -> f.verdict() == Verdict.ABOVE && !f.rule().isAnyLesionEnough());
        reached = findings.stream().anyMatch(ThresholdRule.Finding::isReached);
    }

    SeverityOutlook severity() {
        return severity;
    }

    boolean isAbove() {
        return above;
    }

    /** Whether the site score has a say. */
    boolean countsSite() {
        return !severity.isScouted() || reached && !above;
    }

    /** Chance that it counts with the fields of much disease. */
    double chanceMuch(CropAhead future) {
        if (above) {
            return 1;
        }
        double model = severity.chanceSevere(future);
        return reached ? Math.max(model, severity.score().chanceSevere(c.settings())) : model;
    }

    /**
     * Gain of a pass where trials say one thing and the disease model another. Slopes and growth of the model are
     * assumptions: of a disease that is there as the rule asks it may add to what trials found, and take nothing from it.
     */
    double blended_kgHa(double trials_kgHa, double saved_kgHa, double weightOfModel) {
        double more = saved_kgHa - trials_kgHa;
        return trials_kgHa + weightOfModel * (reached ? Math.max(0, more) : more);
    }
}
