// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * One draft that is refused, as each door takes it.
 *
 * @param code of the rule, and of a range the number that it is about
 * @param doors by name: file, command, page; a door that has no such part is not among them
 */
record Refusal(String kind, String draft, String code, Map<String, Door> doors) {
    /** Gives a draft to a door and tells the codes with which it is refused. */
    interface Door {
        Set<String> refuses(RefusedAt at) throws Exception;
    }

    static final String FILE = "file";
    static final String COMMAND = "command";
    static final String PAGE = "page";

    private static final List<String> READING_COLUMNS = List.of(
            "field",
            "date",
            "kind",
            "value",
            "unit",
            "zone",
            "top",
            "bottom",
            "position",
            "note",
            "found",
            "positive",
            "plants",
            "leaf",
            "lady_beetles",
            "lacewings",
            "mummies",
            "above_threshold");
    private static final List<String> PASS_COLUMNS =
            List.of("field", "date", "product", "rate", "rate_unit", "placement", "zone", "inhibitor");
    /** A pass made on Mill Eighty that every door takes. */
    private static final Map<String, String> MADE = Map.of(
            "field",
            "Mill Eighty",
            "date",
            "2026-06-10",
            "product",
            "UAN 32",
            "rate",
            "40",
            "rate_unit",
            "lb N/ac",
            "placement",
            "row-base dribble");

    @Override
    public String toString() {
        return kind + " " + draft + " -> " + code + " " + doors.keySet();
    }

    Refusal without(String... names) {
        Map<String, Door> fewer = new TreeMap<>(doors);
        for (String name : names) {
            fewer.remove(name);
        }
        return new Refusal(kind, draft, code, fewer);
    }

    static Map<String, String> parts(Map<String, String> usual, String... pairs) {
        Map<String, String> parts = new LinkedHashMap<>(usual);
        for (int k = 0; k < pairs.length; k += 2) {
            parts.put(pairs[k], pairs[k + 1]);
        }
        return parts;
    }

    /** A soil test of Mill Eighty with these parts otherwise. */
    static Refusal reading(String code, String... pairs) {
        Map<String, String> usual =
                Map.of("field", "Mill Eighty", "date", "2026-06-10", "kind", "nitrate", "value", "12", "unit", "ppm");
        Map<String, String> draft = parts(usual, pairs);
        Map<String, Door> doors = new TreeMap<>();
        doors.put(FILE, at -> at.file("readings.csv", rows(READING_COLUMNS, draft)));
        doors.put(COMMAND, at -> at.command(readArguments(draft, at)));
        doors.put(PAGE, at -> at.page("/walk", walkBoxes(draft)));
        return new Refusal("reading", String.join(" ", pairs), code, doors);
    }

    /** Header and one row of a file. */
    static String rows(List<String> columns, Map<String, String> draft) {
        List<String> names = columns.stream()
                .map(c -> c.equals("top") || c.equals("bottom") ? c + "_in" : c)
                .toList();
        List<String> cells = columns.stream()
                .map(c -> draft.getOrDefault(c, "").replaceFirst(" in$", ""))
                .map(cell -> "\"" + cell + "\"")
                .toList();
        return String.join(",", names) + "\n" + String.join(",", cells) + "\n";
    }

    private static String[] readArguments(Map<String, String> draft, RefusedAt at) {
        List<String> args = new ArrayList<>(List.of("read", "--json", "--farm", at.farm()));
        draft.forEach((part, text) -> {
            switch (part) {
                case "date" -> args.add("--on=" + text);
                case "value" -> args.add("--value=" + (text + " " + draft.getOrDefault("unit", "")).strip());
                case "unit" -> {}
                case "above_threshold" -> args.add("--above-threshold");
                case "sure" -> args.add("--sure");
                default -> args.add("--" + part.replace('_', '-') + "=" + text);
            }
        });
        return args.toArray(String[]::new);
    }

    private static Map<String, String> walkBoxes(Map<String, String> draft) {
        Map<String, String> boxes = new LinkedHashMap<>(draft);
        boxes.remove("field");
        boxes.put("place", "mill-eighty");
        if (draft.containsKey("top") || draft.containsKey("bottom")) {
            boxes.put("depth", mm(draft.getOrDefault("top", "")) + "-" + mm(draft.getOrDefault("bottom", "")));
        }
        boxes.put("ladyBeetles", draft.getOrDefault("lady_beetles", ""));
        boxes.put("aboveThreshold", draft.getOrDefault("above_threshold", ""));
        return boxes;
    }

    private static String mm(String inches) {
        String number = inches.replaceFirst(" in$", "");
        return number.matches("[0-9.]+(e[0-9]+)?") ? String.valueOf(25.4 * Double.parseDouble(number)) : number;
    }

    /** A pass made on Mill Eighty with these parts otherwise; its page knows the day, the rate and the ground alone. */
    static Refusal pass(String code, String... pairs) {
        Map<String, String> draft = parts(MADE, pairs);
        Map<String, Door> doors = new TreeMap<>();
        doors.put(FILE, at -> at.file("passes.csv", rows(PASS_COLUMNS, draft)));
        doors.put(COMMAND, at -> at.command(madeArguments(draft, at)));
        boolean onPage = Set.of("date", "rate", "rate_unit")
                .containsAll(parts(Map.of(), pairs).keySet());
        if (onPage) {
            doors.put(PAGE, at -> at.page("/loads/mill-eighty", madeBoxes(draft)));
        }
        return new Refusal("pass", String.join(" ", pairs), code, doors);
    }

    private static String[] madeArguments(Map<String, String> draft, RefusedAt at) {
        List<String> args =
                new ArrayList<>(List.of("record", "made", "--json", "--farm", at.farm(), "--by", "Ann Demo"));
        draft.forEach((part, text) -> {
            switch (part) {
                case "date" -> args.add("--on=" + text);
                case "rate" -> args.add("--rate=" + (text + " " + draft.get("rate_unit")).strip());
                case "rate_unit" -> {}
                default -> args.add("--" + part + "=" + text);
            }
        });
        return args.toArray(String[]::new);
    }

    private static Map<String, String> madeBoxes(Map<String, String> draft) {
        Map<String, String> boxes = new LinkedHashMap<>();
        boxes.put("person", "Ann Demo");
        boxes.put("date", draft.getOrDefault("date", ""));
        boxes.put("rate", (draft.getOrDefault("rate", "") + " " + draft.getOrDefault("rate_unit", "")).strip());
        for (String part : List.of("area", "start", "end")) {
            boxes.put(part, draft.getOrDefault(part, ""));
        }
        return boxes;
    }

    /** What is told of a pass made; there is no file of it. */
    static Refusal record(String code, String part, String text) {
        Map<String, String> draft = parts(MADE, part, text);
        Map<String, Door> doors = new TreeMap<>();
        doors.put(COMMAND, at -> at.command(madeArguments(draft, at)));
        if (!part.equals("amount")) {
            doors.put(PAGE, at -> at.page("/loads/mill-eighty", madeBoxes(draft)));
        }
        return new Refusal("record", part + " " + text, code, doors);
    }

    /** A load of the recipe of this test; the page makes one of its own recipes. */
    static Refusal load(String code, String part, String text) {
        Map<String, Door> doors = new TreeMap<>();
        doors.put(COMMAND, at -> {
            Map<String, String> options = parts(
                    Map.of("recipe", at.recipe(), "area", "72 ac", "rate", "15 gal/ac", "tank", "1200 gal"),
                    part,
                    text);
            List<String> args = new ArrayList<>(List.of("load", "--json"));
            options.forEach((name, value) -> args.add("--" + name + "=" + value));
            return at.command(args.toArray(String[]::new));
        });
        Map<String, String> boxes = parts(
                Map.of(
                        "recipe",
                        "Leaf pass",
                        "place",
                        "mill-eighty",
                        "rig",
                        "tall sprayer",
                        "placement",
                        "over the top",
                        "date",
                        "2026-06-30",
                        "area",
                        "60 ac",
                        "rate",
                        "15 gal/ac",
                        "person",
                        "Ann Demo"),
                part,
                text);
        if (Set.of("area", "rate", "heel", "speed", "height", "boom", "water", "date", "placement", "rig", "recipe")
                .contains(part)) {
            doors.put(PAGE, at -> at.page("/loads/new", boxes));
        }
        boolean onPageAlone = Set.of("height", "boom", "water", "date", "placement", "rig", "recipe")
                .contains(part);
        if (onPageAlone) {
            doors.remove(COMMAND);
        }
        return new Refusal("load", part + " " + text, code, doors);
    }

    /** A rig: as a row of its file, and as the machine that outlets are looked for; its page has no such box. */
    static Refusal rig(String code, String column, String cell, String option, String text) {
        Map<String, Door> doors = new TreeMap<>();
        if (!column.isEmpty()) {
            doors.put(FILE, at -> at.file("rigs.csv", edited(at.text("rigs.csv"), column, cell)));
        }
        if (!option.isEmpty()) {
            doors.put(COMMAND, at -> {
                Map<String, String> options = parts(Map.of("boom", "90 ft", "rate", "15 gal/ac"), option, text);
                List<String> args = new ArrayList<>(List.of("rig", "--find", "--json"));
                options.forEach((name, value) -> args.add("--" + name + "=" + value));
                return at.command(args.toArray(String[]::new));
            });
        }
        if (Set.of("rate", "speed", "rows", "placement").contains(option)) {
            doors.put(
                    PAGE,
                    at -> at.page("/rigs", parts(Map.of("rig", "tall sprayer", "rate", "15 gal/ac"), option, text)));
        }
        return new Refusal("rig", column + " " + cell + " " + option + " " + text, code, doors);
    }

    /** What is asked of a boom beyond one outlet; there is no file of it. */
    static Refusal boom(String code, String option, String text) {
        Map<String, Door> doors = new TreeMap<>();
        doors.put(COMMAND, at -> {
            Map<String, String> options = parts(
                    Map.of(
                            "rate",
                            "15 gal/ac",
                            "speed",
                            "10 mph",
                            "width",
                            "20 in",
                            "size",
                            "08",
                            "pressure",
                            "40 psi"),
                    option,
                    text);
            if (!option.equals("pulses")) {
                options.remove("pressure");
            }
            List<String> args = new ArrayList<>(List.of("rig", "--json"));
            options.forEach((name, value) -> args.add("--" + name + "=" + value));
            return at.command(args.toArray(String[]::new));
        });
        return new Refusal("boom", option + " " + text, code, doors);
    }

    /** A recipe in a file of its own, of which a load is asked for. */
    static Refusal recipe(String code, String line) {
        Map<String, Door> doors = new TreeMap<>();
        doors.put(
                COMMAND,
                at -> at.command(
                        "load",
                        "--json",
                        "--recipe=" + at.recipe(line),
                        "--area=72 ac",
                        "--rate=15 gal/ac",
                        "--tank=1200 gal"));
        return new Refusal("recipe", line, code, doors);
    }

    /** A cell of a file that has no other door. */
    static Refusal cell(String code, String file, String column, String cell) {
        Map<String, Door> doors = new TreeMap<>();
        doors.put(FILE, at -> at.file(file, edited(at.text(file), column, cell)));
        return new Refusal(file, column + " " + cell, code, doors);
    }

    /** A key of farm.csv. */
    static Refusal key(String code, String key, String value) {
        Map<String, Door> doors = new TreeMap<>();
        doors.put(FILE, at -> {
            String text = at.text("farm.csv");
            String changed = text.replaceFirst("(?m)^" + key + ",.*$", key + "," + value);
            return at.file("farm.csv", changed.equals(text) ? text + key + "," + value + "\n" : changed);
        });
        return new Refusal("farm.csv", key + " " + value, code, doors);
    }

    /** The first row of a file with another cell. */
    private static String edited(String text, String column, String cell) {
        String[] lines = text.split("\n");
        List<String> header = List.of(lines[0].split(","));
        String[] cells = lines[1].split(",", -1);
        cells[header.indexOf(column)] = "\"" + cell + "\"";
        lines[1] = String.join(",", cells);
        return String.join("\n", lines) + "\n";
    }
}
