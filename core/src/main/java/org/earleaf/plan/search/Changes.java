// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan.search;

/**
 * What it costs to do a job otherwise than its driver was told.
 *
 * @param told by job, the shift that was told; -1: none, so that nothing is a change
 * @param usd by job
 */
record Changes(int[] told, double[] usd) {
    static final Changes FREE = new Changes(new int[0], new double[0]);

    double moved_usd(int job, int shift) {
        return isTold(job) && told[job] != shift ? usd[job] : 0;
    }

    double leftOut_usd(int job) {
        return isTold(job) ? usd[job] : 0;
    }

    private boolean isTold(int job) {
        return job < told.length && told[job] >= 0;
    }
}
