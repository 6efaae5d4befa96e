// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.earleaf.decide.Option;

/**
 * How an address names an option: by what it is, never by its place in a list, so that an old address can only lead to
 * the same pass or to none.
 */
public final class Choice {
    private Choice() {}

    public static String key(Option o) {
        String facts = o.date() + " " + o.product() + " " + o.placement() + " "
                + Long.toString((long) (o.nitrogen_kgHa() * 10 + .5)) + " " + o.rig();
        return facts.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    }

    public static Optional<Option> find(List<Option> options, String key) {
        return options.stream().filter(o -> key(o).equals(key)).findFirst();
    }
}
