// SPDX-License-Identifier: Apache-2.0
package org.earleaf.card;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Patches of pixels that touch along an edge.
 *
 * <p>Runs of a row are joined with the runs of the row above (union and find), so that the work is that of the runs and
 * not of the pixels.
 */
final class Patches {
    private final StainMask mask;
    private int[] from = new int[1024];
    private int[] to = new int[1024];
    private int[] row = new int[1024];
    private int[] parent = new int[1024];
    private int runs;
    /** The first run of each row, and one past the last. */
    private final int[] rows;

    private Patches(StainMask mask) {
        this.mask = mask;
        rows = new int[mask.height + 1];
    }

    static Patches of(StainMask mask) {
        Patches patches = new Patches(mask);
        patches.join();
        return patches;
    }

    private void join() {
        int above = 0;
        for (int y = 0; y < mask.height; y++) {
            int first = runs;
            rows[y] = first;
            readRow(y);
            int a = above;
            for (int r = first; r < runs; r++) {
                // A run above that ends left of this one cannot touch a later run either.
                while (a < first && to[a] <= from[r]) {
                    a++;
                }
                for (int b = a; b < first && from[b] < to[r]; b++) {
                    unite(b, r);
                }
            }
            above = first;
        }
        rows[mask.height] = runs;
    }

    /** Runs of a row: from the first pixel to one past the last. */
    private void readRow(int y) {
        int base = y * mask.width;
        for (int x = 0; x < mask.width; x++) {
            if (mask.stained[base + x]) {
                int start = x;
                while (x < mask.width && mask.stained[base + x]) {
                    x++;
                }
                add(start, x, y);
            }
        }
    }

    private void add(int start, int end, int y) {
        if (runs == from.length) {
            from = Arrays.copyOf(from, runs * 2);
            to = Arrays.copyOf(to, runs * 2);
            row = Arrays.copyOf(row, runs * 2);
            parent = Arrays.copyOf(parent, runs * 2);
        }
        from[runs] = start;
        to[runs] = end;
        row[runs] = y;
        parent[runs] = runs;
        runs++;
    }

    private int root(int run) {
        int r = run;
        while (parent[r] != r) {
            parent[r] = parent[parent[r]];
            r = parent[r];
        }
        return r;
    }

    private void unite(int a, int b) {
        int p = root(a);
        int q = root(b);
        parent[Math.max(p, q)] = Math.min(p, q);
    }

    /** Every patch as one stain, in the order in which a reader comes to them. */
    List<Stain> stains() {
        List<Stain> stains = new ArrayList<>();
        for (Moments patch : collect()) {
            stains.add(patch.stain());
        }
        return stains;
    }

    /**
     * Every patch parted where it is a pixel or two narrow: drops that do not quite touch, but lie nearer than the pixels
     * can show. Its pixels are shared by the size of the cores.
     */
    List<Stain> parted() {
        Moments[] whole = sums();
        List<List<Moments>> parts = new ArrayList<>(Collections.nCopies(runs, List.of()));
        for (Moments core : of(mask.cores()).collect()) {
            int root = root(runAt(core.row(), core.column()));
            if (parts.get(root).isEmpty()) {
                parts.set(root, new ArrayList<>());
            }
            parts.get(root).add(core);
        }
        List<Stain> stains = new ArrayList<>();
        for (int r = 0; r < runs; r++) {
            if (whole[r] != null) {
                part(whole[r], parts.get(r), stains);
            }
        }
        return stains;
    }

    private static void part(Moments whole, List<Moments> cores, List<Stain> to) {
        if (cores.size() < 2) {
            to.add(whole.stain());
            return;
        }
        double all = cores.stream().mapToDouble(Moments::pixels).sum();
        for (Moments core : cores) {
            int share = (int) Math.round(core.pixels() / all * whole.pixels());
            to.add(new Stain(share, core.stain().length(), core.stain().cut()));
        }
    }

    /** The run that holds a stained pixel. */
    private int runAt(int y, int x) {
        int at = Arrays.binarySearch(from, rows[y], rows[y + 1], x);
        return at >= 0 ? at : -at - 2;
    }

    private List<Moments> collect() {
        return Arrays.stream(sums()).filter(Objects::nonNull).toList();
    }

    /** At the first run of each patch its sums, elsewhere nothing. */
    private @Nullable Moments[] sums() {
        @Nullable Moments[] sums = new Moments[runs];
        for (int r = 0; r < runs; r++) {
            int root = root(r);
            Moments patch = sums[root];
            if (patch == null) {
                patch = new Moments(row[r], from[r]);
                sums[root] = patch;
            }
            boolean cut = row[r] == 0 || row[r] == mask.height - 1 || from[r] == 0 || to[r] == mask.width;
            patch.add(row[r], from[r], to[r], cut);
        }
        return sums;
    }
}
