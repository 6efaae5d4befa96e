// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Monthly means of a daily station record, as lines of the demo farm's climate.csv. The record has four tab-separated
 * columns: date, highest and lowest temperature and rain in tenths of °C and mm, -9999 where missing.
 */
public final class MonthlyNormals {
    private static final int MISSING = -9999;
    private static final int WET_TENTHS_MM = 3;

    private MonthlyNormals() {}

    /** Prints the lines of the record at the path given. */
    public static void main(String[] args) throws IOException {
        lines(Path.of(args[0])).forEach(System.out::println);
    }

    /** Twelve lines, month, highest, lowest [°C], rain [mm a month], days of at least 0.25 mm. */
    public static List<String> lines(Path station) throws IOException {
        Mean[][] means = new Mean[12][4];
        for (Mean[] month : means) {
            for (int k = 0; k < 4; k++) {
                month[k] = new Mean();
            }
        }
        for (String line : Files.readAllLines(station)) {
            String[] cell = line.split("\t");
            Mean[] month = means[Integer.parseInt(cell[0].substring(4, 6)) - 1];
            for (int k = 0; k < 3; k++) {
                month[k].add(Integer.parseInt(cell[k + 1].trim()));
            }
            int rain = Integer.parseInt(cell[3].trim());
            month[3].add(rain == MISSING ? MISSING : rain >= WET_TENTHS_MM ? 1 : 0);
        }
        List<String> lines = new ArrayList<>();
        for (int m = 0; m < 12; m++) {
            double days = m == 1 ? 28.25 : java.time.Month.of(m + 1).length(false);
            lines.add(String.format(
                    Locale.ROOT,
                    "%d,%.1f,%.1f,%.1f,%.1f",
                    m + 1,
                    means[m][0].value() / 10,
                    means[m][1].value() / 10,
                    means[m][2].value() / 10 * days,
                    means[m][3].value() * days));
        }
        return lines;
    }

    private static final class Mean {
        private double sum;
        private int count;

        void add(int value) {
            if (value != MISSING) {
                sum += value;
                count++;
            }
        }

        double value() {
            return sum / count;
        }
    }
}
