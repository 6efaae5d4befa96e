// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;

/** Finds what a label will not have in the same tank: by product, active ingredient, group or class. */
public final class MixWords {
    private MixWords() {}

    /** Other parts of the mix that the label of one forbids, by name. */
    public static List<String> forbidden(LabelEntry entry, LabelWork.Part part, LabelWork work, LabelBook book) {
        Set<String> never = new TreeSet<>();
        entry.neverWith().forEach(word -> never.add(plain(word)));
        List<String> found = new ArrayList<>();
        for (LabelWork.Part other : work.parts()) {
            boolean same = other.product().equalsIgnoreCase(part.product());
            if (!same && of(other.product(), other.classes(), book).stream().anyMatch(never::contains)) {
                found.add(other.product());
            }
        }
        return found;
    }

    /** Every word by which a label or rule may name a product: itself, its classes, what works in it and its groups. */
    public static Set<String> of(String product, Set<String> classes, LabelBook book) {
        Set<String> words = new TreeSet<>();
        words.add(plain(product));
        classes.forEach(c -> words.add(plain(c)));
        book.activesOf(product).forEach(a -> {
            words.add(plain(a.name()));
            a.groups().forEach(g -> words.add(plain(g)));
        });
        return words;
    }

    public static String plain(String word) {
        return word.strip().toLowerCase(Locale.ROOT);
    }
}
