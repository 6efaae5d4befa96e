// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.units.EarleafException;

/**
 * What the note of a lesion or insect count says beside its value: "gray leaf spot, 58 of 100 plants, ear leaf -3"; "8 %
 * of the ear leaf"; "aphids, 40 of 100 plants, lady beetles 0.3, lacewings 0.1, mummies 2".
 *
 * @param disease empty: the note names none
 * @param leaf highest leaf with lesions, counted from the ear leaf (0), -3 the third below it; empty: not noted
 * @param counted plants that show it, of how many; empty: not noted
 * @param percent a share in percent that stands in the note
 * @param ofLeaf whether the leaf was judged, not plants counted
 * @param ofPlants whether the percent is one of plants
 * @param ladyBeetles a plant, likewise the next two; 0 where not noted
 * @param lacewings larvae
 * @param mummies aphids killed by parasitoids
 */
public record Scouted(
        Optional<Disease> disease,
        OptionalInt leaf,
        Optional<Incidence> counted,
        OptionalDouble percent,
        boolean ofLeaf,
        boolean ofPlants,
        double ladyBeetles,
        double lacewings,
        double mummies) {
    private static final Pattern OF = Pattern.compile("(\\d{1,5}) (?:of|out of) (\\d{1,5})");
    private static final Pattern PERCENT = Pattern.compile("(\\d+(?:\\.\\d+)?) ?(?:%|percent|pct)");
    private static final Pattern OF_PLANTS = Pattern.compile("(?:%|percent|pct) (?:of )?(?:the )?plants");
    private static final Pattern ON_LEAF = Pattern.compile("(?:%|percent|pct) (?:of )?(?:the )?\\w*? ?leaf|severity");
    private static final Pattern LEAF = Pattern.compile("(?:\\bel\\b|ear ?leaf) ?([-+] ?\\d{1,2})?");
    private static final Pattern BELOW =
            Pattern.compile("(\\d|first|second|third|fourth)(?:th|rd|nd|st)? (?:leaf |leaves )?below");
    private static final List<String> ORDINALS = List.of("", "first", "second", "third", "fourth");
    /** Corn seldom bears more leaves than these below and above the ear leaf. */
    private static final int LOWEST_LEAF = -14;

    private static final int HIGHEST_LEAF = 8;

    /** What a note says; refused where it says something that cannot be. */
    public static Scouted of(String written) {
        String note = written.toLowerCase(Locale.ROOT).replace('−', '-').replaceAll("\\s+", " ");
        return new Scouted(
                Disease.findIn(note),
                leaf(note),
                counted(note),
                percent(note),
                ON_LEAF.matcher(note).find(),
                OF_PLANTS.matcher(note).find(),
                number(note, "lady ?(?:beetles?|bugs?)"),
                number(note, "lacewings?(?: larvae)?"),
                number(note, "mumm(?:y|ies)"));
    }

    private static Optional<Incidence> counted(String note) {
        Matcher m = OF.matcher(note);
        return m.find()
                ? Optional.of(new Incidence(Integer.parseInt(m.group(1)), Integer.parseInt(m.group(2))))
                : Optional.empty();
    }

    private static OptionalDouble percent(String note) {
        Matcher m = PERCENT.matcher(note);
        if (!m.find()) {
            return OptionalDouble.empty();
        }
        double percent = Double.parseDouble(m.group(1));
        if (percent > 100) {
            throw EarleafException.of(
                    "share in the note", m.group(), "0 to 100 %", "Write the share of the leaf, or of the plants.");
        }
        return OptionalDouble.of(percent);
    }

    private static OptionalInt leaf(String note) {
        Matcher below = BELOW.matcher(note);
        if (below.find()) {
            String word = below.group(1);
            return OptionalInt.of(-(ORDINALS.contains(word) ? ORDINALS.indexOf(word) : Integer.parseInt(word)));
        }
        Matcher m = LEAF.matcher(note);
        if (!m.find()) {
            return OptionalInt.empty();
        }
        return OptionalInt.of(
                possible(m.group(1) == null ? 0 : Integer.parseInt(m.group(1).replace(" ", "")), m.group()));
    }

    /** @param found as written, for the message */
    static int possible(int leaf, String found) {
        if (leaf < LOWEST_LEAF || leaf > HIGHEST_LEAF) {
            throw EarleafException.of(
                    "leaf",
                    found,
                    LOWEST_LEAF + " to " + HIGHEST_LEAF + ", counted from the ear leaf (0); -3 is the third below it",
                    "Count from the ear leaf, not from the ground.");
        }
        return leaf;
    }

    private static double number(String note, String word) {
        Matcher m = Pattern.compile(word + ":? ?(\\d+(?:\\.\\d+)?)").matcher(note);
        return m.find() ? Double.parseDouble(m.group(1)) : 0;
    }
}
