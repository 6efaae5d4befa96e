// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.field.Disease;
import org.earleaf.field.Incidence;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;

/**
 * The note of a lesion or insect count of an earlier version, which held the count in words: "gray leaf spot, 58 of 100
 * plants, ear leaf -3, low spots first". Only whole parts between commas, worded as those versions and their reference
 * worded them, are taken; everything else stays a note. Used once, when an older file is opened.
 *
 * @param value of the reading; a share where the note said that it is one
 * @param note what remains
 */
record OldNote(double value, String note, Scouted scouted) {
    private static final Pattern COUNTED = Pattern.compile("([0-9]{1,5}) of ([0-9]{1,5}) plants");
    private static final Pattern LEAF = Pattern.compile("ear leaf(?: ([+-][0-9]{1,2}))?");
    private static final Pattern OF_LEAF = Pattern.compile("([0-9]{1,3}(?:\\.[0-9]+)?) % of the ear leaf");
    private static final Pattern OF_PLANTS = Pattern.compile("([0-9]{1,3}(?:\\.[0-9]+)?) % of plants");
    private static final Pattern ENEMIES =
            Pattern.compile("(lady beetles|lacewings|mummies) ([0-9]{1,4}(?:\\.[0-9]+)?)");

    static OldNote of(Reading.Kind kind, double value, String note) {
        return new Parts(kind, value).read(note);
    }

    private static final class Parts {
        private final boolean insects;
        private final List<String> rest = new ArrayList<>();
        private double value;
        private Optional<Disease> disease = Optional.empty();
        private String insect = "";
        private OptionalInt leaf = OptionalInt.empty();
        private Optional<Incidence> counted = Optional.empty();
        private Scouted.By by = Scouted.By.PER_PLANT;
        private Scouted.Enemies enemies = Scouted.Enemies.NONE;
        private boolean above;

        private Parts(Reading.Kind kind, double value) {
            this.insects = kind == Reading.Kind.INSECTS;
            this.value = value;
        }

        private OldNote read(String note) {
            String[] parts = note.split(", ");
            for (int k = 0; k < parts.length; k++) {
                boolean named = k == 0 && isName(parts, parts[k]);
                if (!named && !isTaken(parts[k].toLowerCase(Locale.ROOT))) {
                    rest.add(parts[k]);
                }
            }
            Scouted seen = new Scouted(disease, insect, leaf, counted, by, enemies, above);
            return new OldNote(value, String.join(", ", rest), seen);
        }

        /** The name stands first: a disease of the list, or an insect before its count. */
        private boolean isName(String[] parts, String first) {
            if (insects) {
                boolean beforeCount =
                        parts.length > 1 && COUNTED.matcher(parts[1]).matches();
                if (beforeCount || Scouted.isAphids(first) || first.equals("another insect")) {
                    insect = COUNTED.matcher(first).matches() ? "" : first;
                }
                return !insect.isEmpty();
            }
            disease = Disease.find(first);
            return disease.isPresent();
        }

        private boolean isTaken(String part) {
            Matcher of = COUNTED.matcher(part);
            if (counted.isEmpty() && of.matches()) {
                int shows = Integer.parseInt(of.group(1));
                int plants = Integer.parseInt(of.group(2));
                counted = plants > 0 && shows <= plants ? Optional.of(new Incidence(shows, plants)) : Optional.empty();
                return counted.isPresent();
            }
            return insects ? isOfInsects(part) : isOfLesions(part);
        }

        private boolean isOfLesions(String part) {
            Matcher m = LEAF.matcher(part);
            if (m.matches()) {
                leaf = OptionalInt.of(m.group(1) == null ? 0 : Integer.parseInt(m.group(1)));
                return true;
            }
            Matcher severity = OF_LEAF.matcher(part);
            if (severity.matches()) {
                by = Scouted.By.OF_LEAF;
                leaf = OptionalInt.of(0);
                value = Double.parseDouble(severity.group(1)) / 100;
                return true;
            }
            Matcher share = OF_PLANTS.matcher(part);
            if (share.matches()) {
                by = Scouted.By.OF_PLANTS;
                value = Double.parseDouble(share.group(1)) / 100;
            }
            return share.matches();
        }

        private boolean isOfInsects(String part) {
            Matcher m = ENEMIES.matcher(part);
            if (m.matches()) {
                double each = Double.parseDouble(m.group(2));
                enemies = switch (m.group(1)) {
                    case "lady beetles" -> new Scouted.Enemies(each, enemies.lacewings(), enemies.mummies());
                    case "lacewings" -> new Scouted.Enemies(enemies.ladyBeetles(), each, enemies.mummies());
                    default -> new Scouted.Enemies(enemies.ladyBeetles(), enemies.lacewings(), each);
                };
                return true;
            }
            above |= part.equals("above the threshold");
            return part.equals("above the threshold");
        }
    }
}
