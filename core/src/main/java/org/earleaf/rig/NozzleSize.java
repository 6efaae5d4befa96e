// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.earleaf.units.Units.M3S_PER_GPM;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.earleaf.units.BundledTable;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * A nozzle size number: tenths of a US gallon a minute of water at 40 psi, written with two digits before the point and
 * the point left out (015 is 1.5 tenths).
 *
 * @param number "05"
 * @param rated_m3s flow of water at 40 psi
 * @param colour of the standard, empty where it was not seen in print; for the eye only, never used to infer a flow
 */
public record NozzleSize(String number, double rated_m3s, Optional<Colour> colour) {
    private static final Pattern DIGITS = Pattern.compile("\\d{1,5}");
    private static final List<NozzleSize> TABLE = BundledTable.rows("iso-10625-sizes.csv").stream()
            .map(row -> ofGpm(row.text("size"), row.number("flow_gpm_40psi"), Colour.find(row.text("colour"))))
            .toList();

    /** Colours of the standard that were seen in print. */
    public enum Colour {
        ORANGE,
        GREEN,
        YELLOW,
        LILAC,
        BLUE,
        RED,
        BROWN,
        GREY,
        WHITE;

        static Optional<Colour> find(String word) {
            return word.isEmpty() ? Optional.empty() : Optional.of(valueOf(word.toUpperCase(Locale.ROOT)));
        }
    }

    private static NozzleSize ofGpm(String number, double gpm, Optional<Colour> colour) {
        return new NozzleSize(number, gpm * M3S_PER_GPM, colour);
    }

    /** Sizes of ISO 10625, smallest first. */
    public static List<NozzleSize> listAll() {
        return TABLE;
    }

    /** Reads "05", "5" or "015". A number that is not in the table is a size all the same: the number is its flow. */
    public static NozzleSize parse(String text, Said where) {
        String number = text.trim();
        if (number.length() == 1) {
            number = "0" + number;
        }
        if (!DIGITS.matcher(number).matches() || Double.parseDouble(number) == 0) {
            throw new EarleafException(Problem.of("nozzle.size-unreadable", where, Said.text(text)));
        }
        String wanted = number;
        return TABLE.stream()
                .filter(size -> size.number().equals(wanted))
                .findFirst()
                .orElseGet(() -> ofGpm(
                        wanted,
                        Double.parseDouble(wanted.substring(0, 2) + "." + wanted.substring(2) + "0") / 10,
                        Optional.empty()));
    }

    /** The size in the table whose rating is nearest by ratio. */
    public static NozzleSize nearest(double rated_m3s) {
        return TABLE.stream()
                .min(Comparator.comparingDouble(size -> Math.abs(Math.log(size.rated_m3s() / rated_m3s))))
                .orElseThrow();
    }

    /** Whether the number stands in the table of the standard. */
    public boolean isListed() {
        return TABLE.contains(this);
    }

    /** Mesh of the screen before it, where one is usual. */
    public Optional<Integer> findScreenMesh() {
        return BundledTable.rows("iso-10625-sizes.csv").stream()
                .filter(row -> number.equals(row.text("size"))
                        && !row.text("screen_mesh").isEmpty())
                .map(row -> Integer.parseInt(row.text("screen_mesh")))
                .findFirst();
    }

    /** Rating in the unit that the number stands for [gal/min at 40 psi]. */
    public double rated_gpm() {
        return rated_m3s / M3S_PER_GPM;
    }

    /** Rated flow at 3 bar [L/min], as metric tables print it. */
    public double flowAt3Bar_lMin() {
        return FlowMath.flowAt_m3s(rated_m3s, 3e5, 1) * 60e3;
    }

    public Said said() {
        return colour.map(c -> Said.of("nozzle.size-colour", "number", number, "colour", c))
                .orElse(Said.of("nozzle.size", "number", number));
    }
}
