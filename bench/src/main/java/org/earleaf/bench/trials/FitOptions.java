// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.List;

/**
 * How a fit is to run: the folder of measured corn, then words and their values.
 *
 * @param without farm left out, empty: none
 * @param seed another one starts another search
 * @param rounds most generations of the search
 * @param given when the nitrogen of the trials is taken to have been given: at planting, on 10 June or either, each
 *     counting alike
 * @param minutes after which it ends whatever the rounds; what is found then depends on the machine
 */
record FitOptions(String without, int seed, int rounds, List<Situation> given, double minutes) {
    private static final FitOptions USUAL = new FitOptions("", 3, 150, List.of(Situation.PLANTING), 30);

    static FitOptions of(String[] args) {
        FitOptions options = USUAL;
        for (int k = 1; k + 1 < args.length; k += 2) {
            options = options.with(args[k], args[k + 1]);
        }
        if (args.length % 2 == 0) {
            throw new IllegalArgumentException("no value behind " + args[args.length - 1]);
        }
        return options;
    }

    private FitOptions with(String word, String value) {
        return switch (word) {
            case "--without" -> new FitOptions(value, seed, rounds, given, minutes);
            case "--seed" -> new FitOptions(without, Integer.parseInt(value), rounds, given, minutes);
            case "--rounds" -> new FitOptions(without, seed, Integer.parseInt(value), given, minutes);
            case "--minutes" -> new FitOptions(without, seed, rounds, given, Double.parseDouble(value));
            case "--given" -> new FitOptions(without, seed, rounds, given(value), minutes);
            default ->
                throw new IllegalArgumentException("no option " + word
                        + "; there are --without FARM, --seed NUMBER, --rounds NUMBER, --given planting|june|either"
                        + " and --minutes NUMBER");
        };
    }

    private static List<Situation> given(String value) {
        return switch (value) {
            case "planting" -> List.of(Situation.PLANTING);
            case "june" -> List.of(Situation.JUNE);
            case "either" -> List.of(Situation.PLANTING, Situation.JUNE);
            default ->
                throw new IllegalArgumentException(
                        "--given " + value + "; expected planting, june or either: when the nitrogen was given");
        };
    }
}
