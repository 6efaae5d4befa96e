// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.decide.Worth;
import org.earleaf.outlook.DateSpread;
import org.earleaf.outlook.Spread;
import org.earleaf.units.Flag;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/** Figures and days in words, as an almanac prints them. */
record Say(boolean metric) {
    private static final int PAGE = 78;

    /** A sentence in the units asked for. */
    String say(Said said) {
        return Words.in(metric).say(said);
    }

    /** The word of a constant. */
    String say(Enum<?> constant) {
        return Words.in(metric).say(constant);
    }

    /** A remark with its place. */
    String say(Flag flag) {
        return say(flag.where()) + ": " + say(flag.what());
    }

    /** "July 5 (July 2 to never), in 8 of 10 years like this", or that it is not in any. */
    static String shortOn(DateSpread s) {
        if (s.probability() <= 0) {
            return tell("cli.say.not-in-any-future");
        }
        String chance = tell("cli.say.in-futures", "chance", Measure.CHANCE.of(s.probability()));
        if (s.p50().isEmpty()) {
            return s.p10().isEmpty()
                    ? chance
                    : tell(
                            "cli.say.from-on",
                            "chance",
                            chance,
                            "p10",
                            Dates.day(s.p10().get()));
        }
        LocalDate day = s.p50().get();
        return s.p10().equals(s.p50()) && s.p90().equals(s.p50())
                ? tell("cli.say.day", "day", day, "chance", chance)
                : tell("cli.say.day-spread", "day", day, "p10", end(s.p10()), "p90", end(s.p90()), "chance", chance);
    }

    private static String end(Optional<LocalDate> date) {
        return date.map(Dates::day).orElse(tell("dates.never"));
    }

    static String number(double value, int decimals) {
        return Words.here().number(value, decimals);
    }

    String number(Measure measure, double inside, int decimals) {
        return Words.in(metric).number(measure.of(inside), decimals);
    }

    String amount(Measure measure, double inside, int decimals) {
        return Words.in(metric).amount(measure.of(inside), decimals);
    }

    String unit(Measure measure) {
        return Words.in(metric).unit(measure);
    }

    /** "182 bu/ac (150 to 205)". */
    String spread(Measure measure, Spread s, int decimals) {
        return tell(
                "cli.say.to-2",
                "amount",
                amount(measure, s.p50(), decimals),
                "measure",
                number(measure, s.p10(), decimals),
                "measure2",
                number(measure, s.p90(), decimals));
    }

    /** "11 to 102": what all but the worst and the best tenth of years bring, for a table headed by the unit. */
    String gains(Worth worth) {
        return tell(
                "cli.say.gains",
                "money",
                number(Measure.MONEY_RATE, worth.p10_usdHa(), 0),
                "money2",
                number(Measure.MONEY_RATE, worth.p90_usdHa(), 0));
    }

    /** In how many years it pays. */
    String chance(Worth worth) {
        return Words.in(metric).say(Measure.CHANCE.of(worth.chanceItPays()));
    }

    /** Breaks a sentence at the width of the page; every line begins with the margin. */
    static List<String> wrapped(String sentence, String margin) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(margin);
        for (String word : sentence.trim().split("\\s+")) {
            boolean fresh = line.length() == margin.length();
            if (!fresh && line.length() + 1 + word.length() > PAGE) {
                lines.add(line.toString());
                line = new StringBuilder(margin).append(word);
            } else {
                line.append(fresh ? "" : " ").append(word);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    static String rule(char of) {
        return String.valueOf(of).repeat(PAGE);
    }
}
