// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.earleaf.units.EarleafException;

/**
 * A count of plants as a form, a command or a table asks for it part by part, all as text; empty is "not given". It is
 * kept in the words of a note, which {@link Scouted} reads.
 *
 * @param found name of the disease, or of the insect
 * @param shows plants that show it
 * @param plants plants looked at
 * @param leaf highest leaf with lesions, counted from the ear leaf: -3
 */
public record ScoutingCount(String found, String shows, String plants, String leaf) {
    /** What is wrong stands under these names: found, positive, plants, leaf. */
    public static final String FOUND = "found";

    public static final String POSITIVE = "positive";
    public static final String PLANTS = "plants";
    public static final String LEAF = "leaf";

    /** Nothing counted. */
    public static final ScoutingCount NONE = new ScoutingCount("", "", "", "");

    public ScoutingCount {
        found = found.strip();
        shows = shows.strip();
        plants = plants.strip();
        leaf = leaf.strip();
    }

    public boolean isEmpty() {
        return Stream.of(found, shows, plants, leaf).allMatch(String::isEmpty);
    }

    /** Plants that show it, of how many; empty: not counted. Refused where it cannot be. */
    public Optional<Incidence> incidence() {
        if (shows.isEmpty() && plants.isEmpty()) {
            return Optional.empty();
        }
        int seen = whole(PLANTS, plants, "plants looked at");
        int with = whole(POSITIVE, shows, "plants that show it");
        if (seen < 1 || with > seen) {
            throw EarleafException.of(
                    seen < 1 ? PLANTS : POSITIVE,
                    with + " of " + seen,
                    "no more plants that show it than were looked at, and at least one of those",
                    "Check both numbers.");
        }
        return Optional.of(new Incidence(with, seen));
    }

    private static int whole(String where, String text, String what) {
        if (text.matches("\\d{1,5}")) {
            return Integer.parseInt(text);
        }
        String found = text.isEmpty() ? "nothing" : "\"" + text + "\"";
        throw EarleafException.of(
                where, found, "a whole number of " + what, "Give both: plants with it, and looked at.");
    }

    /** The note that says all this, with what was written besides; refused where something cannot be. */
    public String note(Reading.Kind kind, String besides) {
        if (isEmpty()) {
            return besides.strip();
        }
        if (kind != Reading.Kind.LESIONS && kind != Reading.Kind.INSECTS) {
            throw EarleafException.of(
                    found.isEmpty() ? PLANTS : FOUND,
                    "a count of plants for " + kind.word(),
                    "nothing, or the kind lesions or insects",
                    "Leave it empty.");
        }
        String counted = incidence().map(i -> i.toString()).orElse("");
        String note = Stream.of(name(kind), counted, leafWords(kind), besides.strip())
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(", "));
        Scouted.of(note);
        return note;
    }

    private String name(Reading.Kind kind) {
        if (kind == Reading.Kind.INSECTS || found.isEmpty()) {
            return found;
        }
        return Disease.findIn(found)
                .map(Disease::word)
                .orElseThrow(() -> EarleafException.of(
                        FOUND, "\"" + found + "\"", "one of " + Disease.words(), "Name one of these diseases."));
    }

    private String leafWords(Reading.Kind kind) {
        if (leaf.isEmpty()) {
            return "";
        }
        if (kind == Reading.Kind.INSECTS || !leaf.replace('−', '-').matches("[-+]?\\d{1,2}")) {
            throw EarleafException.of(
                    LEAF,
                    "\"" + leaf + "\"",
                    kind == Reading.Kind.INSECTS
                            ? "nothing with insects"
                            : "a leaf counted from the ear leaf: 0 it, -3 the third below, 1 the one above",
                    "Write it like -3.");
        }
        int from = Scouted.possible(Integer.parseInt(leaf.replace('−', '-')), leaf);
        return "ear leaf" + (from == 0 ? "" : from < 0 ? " " + from : " +" + from);
    }
}
