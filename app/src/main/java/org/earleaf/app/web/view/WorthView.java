// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import org.earleaf.app.web.drawing.Tally;
import org.earleaf.app.web.drawing.Whisker;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.decide.Worth;
import org.earleaf.units.Measure;

/**
 * What an option is worth, as a table or an entry shows it.
 *
 * @param mean with its spread
 * @param meanOnly the mean alone, where the spread has its own place
 * @param range "11 to 102"
 * @param tally ten strokes
 * @param chance "9 of 10"
 * @param badCase mean of the worst fifth of futures
 * @param breakEven corn price above which it pays
 */
public record WorthView(
        Markup mean,
        String meanOnly,
        String range,
        Markup whisker,
        Markup tally,
        String chance,
        String badCase,
        String breakEven) {

    static WorthView of(Worth worth, Whisker scale, String zeroLabel, boolean planned, Format format) {
        String range = tell(
                "page.worth.to", "money", format.money(worth.p10_usdHa()), "money2", format.money(worth.p90_usdHa()));
        String mean = format.money(worth.mean_usdHa());
        String chance = format.words().say(Measure.CHANCE.of(worth.chanceItPays()));
        String spoken = tell(
                "page.worth.mean-gain-eight-of-ten", "mean", mean, "moneyUnit", format.moneyUnit(), "range", range);
        return new WorthView(
                new Say().strong(mean).range("(" + range + ")").done(),
                mean,
                range,
                scale.of(worth, spoken, zeroLabel, planned),
                Tally.of(worth.chanceItPays(), tell("page.worth.pays-in-futures", "chance", chance)),
                chance,
                format.money(worth.badCase_usdHa()),
                breakEven(worth));
    }

    static String breakEven(Worth worth) {
        double corn = worth.breakEvenCorn_usdBu();
        return Double.isNaN(corn) || Double.isInfinite(corn) || corn < 0
                ? tell("page.worth.no-price")
                : "$" + Format.number(corn, 2);
    }
}
