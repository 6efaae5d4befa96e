// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

/**
 * How a fit is to run: the folder of measured corn, then words and their values.
 *
 * @param without farm left out, empty: none
 * @param seed another one starts another search
 * @param rounds most generations of the search
 * @param minutes after which it ends whatever the rounds; what is found then depends on the machine
 */
record FitOptions(String without, int seed, int rounds, double minutes) {
    private static final FitOptions USUAL = new FitOptions("", 3, 150, 30);

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
            case "--without" -> new FitOptions(value, seed, rounds, minutes);
            case "--seed" -> new FitOptions(without, Integer.parseInt(value), rounds, minutes);
            case "--rounds" -> new FitOptions(without, seed, Integer.parseInt(value), minutes);
            case "--minutes" -> new FitOptions(without, seed, rounds, Double.parseDouble(value));
            default ->
                throw new IllegalArgumentException("no option " + word
                        + "; there are --without FARM, --seed NUMBER, --rounds NUMBER and --minutes NUMBER");
        };
    }
}
