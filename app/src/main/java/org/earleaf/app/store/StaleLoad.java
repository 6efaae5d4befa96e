// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import org.earleaf.load.TankLoad;

/** Somebody else changed the load meanwhile. Nothing was written; both versions are told. */
public final class StaleLoad extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient TankLoad seen;
    private final transient LoadStore.Kept now;

    StaleLoad(TankLoad seen, LoadStore.Kept now) {
        super("load " + now.load().id() + " was changed by somebody else; it is now version " + now.version());
        this.seen = seen;
        this.now = now;
    }

    /** The version that the change was made on. */
    public TankLoad seen() {
        return seen;
    }

    /** The version that stands. */
    public LoadStore.Kept now() {
        return now;
    }
}
