// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.List;
import org.earleaf.app.web.drawing.Whisker;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.words.Dates;
import org.earleaf.decide.Option;
import org.earleaf.decide.ProtectionAnswer;
import org.earleaf.protection.ProtectionAdvice;
import org.earleaf.units.Measure;

/**
 * Passes against disease and insects on one field.
 *
 * @param says what is proposed, or why nothing is
 * @param why of the one proposed
 * @param rows the best day of each choice; one that may not be made keeps its row and has the reason
 */
public record ProtectionView(List<String> says, List<String> why, String assumed, List<Row> rows, String caution) {
    /**
     * @param key names it in addresses
     * @param forbidden what forbids it; empty: it may be made
     */
    public record Row(String label, String key, WorthView worth, boolean picked, List<String> forbidden) {}

    static ProtectionView of(ProtectionAnswer answer, Format format) {
        List<Option> best = answer.bestOfEach();
        Whisker scale = Whisker.scaleOf(best.stream().map(Option::worth).toList());
        List<Row> rows = best.stream()
                .map(o -> new Row(
                        Dates.brief(o.date()) + ": " + Phrases.choice(o, format),
                        Choice.key(o),
                        WorthView.of(o.worth(), scale, "", isPicked(answer, o), format),
                        isPicked(answer, o),
                        format.say(o.refusals())))
                .toList();
        return new ProtectionView(
                says(answer, format),
                answer.proposed().map(o -> format.say(o.why())).orElse(List.of()),
                answer.proposed().map(SprayView::assumed).orElse(""),
                rows,
                format.say(ProtectionAdvice.CAUTION));
    }

    private static boolean isPicked(ProtectionAnswer answer, Option o) {
        return answer.proposed().filter(o::equals).isPresent();
    }

    private static List<String> says(ProtectionAnswer answer, Format format) {
        List<String> left = answer.leftOut().stream()
                .map(l -> tell("page.protection.no", "kind", l.kind(), "reason", format.say(l.reason())))
                .toList();
        if (answer.proposed().isEmpty()) {
            return left;
        }
        Option o = answer.proposed().get();
        String best = tell(
                "page.protection.it-gains-on-average-and",
                "date",
                Dates.brief(o.date()),
                "mix",
                Phrases.mix(o.spray().orElseThrow().mix(), format),
                "where",
                Phrases.where(o.placement()),
                "rig",
                o.rig(),
                "money",
                format.money(o.worth().mean_usdHa()),
                "areaName",
                format.areaName(),
                "chance",
                Measure.CHANCE.of(o.worth().chanceItPays()));
        return java.util.stream.Stream.concat(java.util.stream.Stream.of(best), left.stream())
                .toList();
    }
}
