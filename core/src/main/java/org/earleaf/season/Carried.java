// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.util.ArrayList;
import java.util.List;

/** Lanes that are carried from day to day and copied together; stands first so that fields can be made of it. */
abstract class Carried {
    final int members;
    private final List<double[]> carried = new ArrayList<>();

    Carried(int members) {
        this.members = members;
    }

    final double[] lane() {
        return lane(1);
    }

    /** So many lanes behind each other. */
    final double[] lane(int n) {
        double[] a = new double[n * members];
        carried.add(a);
        return a;
    }

    final double[][] lanes(int n) {
        double[][] all = new double[n][];
        for (int k = 0; k < n; k++) {
            all[k] = lane();
        }
        return all;
    }

    final List<double[]> carried() {
        return carried;
    }
}
