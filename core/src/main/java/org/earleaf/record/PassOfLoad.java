// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

/**
 * Under which name a pass is kept that a load made: each product of a load makes one on each piece of its ground.
 *
 * @param load id of the load
 * @param ground as {@link org.earleaf.load.LoadGround#label} names it
 * @param order place of the product in the load
 */
public record PassOfLoad(String load, String ground, int order) {
    private static final String OF_LOAD = "load ";

    public String id() {
        return start(load, ground) + order;
    }

    /** Whether a pass of this name was made by a load. */
    public static boolean isOne(String pass) {
        return pass.startsWith(OF_LOAD);
    }

    /** Place of the product in the load, of a pass whose name begins so. */
    public static int order(String pass, String start) {
        return Integer.parseInt(pass.substring(start.length()));
    }

    /** What the passes that a load made on one piece of ground begin with. */
    public static String start(String load, String ground) {
        return OF_LOAD + load + ", " + ground + ", ";
    }
}
