// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import java.util.List;

/**
 * One tank.
 *
 * @param number counts from 1
 * @param of how many there are
 * @param volume_m3 mixed
 * @param area_m2 that it covers; of the first load less what fills the lines and stays as heel
 */
public record Load(int number, int of, double volume_m3, double area_m2, List<MixStep> steps) {
    public Load {
        steps = List.copyOf(steps);
    }
}
