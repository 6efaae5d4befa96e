// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.earleaf.exchange.TypedLabel.Line;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelItem;
import org.earleaf.units.Said;

/** A label to be typed once more: every item, and nothing of the first entry but its product and crop. */
public record AgainView(String product, String crop, Typed typed, List<Item> items, List<Integer> actives) {
    private static final int ACTIVES = 4;

    /** One limit as it stands in the form. */
    public record Item(String word, String words, String hint, String value) {}

    /** What was typed, by the names of the form. */
    public record Typed(Map<String, String> cells) {
        public Typed {
            cells = Map.copyOf(cells);
        }

        public static Typed of(Map<String, String> form) {
            return new Typed(form);
        }

        public String get(String name) {
            return cells.getOrDefault(name, "").strip();
        }

        public String person() {
            return get("person");
        }

        /** As rows of labels.csv. */
        public List<Line> lines() {
            List<Line> lines = new ArrayList<>();
            add(lines, "version", "", "version");
            add(lines, "season_is", "", "season_is");
            for (int k = 1; k <= ACTIVES; k++) {
                String of = get("active" + k);
                add(lines, "content", of, "content" + k);
                add(lines, "counts", of, "counts" + k);
                parts("group" + k).forEach(g -> lines.add(new Line("group", of, g)));
                add(lines, "active_single", of, "active_single" + k);
                add(lines, "active_season", of, "active_season" + k);
            }
            for (LabelItem item : LabelItem.values()) {
                add(lines, item.word(), "", item.word());
            }
            parts("never_with").forEach(w -> lines.add(new Line("never_with", "", w)));
            parts("after").forEach(w -> lines.add(new Line("after", "", w)));
            parts("plant_back").forEach(p -> lines.add(plantBack(p)));
            return lines;
        }

        private void add(List<Line> lines, String item, String of, String name) {
            if (!get(name).isEmpty()) {
                lines.add(new Line(item, of, get(name)));
            }
        }

        private List<String> parts(String name) {
            return Arrays.stream(get(name).split(","))
                    .map(String::strip)
                    .filter(p -> !p.isEmpty())
                    .toList();
        }

        /** "alfalfa 30 days" */
        private static Line plantBack(String said) {
            int gap = said.indexOf(' ');
            return gap < 0
                    ? new Line("plant_back", said, "")
                    : new Line("plant_back", said.substring(0, gap), said.substring(gap + 1));
        }
    }

    public static Typed empty(String person) {
        return new Typed(Map.of("person", person));
    }

    public static AgainView of(LabelEntry first, Typed typed) {
        List<Item> items = new ArrayList<>();
        for (LabelItem item : LabelItem.values()) {
            Said like = item.example(first.dry(), first.crop());
            org.earleaf.app.words.Words words = org.earleaf.app.words.Words.here();
            String hint = item.kind() == LabelItem.Kind.YES_NO
                    ? words.say(like)
                    : words.say("label.or-none", "example", like);
            items.add(new Item(item.word(), Phrases.capital(words.say(item)), hint, typed.get(item.word())));
        }
        List<Integer> actives = new ArrayList<>();
        for (int k = 1; k <= ACTIVES; k++) {
            actives.add(k);
        }
        return new AgainView(first.product(), first.crop(), typed, items, actives);
    }
}
