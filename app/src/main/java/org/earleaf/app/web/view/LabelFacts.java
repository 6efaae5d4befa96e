// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.earleaf.app.words.Words;
import org.earleaf.label.ActiveIngredient;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelFigure;
import org.earleaf.label.LabelItem;

/** What is known of labels, for pages; the one place where they read it. */
final class LabelFacts {
    private final LabelBook book;

    LabelFacts(LabelBook book) {
        this.book = book;
    }

    /**
     * What a label says for one crop.
     *
     * @param look who entered it and who looked again
     * @param waiting whether it still waits for the second look, so that nothing may be planned by it
     * @param missing needed items that nobody has looked up
     */
    public record Label(
            String product,
            String crop,
            String look,
            boolean waiting,
            String version,
            List<Figure> figures,
            List<String> never,
            List<String> missing) {}

    /** One limit as it was copied. */
    public record Figure(String what, String says) {}

    /** Labels of a product, one for each crop, the newest entry of each. */
    List<Label> of(String product) {
        Map<String, LabelEntry> newest = new LinkedHashMap<>();
        book.entries().stream()
                .filter(e -> e.product().equalsIgnoreCase(product))
                .forEach(e -> newest.put(e.crop(), e));
        return newest.values().stream().map(LabelFacts::label).toList();
    }

    String actives(String product) {
        return book.activesOf(product).stream().map(ActiveIngredient::name).collect(Collectors.joining(", "));
    }

    String groups(String product) {
        TreeSet<String> groups = new TreeSet<>();
        book.activesOf(product).forEach(a -> groups.addAll(a.groups()));
        return String.join(", ", groups);
    }

    private static Label label(LabelEntry e) {
        List<Figure> figures = new ArrayList<>();
        for (LabelItem item : LabelItem.values()) {
            LabelFigure f = e.figure(item);
            if (f.isEntered()) {
                figures.add(new Figure(
                        Phrases.capital(Words.here().say(item)),
                        f.isStated() ? f.entered() : tell("page.label-facts.states-none")));
            }
        }
        LabelEntry.Look look = e.look();
        String said = look.isDone()
                ? tell(
                        look.isSingle() ? "page.label-facts.checked-by-the-same" : "page.label-facts.checked",
                        "entered",
                        look.enteredBy(),
                        "checked",
                        look.checkedBy())
                : tell("page.label-facts.waits", "entered", look.enteredBy());
        return new Label(
                e.product(),
                e.crop(),
                said,
                !look.isDone(),
                e.version(),
                figures,
                List.copyOf(e.neverWith()),
                e.missing().stream().map(Words.here()::say).toList());
    }
}
