// SPDX-License-Identifier: Apache-2.0
package org.earleaf.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Threshold and patches beside scikit-image 0.26.0 on the same pixels: label(connectivity=1), regionprops,
 * threshold_otsu. Its pixels are points, ours squares, which shows in the length of small patches. They come from the linear congruential generator of Knuth's MMIX, the same in both.
 */
class StainsTest {
    private long state;

    private long next() {
        state = state * 6364136223846793005L + 1442695040888963407L;
        return state >>> 33;
    }

    @ParameterizedTest
    @CsvSource({
        "1, 97, 61, 30, 774, 23, 7590, , 70",
        "2, 200, 150, 45, 2709, 167, 312473, 1.369279, 157",
        "3, 128, 128, 60, 508, 3414, 14984715, 1.605312, 62",
        "4, 300, 40, 10, 954, 12, 1910, , 63"
    })
    void patches_of_random_pixels(
            int seed, int width, int height, int share, int n, int largest, long squares, Double length, int cut) {
        state = seed;
        boolean[] pixels = new boolean[width * height];
        for (int k = 0; k < pixels.length; k++) {
            pixels[k] = next() % 100 < share;
        }
        List<Stain> stains = Patches.of(new StainMask(width, height, pixels)).stains();
        assertThat(stains).hasSize(n);
        Stain big = stains.stream().max(Comparator.comparing(Stain::area_px)).orElseThrow();
        assertThat(big.area_px()).isEqualTo(largest);
        assertThat(stains.stream()
                        .mapToLong(s -> (long) s.area_px() * s.area_px())
                        .sum())
                .isEqualTo(squares);
        assertThat(stains.stream().filter(Stain::cut)).hasSize(cut);
        if (length != null) {
            assertThat(big.length()).isCloseTo(length, within(1e-3 * length));
        }
    }

    @ParameterizedTest
    @CsvSource({"5, 79", "6, 79", "7, 79"})
    void threshold_of_two_kinds(int seed, int threshold) {
        state = seed;
        int[] histogram = new int[256];
        for (int k = 0; k < 20_000; k++) {
            long v = next();
            histogram[(int) (v % 10 < 3 ? v / 10 % 60 + 20 : v / 10 % 90 + 110)]++;
        }
        assertThat(Otsu.threshold(histogram)).isEqualTo(threshold);
    }

    @ParameterizedTest
    @CsvSource({"5, 73", "6, 73", "7, 73"})
    void threshold_of_one_hump(int seed, int threshold) {
        state = seed;
        int[] histogram = new int[256];
        for (int k = 0; k < 20_000; k++) {
            long v = next();
            histogram[(int) (v / 7 % 50 + v / 350 % 50 + v / 17500 % 50)]++;
        }
        assertThat(Otsu.threshold(histogram)).isEqualTo(threshold);
    }

    @Test
    void one_value_has_no_threshold() {
        assertThat(Otsu.threshold(new int[] {0, 9, 0})).isEqualTo(-1);
    }
}
