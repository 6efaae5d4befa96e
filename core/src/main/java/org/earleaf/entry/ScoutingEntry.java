// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.earleaf.field.Disease;
import org.earleaf.field.Incidence;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;

/** What was counted on plants, from the parts of a draft. */
final class ScoutingEntry {
    static final String FOUND = "found";
    static final String POSITIVE = "positive";
    static final String PLANTS = "plants";
    static final String LEAF = "leaf";
    static final String LADY_BEETLES = "lady_beetles";
    static final String LACEWINGS = "lacewings";
    static final String MUMMIES = "mummies";
    static final String ABOVE_THRESHOLD = "above_threshold";
    static final List<String> PARTS =
            List.of(FOUND, POSITIVE, PLANTS, LEAF, LADY_BEETLES, LACEWINGS, MUMMIES, ABOVE_THRESHOLD);

    private static final List<String> OF_INSECTS = List.of(LADY_BEETLES, LACEWINGS, MUMMIES, ABOVE_THRESHOLD);
    private static final int LONGEST_NAME = 60;

    private final Draft draft;
    private final Reading.Kind kind;
    private final Gathered gathered;

    private ScoutingEntry(Draft draft, Reading.Kind kind, Gathered gathered) {
        this.draft = draft;
        this.kind = kind;
        this.gathered = gathered;
    }

    static Scouted of(Draft draft, Reading.Kind kind, Scouted.By by, Gathered gathered) {
        return new ScoutingEntry(draft, kind, gathered).scouted(by);
    }

    private Scouted scouted(Scouted.By by) {
        List<String> wrong = PARTS.stream()
                .filter(draft::has)
                .filter(part -> !kind.isOfPlants()
                        || kind == Reading.Kind.INSECTS && part.equals(LEAF)
                        || kind == Reading.Kind.LESIONS && OF_INSECTS.contains(part))
                .toList();
        if (!wrong.isEmpty()) {
            String part = wrong.get(0);
            gathered.wrong("count.not-of-this-kind", part, draft.text(part), "kind", kind, "part", part);
            return Scouted.NOTHING;
        }
        boolean insects = kind == Reading.Kind.INSECTS;
        return new Scouted(
                insects ? Optional.empty() : disease(),
                insects ? insect() : "",
                leaf(),
                counted(),
                by,
                new Scouted.Enemies(enemies(LADY_BEETLES), enemies(LACEWINGS), enemies(MUMMIES)),
                isAboveThreshold());
    }

    private Optional<Disease> disease() {
        String name = draft.text(FOUND);
        Optional<Disease> disease = Disease.find(name);
        if (disease.isEmpty() && !name.isEmpty()) {
            gathered.wrong(
                    "disease.unknown",
                    FOUND,
                    name,
                    "diseases",
                    Stream.of(Disease.values()).map(Disease::word).toList());
        }
        return disease;
    }

    private String insect() {
        String name = draft.text(FOUND);
        if (name.length() > LONGEST_NAME) {
            gathered.wrong("insect.name-too-long", FOUND, name.substring(0, LONGEST_NAME), "most", LONGEST_NAME);
        }
        return name;
    }

    /** Plants that show it, of how many; empty: not counted. */
    private Optional<Incidence> counted() {
        if (!draft.has(POSITIVE) && !draft.has(PLANTS)) {
            return Optional.empty();
        }
        OptionalInt seen = whole(PLANTS);
        OptionalInt with = whole(POSITIVE);
        if (seen.isEmpty() || with.isEmpty()) {
            return Optional.empty();
        }
        if (seen.getAsInt() < 1) {
            gathered.wrong("count.no-plants", PLANTS, draft.text(PLANTS));
            return Optional.empty();
        }
        if (with.getAsInt() > seen.getAsInt()) {
            gathered.wrong("count.more-than-looked-at", POSITIVE, draft.text(POSITIVE), "plants", seen.getAsInt());
            return Optional.empty();
        }
        return Optional.of(new Incidence(with.getAsInt(), seen.getAsInt()));
    }

    private OptionalInt whole(String part) {
        String text = draft.text(part);
        if (text.matches("[0-9]{1,5}")) {
            return OptionalInt.of(Integer.parseInt(text));
        }
        gathered.wrong("count.not-whole", part, text, "part", part);
        return OptionalInt.empty();
    }

    private OptionalInt leaf() {
        String text = draft.text(LEAF).replace('\u2212', '-');
        if (text.isEmpty()) {
            return OptionalInt.empty();
        }
        int leaf = text.matches("[-+]?[0-9]{1,2}") ? Integer.parseInt(text) : Integer.MAX_VALUE;
        if (leaf < Scouted.LOWEST_LEAF || leaf > Scouted.HIGHEST_LEAF) {
            gathered.wrong("leaf.unknown", LEAF, text, "lowest", Scouted.LOWEST_LEAF, "highest", Scouted.HIGHEST_LEAF);
            return OptionalInt.empty();
        }
        return OptionalInt.of(leaf);
    }

    private double enemies(String part) {
        return draft.has(part) ? gathered.number(() -> Ranges.ENEMIES.read(draft.text(part), part)) : 0;
    }

    private boolean isAboveThreshold() {
        if (!draft.has(ABOVE_THRESHOLD)) {
            return false;
        }
        Optional<Boolean> said = YesNo.find(draft.text(ABOVE_THRESHOLD));
        if (said.isEmpty()) {
            gathered.wrong("word.not-yes-or-no", ABOVE_THRESHOLD, draft.text(ABOVE_THRESHOLD));
        }
        if (said.orElse(false) && draft.text(FOUND).isEmpty()) {
            gathered.wrong("insect.not-named", FOUND, "");
        }
        return said.orElse(false);
    }

    /** Words of a part for messages and tables: "lady beetles". */
    static String words(String part) {
        return part.replace('_', ' ').toLowerCase(Locale.ROOT);
    }
}
